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
  return placed(
    factor,
    inset - bounds.left * factor,
    top + bounds.top * factor,
    round(height * factor + top + bottom),
  );
}

const gutter = 16;

/** Several drawings in a row at one scale, standing on one line. */
export function beside(
  bounds: readonly Bounds[],
  { top = 16, bottom = 16 }: Margin = {},
  tallest = 300,
): { of: Scale[]; height: number } {
  const sum = (sizes: readonly number[]) => sizes.reduce((total, size) => total + size, 0);
  const width = sum(bounds.map(({ left, right }) => right - left)) || 1;
  const high = Math.max(...bounds.map((it) => it.top - it.bottom)) || 1;
  const room = sheetWidth - gutter * (bounds.length + 1);
  const factor = Math.min(room / width, tallest / high);
  const free = (room - width * factor) / bounds.length;
  const height = round(high * factor + top + bottom);
  let from = gutter;
  const of = bounds.map(({ left, right, bottom: floor }): Scale => {
    const inset = from + free / 2;
    from += (right - left) * factor + free + gutter;
    return placed(factor, inset - left * factor, height - bottom + floor * factor, height);
  });
  return { of, height };
}

/** A scale whose origin lies at a place of the sheet. */
function placed(factor: number, originX: number, originY: number, height: number): Scale {
  const x = (mm: number) => round(originX + mm * factor);
  const y = (mm: number) => round(originY - mm * factor);
  return {
    factor,
    x,
    y,
    height,
    path: (outline, closed = true) =>
      `M${outline.map(([a, b]) => `${x(a)} ${y(b)}`).join('L')}${closed ? 'Z' : ''}`,
  };
}
