/** A section on the bench: its marks and what was typed, so that a reload loses nothing. */
import * as v from 'valibot';
import { markNames } from '../section/section-marks.ts';
import type { FileKind } from './file-kind.ts';

const short = v.pipe(v.string(), v.maxLength(200));
const number = v.pipe(v.number(), v.finite());
const system = v.picklist(['us', 'metric']);
const length = v.object({ text: short, system });
const points = v.pipe(v.array(v.tuple([number, number])), v.maxLength(60));

const slice = v.object({
  picture: v.object({
    name: v.pipe(v.string(), v.maxLength(500)),
    width: number,
    height: number,
    sample: v.optional(v.picklist(['fillet', 'groove'])),
    /** Whether the picture itself lies in the browser too. */
    kept: v.boolean(),
  }),
  weld: v.picklist(['fillet', 'groove']),
  root: v.picklist(['open root', 'backing strip']),
  by: v.picklist(['distance', 'rectangle']),
  lengths: v.object({ length, width: length, height: length, lengthError: length, size: length }),
  edge: v.picklist(['1', '2', '4']),
  code: short,
  cracks: v.picklist(['not looked', 'none seen', 'seen']),
  unfused: v.picklist(['not looked', 'none seen', 'seen']),
  slice: short,
  passes: short,
  marks: v.object(
    Object.fromEntries(markNames.map((name) => [name, v.optional(points, [])])) as Record<
      (typeof markNames)[number],
      v.OptionalSchema<typeof points, []>
    >,
  ),
});

export type MeasuredSlice = v.InferOutput<typeof slice>;

export const measuredSlice: FileKind<MeasuredSlice> = {
  name: 'section',
  title: 'a measured section',
  version: 1,
  schema: slice,
};
