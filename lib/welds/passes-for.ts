/**
 * As many passes as an area takes, rounded up. What is over by less than the last digits of a
 * computer's arithmetic calls for no pass more: 0.3 is three times 0.1.
 */
export const passesFor = (area: number, passArea: number): number =>
  Math.max(1, Math.ceil(area / passArea - 1e-9));
