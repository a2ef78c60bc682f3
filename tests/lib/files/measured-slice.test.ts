/** What is kept of a section on the bench comes back as it was; what does not fit is refused. */
import { describe, expect, it } from 'vitest';
import { readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { type MeasuredSlice, measuredSlice } from '../../../lib/files/measured-slice.ts';
import { noMarks } from '../../../lib/section/section-marks.ts';

const length = { text: '5/16', system: 'us' as const };
const slice: MeasuredSlice = {
  picture: { name: 'slice 3.jpg', width: 2000, height: 1500, kept: true },
  weld: 'groove',
  root: 'backing strip',
  by: 'rectangle',
  lengths: { length, width: length, height: length, lengthError: length, size: length },
  edge: '4',
  code: 'AWS D1.1',
  cracks: 'none seen',
  unfused: 'not looked',
  slice: '3',
  passes: '',
  marks: { ...structuredClone(noMarks), toeA: [[1.5, 2]] } as unknown as MeasuredSlice['marks'],
};
const text = (data: unknown) => writeFile(measuredSlice, data as MeasuredSlice, '2026-03-02');

describe('measuredSlice', () => {
  it('reads what it wrote', () => {
    expect(readFile(measuredSlice, text(slice))).toEqual({
      ok: true,
      data: slice,
      saved: '2026-03-02',
    });
  });

  it('takes a kind of mark that an earlier page did not know as not set', () => {
    const { edgeA: _, ...marks } = slice.marks;
    expect(readFile(measuredSlice, text({ ...slice, marks }))).toMatchObject({
      ok: true,
      data: { marks: { edgeA: [] } },
    });
  });

  it.each([
    ['a mark that is no point', { marks: { ...slice.marks, toeA: [[1]] } }],
    ['a mark without a place', { marks: { ...slice.marks, toeA: [[1, null]] } }],
    [
      'more marks than there is room for',
      { marks: { ...slice.marks, toeA: Array(61).fill([1, 1]) } },
    ],
    ['a weld of another kind', { weld: 'plug' }],
    ['an unknown unit', { lengths: { ...slice.lengths, size: { text: '3', system: 'feet' } } }],
  ])('refuses %s', (_, change) => {
    expect(readFile(measuredSlice, text({ ...slice, ...change }))).toMatchObject({ ok: false });
  });
});
