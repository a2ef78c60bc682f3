/**
 * One figure as its source prints it in each system. Neither is converted from the other: where a
 * code prints 1 in, it prints 25 mm beside it. A reading is held against the figure of its own system.
 */
export interface PrintedFigure {
  us: number;
  metric: number;
}
