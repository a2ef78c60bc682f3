/** From millimeters to the sheet: one scale for both axes, so that drawings are true to scale. */
import { round, sheetWidth } from './Sketch.tsx';

export type Point = readonly [x: number, y: number];

export interface Scale {
  /** Sheet units for a millimeter. */
  factor: number;
  x(mm: number): number;
  /** Up in the world is up on the sheet. */
  y(mm: number): number;
  /** Height of the sheet with its margins. */
  height: number;
  /** A closed outline as path data. */
  path(outline: readonly Point[], closed?: boolean): string;
}

export interface Bounds {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

interface Margin {
  left?: number;
  right?: number;
  top?: number;
  bottom?: number;
}

export function fitted(bounds: Bounds, margin: Margin = {}, tallest = 300): Scale {
  const { left = 16, right = 16, top = 16, bottom = 16 } = margin;
  const width = bounds.right - bounds.left || 1;
  const height = bounds.top - bounds.bottom || 1;
  const factor = Math.min((sheetWidth - left - right) / width, tallest / height);
  const inset = left + (sheetWidth - left - right - width * factor) / 2;
  const x = (mm: number) => round(inset + (mm - bounds.left) * factor);
  const y = (mm: number) => round(top + (bounds.top - mm) * factor);
  return {
    factor,
    x,
    y,
    height: round(height * factor + top + bottom),
    path: (outline, closed = true) =>
      `M${outline.map(([a, b]) => `${x(a)} ${y(b)}`).join('L')}${closed ? 'Z' : ''}`,
  };
}
