/** One row of coupons and electrodes, taken apart; what it needs and lacks is told by its field. */
import type { couponRows } from '../inputs/coupon-rows.ts';
import { NoAnswer } from '../no-answer.ts';
import { steelDensity } from '../tables/steel-density.ts';
import { lengthText } from '../text/length-text.ts';
import { pipeSize, poundsPerFoot } from '../welds/pipe-size.ts';
import { rodMass } from './rod-mass.ts';

interface Row {
  piece: (typeof couponRows.list.piece.choices)[number];
  thickness?: number | undefined;
  width?: number | undefined;
  nps?: keyof typeof import('../tables/pipe-b36.10.ts').pipeRows | undefined;
  schedule?: import('../tables/pipe-b36.10.ts').Schedule | undefined;
  length?: number | undefined;
  pieces: number;
  classification?: string | undefined;
  diameter?: number | undefined;
  electrodes: number;
}

function given<T>(value: T | undefined, what: string, field: string): T {
  if (value === undefined) throw new NoAnswer(`${what} is missing`, field);
  return value;
}

/** A piece of the row as the metal list takes it. */
export function pieceOf(row: Row, at: string) {
  const length = given(row.length, 'Length of the piece', `${at}.length`);
  const count = row.pieces;
  if (row.piece === 'pipe') {
    const nps = given(row.nps, 'Nominal pipe size', `${at}.nps`);
    const schedule = given(row.schedule, 'Schedule', `${at}.schedule`);
    const { outside, wall } = pipeSize(nps, schedule);
    const perInch = poundsPerFoot(outside.us, wall.us) / 12;
    return {
      section: `pipe NPS ${nps} Sch ${schedule}`,
      pipe: true,
      perInch,
      length,
      count,
    } as const;
  }
  const thickness = given(row.thickness, 'Thickness', `${at}.thickness`);
  const width = given(row.width, 'Width', `${at}.width`);
  const section = `${row.piece} ${lengthText(thickness)} × ${lengthText(width)}`;
  return { section, perInch: thickness * width * steelDensity, length, count };
}

/** The electrodes of the row. */
export function rodsOfRow(row: Row, at: string) {
  const classification = given(row.classification, 'Electrode', `${at}.classification`);
  const diameter = given(row.diameter, 'Electrode diameter', `${at}.diameter`);
  const kind = `${classification} ${lengthText(diameter)}`;
  return { kind, each: rodMass(classification, diameter), count: row.electrodes };
}
