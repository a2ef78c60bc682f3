import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compareOutline,
  ownOutlineAsCsv,
  readOwnOutline,
} from '../../../lib/outlines/own-outline.ts';

const known = ['flat-bead', 'fillet-2f'];

describe('readOwnOutline', () => {
  it('reads topics alone', () => {
    expect(readOwnOutline('Topic\nSafety\n"Fillets, flat"\n', known)).toEqual({
      ok: true,
      topics: [
        { code: '', topic: 'Safety', lessons: [] },
        { code: '', topic: 'Fillets, flat', lessons: [] },
      ],
      notes: [],
    });
  });
  it('reads codes and lessons, in semicolons, and tells of a lesson that is not there', () => {
    const read = readOwnOutline('code;topic;lessons\nA;Beads;"flat-bead; no-such"\n', known);
    expect(read).toEqual({
      ok: true,
      topics: [{ code: 'A', topic: 'Beads', lessons: ['flat-bead'] }],
      notes: ['Row 2 names no lesson of this course: no-such'],
    });
  });
  it('tells of a row without a topic', () => {
    expect(readOwnOutline('code,topic\nA,\nB,Beads\n', known)).toMatchObject({
      topics: [{ code: 'B' }],
      notes: ['Row 2 has no topic and was left out'],
    });
  });
  it.each([
    ['', /no column "topic"/],
    ['name\nBeads\n', /no column "topic"/],
    ['topic\n', /no topics below it/],
    ['code,topic\nA,\n', /No row of this table has a topic/],
    [`topic\n${'x\n'.repeat(501)}`, /501 topics; the page takes 500/],
    ['\u0000\u0001PNG\r\n', /no column "topic"/],
  ])('refuses %j', (text, problem) => {
    expect(readOwnOutline(text.slice(0), known)).toMatchObject({
      ok: false,
      problem: expect.stringMatching(problem),
    });
  });
  it('reads back what was written', () => {
    const text = fc
      .string({ unit: 'binary' })
      .map((it) => it.replace(/[\r\uFEFF]/g, '').trim())
      .filter((it) => it !== '' && !it.startsWith("'"));
    const topics = fc.array(fc.record({ code: text, topic: text, lessons: fc.subarray(known) }), {
      minLength: 1,
      maxLength: 20,
    });
    fc.assert(
      fc.property(topics, (list) => {
        expect(readOwnOutline(ownOutlineAsCsv(list), known)).toEqual({
          ok: true,
          topics: list,
          notes: [],
        });
      }),
    );
  });
});

describe('compareOutline', () => {
  it('counts what is served, and names what is open and what is spare', () => {
    const open = { code: 'B', topic: 'Brazing', lessons: [] };
    const compared = compareOutline(
      [{ code: 'A', topic: 'Beads', lessons: ['flat-bead'] }, open],
      known,
    );
    expect(compared).toEqual({ served: 1, open: [open], spare: ['fillet-2f'] });
  });
});

it('takes five hundred topics, and says how many there are where it does not', () => {
  const table = (rows: number) => `topic\n${'Safety\n'.repeat(rows)}`;
  expect(readOwnOutline(table(500), known)).toMatchObject({ ok: true });
  expect(readOwnOutline(table(501), known)).toEqual({
    ok: false,
    problem: 'This table has 501 topics; the page takes 500',
  });
});

it('reads columns in any case and order, behind the mark of a spreadsheet', () => {
  const text = '\uFEFF Lessons ;"CODE"; Topic\r\nflat-bead, fillet-2f,flat-bead;1; Beads \r\n';
  expect(readOwnOutline(text, known)).toEqual({
    ok: true,
    topics: [{ code: '1', topic: 'Beads', lessons: ['flat-bead', 'fillet-2f'] }],
    notes: [],
  });
});

it('counts what is served, what is open and what nobody asks for', () => {
  const topics = [
    { code: '', topic: 'Beads', lessons: ['flat-bead'] },
    { code: '', topic: 'Books', lessons: [] },
  ];
  expect(compareOutline(topics, known)).toEqual({
    served: 1,
    open: [topics[1]],
    spare: ['fillet-2f'],
  });
});
