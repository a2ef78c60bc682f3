/** What is marked and typed on the bench: how it opens, how it is kept, and what it measures. */
import type { MeasuredSlice } from '../../lib/files/measured-slice.ts';
import { printMeasured } from '../../lib/section/measured-text.ts';
import type { Missing, TypedScale } from '../../lib/section/placed-plane.ts';
import { isPlaced, type MarkName, noMarks, type Placed } from '../../lib/section/section-marks.ts';
import { type Undo, undoOf } from '../../lib/undo.ts';
import type { System } from '../../lib/units.ts';
import { type Found, type Kind, kinds } from './kinds.ts';
import { type LengthEntry, type LengthName, readLength } from './lengths.ts';
import type { Picture } from './picture.ts';
import type { Step } from './steps.ts';

/** What is kept, with the marks' history instead of the marks alone. */
export interface Worked extends Omit<MeasuredSlice, 'picture' | 'marks' | 'lengths'> {
  lengths: Record<LengthName, LengthEntry>;
  marks: Undo<Placed>;
}

export function opening({ sample }: Picture, system: System): Worked {
  const empty: LengthEntry = { text: '', system };
  const weld = sample ?? 'fillet';
  const { length, size } = kinds[weld].sample;
  return {
    marks: undoOf(noMarks),
    weld,
    root: 'open root',
    by: 'distance',
    lengths: {
      length: sample ? { text: `${length}`, system: 'metric' } : empty,
      width: empty,
      height: empty,
      lengthError: { text: system === 'us' ? '0.004' : '0.1', system },
      size: sample ? { text: size[system], system } : empty,
    },
    edge: '2',
    code: 'AWS D1.1',
    cracks: 'not looked',
    unfused: 'not looked',
    slice: sample ? 'Sample' : '',
    passes: '',
  };
}

export const fromKept = ({ picture: _, marks, ...rest }: MeasuredSlice): Worked => ({
  ...rest,
  marks: undoOf(marks as Placed),
});

export function toKept(picture: Picture, kept: boolean, worked: Worked): MeasuredSlice {
  const { weld, root, by, lengths, edge, code, cracks, unfused, slice, passes } = worked;
  const { name, width, height, sample } = picture;
  const short = (text: string) => text.slice(0, 200);
  return {
    picture: { name: name.slice(0, 500), width, height, kept, ...(sample && { sample }) },
    weld,
    root,
    by,
    lengths: Object.fromEntries(
      Object.entries(lengths).map(([field, { text, system }]) => [
        field,
        { text: short(text), system },
      ]),
    ) as MeasuredSlice['lengths'],
    edge,
    code,
    cracks,
    unfused,
    slice: short(slice),
    passes: short(passes),
    marks: Object.fromEntries(
      Object.entries(worked.marks.now).map(([mark, points]) => [
        mark,
        points.map(([x, y]) => [x, y]),
      ]),
    ) as MeasuredSlice['marks'],
  };
}

export const kindOf = ({ weld }: Pick<Worked, 'weld'>): Kind => kinds[weld];

/** The steps of this weld and of this way of setting the scale. */
export const stepsOf = (worked: Pick<Worked, 'weld' | 'by'>): readonly Step[] =>
  kindOf(worked).steps.filter(
    ({ name }) => name !== (worked.by === 'distance' ? 'corners' : 'ends'),
  );

export function typedScale({ by, lengths }: Worked): TypedScale {
  const mm = (name: LengthName) => {
    const read = readLength(name, lengths[name]);
    return read && 'mm' in read ? read.mm : undefined;
  };
  return {
    by,
    length: mm('length'),
    width: mm('width'),
    height: mm('height'),
    lengthError: mm('lengthError'),
  };
}

export const isOnStrip = ({ root }: Worked): boolean => root === 'backing strip';

export const measure = (worked: Worked): Found | Missing =>
  kindOf(worked).measure(
    worked.marks.now,
    typedScale(worked),
    Number(worked.edge),
    isOnStrip(worked),
  );

/** What a screen reader is told once the hand rests: the sizes that matter, or what is missing. */
export function spoken(worked: Worked, system: System): string {
  const measured = measure(worked);
  if ('missing' in measured) return measured.missing;
  return measured.readings
    .filter(({ name }) => kindOf(worked).told.test(name))
    .map((one) => `${one.label} ${printMeasured(one, one.unit, system)}`)
    .join('; ');
}

/** The number that was typed; where none was, the marks that were set. */
export function countedPasses({ passes, marks }: Worked): { count: number } | { problem: string } {
  const text = passes.trim();
  if (text === '') return { count: marks.now.passes.length };
  return /^\d{1,3}$/.test(text) && Number(text) > 0
    ? { count: Number(text) }
    : { problem: 'Passes must be a whole number from 1 to 999' };
}

/** What is to be marked first of all that must be: where somebody comes back to. */
export function firstOpen(worked: Worked): MarkName {
  const all = stepsOf(worked);
  const open = all.find(({ name, optional }) => !optional && !isPlaced(worked.marks.now, name));
  return (open ?? (all.at(-1) as Step)).name;
}

/** The step before or after this one. */
export function neighbor(worked: Worked, step: MarkName, by: 1 | -1): MarkName | undefined {
  const all = stepsOf(worked);
  return all[all.findIndex(({ name }) => name === step) + by]?.name;
}
