/** An electrode log and a measured section at the bounds of what their files hold. */
import { describe, expect, it } from 'vitest';
import { newLearner } from '../../../lib/files/class-board.ts';
import {
  electrodeLog,
  emptyLog,
  instantOf,
  instantText,
} from '../../../lib/files/electrode-log.ts';
import { type FileKind, readFile, writeFile } from '../../../lib/files/file-kind.ts';
import { measuredSlice } from '../../../lib/files/measured-slice.ts';
import { noMarks } from '../../../lib/section/section-marks.ts';

const letters = (count: number) => 'a'.repeat(count);
// biome-ignore lint/suspicious/noExplicitAny: files of any shape, fitting or not
type Any = any;
const fits = (kind: FileKind<Any>, data: unknown) =>
  readFile(kind, writeFile(kind, data, '2026-03-02')).ok;

const row = { event: 'opened', at: '2026-03-26T22:35Z' };
const can = (name: string, change: object = {}) => ({
  name,
  classification: 'E7018',
  designator: 'none',
  diameter: '1/8 in',
  rows: [{ ...row, ...change }],
});
const log = (change: object) => ({ zone: 'UTC', holders: [can('Can 1', change)] });
const cans = (count: number) => ({
  zone: 'UTC',
  holders: Array.from({ length: count }, (_, place) => can(`Can ${place}`)),
});
const rows = (count: number) => ({
  zone: 'UTC',
  holders: [{ ...can('Can 1'), rows: Array.from({ length: count }, () => row) }],
});
const oven = (value: number, unit = 'degF') => log({ temperature: { value, unit } });
const length = { text: '5/16', system: 'us' };
const slice = (change: object) => ({
  picture: { name: 'a', width: 20, height: 10, kept: true },
  weld: 'fillet',
  root: 'open root',
  by: 'distance',
  lengths: { length, width: length, height: length, lengthError: length, size: length },
  edge: '1',
  code: '',
  cracks: 'seen',
  unfused: 'seen',
  slice: '',
  passes: '',
  marks: noMarks,
  ...change,
});
const picture = (name: string, more: object = {}) =>
  slice({ picture: { name, width: 20, height: 10, kept: false, ...more } });
const marks = (count: number) =>
  slice({ marks: { ...noMarks, passes: Array.from({ length: count }, () => [1, 1]) } });

describe('a kept file', () => {
  it.each<[string, FileKind<Any>, Any, Any]>([
    ['initials', electrodeLog, log({ by: letters(200) }), log({ by: letters(201) })],
    ['a zone', electrodeLog, emptyLog(letters(200)), emptyLog(letters(201))],
    [
      'a holder’s name',
      electrodeLog,
      { zone: '', holders: [can('a')] },
      { zone: '', holders: [can('')] },
    ],
    ['a cold oven', electrodeLog, oven(-100), oven(-101)],
    ['a cool oven', electrodeLog, oven(20, 'degC'), oven(20, 'K')],
    ['a hot oven', electrodeLog, oven(2000), oven(2001)],
    ['hours', electrodeLog, log({ hours: 0 }), log({ hours: -0.1 })],
    ['hours of a leap year', electrodeLog, log({ hours: 366 * 24 }), log({ hours: 366 * 24 + 1 })],
    ['holders', electrodeLog, cans(200), cans(201)],
    ['rows', electrodeLog, rows(2000), rows(2001)],
    ['a minute', electrodeLog, log({}), log({ at: '2026-03-26T22:35Z ' })],
    ['a minute in UTC', electrodeLog, log({}), log({ at: '2026-03-26T22:35' })],
    ['a picture’s name', measuredSlice, picture(letters(500)), picture(letters(501))],
    ['a picture’s width', measuredSlice, picture('', { width: 1 }), picture('', { width: null })],
    ['a sample', measuredSlice, picture('', { sample: 'groove' }), picture('', { sample: 'lap' })],
    [
      'a slice’s name',
      measuredSlice,
      slice({ slice: letters(200) }),
      slice({ slice: letters(201) }),
    ],
    ['marks', measuredSlice, marks(60), marks(61)],
    ['pixels of an edge', measuredSlice, slice({ edge: '2' }), slice({ edge: '3' })],
  ])('holds %s, and refuses what is more than that', (_, kind, fitting, refused) => {
    expect(fits(kind, fitting)).toBe(true);
    expect(fits(kind, refused)).toBe(false);
  });

  it('of an electrode log writes no instant for none', () => {
    expect(instantText(Number.NaN)).toBe('');
    expect(instantText(instantOf('2026-03-26T22:35Z'))).toBe('2026-03-26T22:35Z');
    expect(instantText(Date.UTC(2026, 2, 26, 22, 35, 59, 999))).toBe('2026-03-26T22:35Z');
  });

  it('of any kind here is of version 1: an older page would refuse another', () => {
    for (const kind of [electrodeLog, measuredSlice])
      expect(JSON.parse(writeFile<Any>(kind, {}, '')).version).toBe(1);
  });

  it('of a class begins with a learner who is here and has missed nothing', () => {
    expect(newLearner('7')).toMatchObject({ learner: '7', here: true, caughtUp: 0, absences: [] });
  });
});
