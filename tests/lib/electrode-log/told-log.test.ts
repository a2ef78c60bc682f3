/**
 * What table, sheet and page say of a log, cell by cell, for a log counted by hand. AWS D1.1 2015
 * clause 5.3.2: four hours out, four to hold, two to rebake.
 */
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../lib/csv.ts';
import { countedBy } from '../../../lib/electrode-log/counted-by.ts';
import { drawnFrom } from '../../../lib/electrode-log/drawn-from.ts';
import { electrodeText, eventWords, ovenText } from '../../../lib/electrode-log/event-words.ts';
import { holderAt } from '../../../lib/electrode-log/holder-at.ts';
import { logCsv } from '../../../lib/electrode-log/log-csv.ts';
import { logSheet } from '../../../lib/electrode-log/log-sheet.ts';
import { recentTrace } from '../../../lib/electrode-log/recent-trace.ts';
import { remembered } from '../../../lib/electrode-log/remembered.ts';
import { rowsTold } from '../../../lib/electrode-log/rows-told.ts';
import { withRow } from '../../../lib/electrode-log/with-row.ts';
import type { Holder, HolderRow } from '../../../lib/files/electrode-log.ts';

const zone = 'UTC';
const holder = (rows: HolderRow[], part: Partial<Holder> = {}): Holder => ({
  name: 'Can 3',
  classification: 'E7018',
  designator: 'none',
  diameter: '1/8 in',
  rows,
  ...part,
});
/** A row on 2026-06-01, by the clock. */
const row = (
  event: HolderRow['event'],
  time: string,
  rest: Partial<HolderRow> = {},
): HolderRow => ({
  event,
  at: `2026-06-01T${time}Z`,
  by: '',
  ...rest,
});
const at = (time: string, day = '2026-06-01') => Date.parse(`${day}T${time}Z`);
const hot = { temperature: { value: 275, unit: 'degF' } } as const;
const hotMetric = { temperature: { value: 130, unit: 'degC' } } as const;
const bake = { temperature: { value: 700, unit: 'degF' }, hours: 2 } as const;

describe('words', () => {
  it('name the electrode with its designator and diameter, where it has them', () => {
    const text = (designator: Holder['designator'], diameter: string) =>
      electrodeText(holder([], { designator, diameter }));
    expect(text('none', '1/8 in')).toBe('E7018, 1/8 in');
    expect(text('H4R', ' 3.2 mm ')).toBe('E7018 H4R, 3.2 mm');
    expect(text('none', '  ')).toBe('E7018');
    expect(text('R', '')).toBe('E7018 R');
  });
  it('tell the oven as it was read, and nothing where there was none', () => {
    expect(ovenText(hot)).toBe('275\u00a0°F');
    expect(ovenText(hotMetric)).toBe('130\u00a0°C');
    expect(ovenText({})).toBe('');
  });
  it('say each event, and the rules with the hours of both rows of the table', () => {
    expect(Object.values(eventWords)).toEqual([
      'opened',
      'issued',
      'returned to the oven',
      'rebaked',
      'got wet',
      'tagged, practice only',
    ]);
    const texts = countedBy.map(({ text }) => text);
    expect(texts).toHaveLength(6);
    expect(texts[0]).toBe('E70XX: at most 4 h in open air.');
    expect(texts[1]).toMatch(/^E70XXR, .*: at most 9 h in open air\./);
    expect(texts[2]).toContain('at least 4 h at {250 degF|120 degC} or more');
    expect(texts[3]).toContain('at {500 degF|260 degC} to {800 degF|430 degC} for at least 2 h');
  });
});

const evening = {
  zone,
  holders: [
    holder([
      row('opened', '18:00', { by: 'TL' }),
      row('in oven', '19:30', hotMetric),
      row('out', '20:00'),
    ]),
    holder([row('out', '17:00'), row('rebaked', '21:30', bake)], {
      name: 'Quiver',
      designator: 'H4R',
      diameter: '',
    }),
    holder([row('wet', '18:30')], { name: 'Old can', classification: 'E6010' }),
    holder([row('opened', '18:00'), row('opened', '19:00'), row('out', '20:00')], {
      name: 'Slip',
    }),
    holder([row('opened', '16:00'), row('in oven', '19:00', hot)], { name: 'Held' }),
    holder([], { name: 'Plain', classification: 'E6013' }),
  ],
};

describe('the table of a log', () => {
  const read = readCsv(logCsv(evening, zone), [
    'holder',
    'designator',
    'time zone',
    'instant (UTC)',
    'event',
    'oven temperature',
    'unit',
    'hours',
    'hours on the clock after',
    'state after',
    'by',
  ]);
  const cells = (read.ok ? read.rows : []).map((one) => Object.values(one).join(' | '));
  it('has every cell of every row', () => {
    expect(cells).toEqual([
      'Can 3 |  | UTC | 2026-06-01T18:00Z | opened |  |  |  | 0 | out, within its time | TL',
      'Can 3 |  | UTC | 2026-06-01T19:30Z | returned to the oven | 130 | °C |  | 1.5 | in the oven, holding | ',
      'Can 3 |  | UTC | 2026-06-01T20:00Z | issued |  |  |  | 2 | out, within its time | ',
      'Quiver | H4R | UTC | 2026-06-01T17:00Z | issued |  |  |  | 0 | out, within its time | ',
      'Quiver | H4R | UTC | 2026-06-01T21:30Z | rebaked | 700 | °F | 2 | 0 | out, within its time | ',
      'Old can |  | UTC | 2026-06-01T18:30Z | got wet |  |  |  |  |  | ',
      'Slip |  | UTC | 2026-06-01T18:00Z | opened |  |  |  | 0 | out, within its time | ',
      'Slip |  | UTC | 2026-06-01T19:00Z | opened |  |  |  |  | A container is opened once, in the first row | ',
      'Slip |  | UTC | 2026-06-01T20:00Z | issued |  |  |  |  |  | ',
      'Held |  | UTC | 2026-06-01T16:00Z | opened |  |  |  | 0 | out, within its time | ',
      'Held |  | UTC | 2026-06-01T19:00Z | returned to the oven | 275 | °F |  | 3 | in the oven, holding | ',
    ]);
  });
  it('rounds the clock to a hundredth of an hour', () => {
    // Twenty minutes are a third of an hour.
    const third = { zone, holders: [holder([row('opened', '18:00'), row('out', '18:20')])] };
    const one = readCsv(logCsv(third, zone), ['hours on the clock after']);
    expect(one.ok && one.rows[1]).toEqual({ 'hours on the clock after': '0.33' });
  });
});

describe('the sheet of a log', () => {
  const sheet = logSheet(evening, at('18:00'), at('21:00'), zone);
  it('says of every holder what it is, where it stands and until when', () => {
    expect(sheet).toMatchObject({ day: '2026-06-01', time: '21:00', zone: 'UTC' });
    expect(sheet.holders).toEqual([
      {
        name: 'Can 3',
        electrode: 'E7018, 1/8 in',
        earlier: 1,
        limit: '4 h',
        state: 'out, within its time',
        until: 'back by 22:00',
      },
      {
        name: 'Quiver',
        electrode: 'E7018 H4R',
        earlier: 1,
        limit: '9 h',
        state: 'out, within its time',
        until: 'back by 2026-06-02, 2:00',
      },
      {
        name: 'Old can',
        electrode: 'E6010, 1/8 in',
        earlier: 0,
        limit: '–',
        state: 'scrap',
        until: '',
      },
      {
        name: 'Slip',
        electrode: 'E7018, 1/8 in',
        earlier: 1,
        limit: '–',
        state: 'row 2 cannot stand',
        until: '',
      },
      {
        name: 'Held',
        electrode: 'E7018, 1/8 in',
        earlier: 1,
        limit: '4 h',
        state: 'in the oven, holding',
        until: 'ready at 23:00',
      },
      {
        name: 'Plain',
        electrode: 'E6013, 1/8 in',
        earlier: 0,
        limit: '–',
        state: 'not counted',
        until: '',
      },
    ]);
  });
  it('lists what came after its start, up to its moment, in the order of time', () => {
    expect(sheet.rows.map(({ time, holder: name }) => `${time} ${name}`)).toEqual([
      '18:30 Old can',
      '19:00 Slip',
      '19:00 Held',
      '19:30 Can 3',
      '20:00 Can 3',
      '20:00 Slip',
    ]);
    expect(sheet.rows[3]).toEqual({
      day: '2026-06-01',
      time: '19:30',
      holder: 'Can 3',
      event: 'returned to the oven',
      oven: '130\u00a0°C',
      hours: '',
      clock: '1 h 30 min',
      by: '',
    });
    expect(sheet.rows[1]?.clock).toBe('');
    const later = logSheet(evening, at('21:00'), at('22:00'), zone);
    expect(later.rows).toMatchObject([{ holder: 'Quiver', hours: '2 h', oven: '700\u00a0°F' }]);
    expect(later.holders[1]).toMatchObject({ state: 'being rebaked', until: 'until 23:30' });
  });
});

describe('a holder at a moment', () => {
  it('in a rebake may neither return nor be baked, and is told how that ends', () => {
    const ask = (degrees: number) =>
      holderAt(
        holder([
          row('opened', '08:00'),
          row('rebaked', '13:00', { temperature: { value: degrees, unit: 'degF' }, hours: 2 }),
        ]),
        at('14:00'),
        zone,
      );
    expect(ask(700)).toMatchObject({
      counted: true,
      next: 'Leave them in until 15:00. Then their clock starts afresh.',
      mayReturn: false,
      mayRebake: false,
    });
    expect(ask(400)).toMatchObject({
      next: 'Leave them in until 15:00. It does not make them low-hydrogen again.',
    });
    // Only the last row counts: after it they are out again.
    const out = holder([row('rebaked', '08:00', bake), row('out', '11:00')]);
    expect(holderAt(out, at('11:30'), zone)).toMatchObject({ state: 'out, within its time' });
  });
  it('warns of nothing in an oven, and reads its degrees in their own unit', () => {
    const inOven = (value: number, unit: 'degF' | 'degC') =>
      holderAt(
        holder([row('opened', '08:00'), row('in oven', '11:45', { temperature: { value, unit } })]),
        at('11:50'),
        zone,
      );
    expect(inOven(250, 'degF')).toMatchObject({ state: 'in the oven, holding' });
    expect(inOven(250, 'degF')).not.toHaveProperty('warning');
    expect(inOven(250, 'degF')).not.toHaveProperty('backBy');
    expect(inOven(120, 'degC')).toMatchObject({ state: 'in the oven, holding' });
    expect(inOven(120, 'degF')).toMatchObject({ state: 'out, within its time', warning: 'soon' });
  });
  it('says of electrodes that are not counted only that they are wet or tagged', () => {
    const marked = (...events: HolderRow['event'][]) =>
      holderAt(
        holder(
          events.map((event, i) => row(event, `1${i}:00`)),
          { classification: 'E6011' },
        ),
        at('20:00'),
        zone,
      );
    expect(marked('opened', 'out')).not.toHaveProperty('marked');
    expect(marked('opened', 'tagged')).toMatchObject({ marked: 'practice only, tagged' });
    expect(marked('opened', 'wet', 'tagged')).toMatchObject({ marked: 'scrap' });
    expect(marked('opened')).not.toHaveProperty('row');
  });
  it('names the twelfth row as well as the second', () => {
    const rows = [
      row('opened', '08:00'),
      ...Array.from({ length: 10 }, (_, i) => row('out', `09:${10 + i}`)),
      row('opened', '10:00'),
    ];
    expect(holderAt(holder(rows), at('11:00'), zone)).toMatchObject({ counted: false, row: 11 });
  });
  it('does not hide a fault of its own behind a refusal', () => {
    const odd = holder([row('opened', '08:00')], { classification: 'E9999' as never });
    expect(() => holderAt(odd, at('09:00'), zone)).toThrow(TypeError);
    expect(() => rowsTold(odd, zone)).toThrow(TypeError);
    expect(() => withRow(odd, row('out', '09:00'), zone)).toThrow(TypeError);
    const noZone = holder([row('opened', '08:00'), row('opened', '08:30')]);
    expect(() => holderAt(noZone, at('09:00'), 'Nowhere/Land')).toThrow(RangeError);
  });
});

describe('a row at its place', () => {
  it('of the same minute stands behind what was written first', () => {
    const put = withRow(
      holder([row('opened', '18:00'), row('out', '19:00', { by: 'first' })]),
      row('out', '19:00', { by: 'second' }),
      zone,
    );
    expect(put).toMatchObject({ ok: true, place: 2 });
    expect(put.ok && put.holder.rows.map(({ by }) => by)).toEqual(['', 'first', 'second']);
  });
  it('is refused by the field that is wrong', () => {
    const put = (one: HolderRow, rows = [row('opened', '18:00')]) =>
      withRow(holder(rows), one, zone);
    expect(put(row('in oven', '19:00'))).toEqual({
      ok: false,
      field: 'temperature',
      problem: 'The oven’s temperature is missing',
    });
    expect(put(row('rebaked', '19:00', hot))).toMatchObject({ ok: false, field: 'hours' });
    const baked = [row('opened', '18:00'), row('rebaked', '19:00', bake)];
    expect(put(row('out', '20:00'), baked)).toMatchObject({
      ok: false,
      field: 'time',
      problem: '20:00 comes before the row above is over, at 21:00',
    });
    expect(put(row('rebaked', '19:30', bake), [...baked.slice(0, 1), row('out', '20:00')])).toEqual(
      {
        ok: false,
        field: 'time',
        problem:
          'Row 3 of the log could not follow this one: 20:00 comes before the row above is over, at 21:30',
      },
    );
  });
  it('goes into a log that is broken already, as far as anybody can tell', () => {
    const broken = holder([row('opened', '18:00'), row('opened', '19:00')]);
    expect(withRow(broken, row('out', '20:00'), zone)).toMatchObject({ ok: true, place: 2 });
  });
  it('of cellulose electrodes is refused for an oven only', () => {
    const cellulose = holder([row('opened', '18:00')], { classification: 'E6010' });
    for (const event of ['in oven', 'rebaked'] as const)
      expect(withRow(cellulose, row(event, '19:00', bake), zone)).toMatchObject({
        ok: false,
        field: 'event',
        problem: expect.stringContaining('cellulose'),
      });
    expect(withRow(cellulose, row('out', '19:00'), zone)).toMatchObject({ ok: true, place: 1 });
    expect(rowsTold(cellulose, zone)).toEqual([{}]);
  });
  it('is told up to the one that cannot stand, and nothing after it', () => {
    const told = rowsTold(evening.holders[3] as Holder, zone);
    expect(told).toEqual([
      { hoursOut: 0, state: 'out, within its time' },
      { problem: 'A container is opened once, in the first row' },
      {},
    ]);
    expect(rowsTold(holder([]), zone)).toEqual([]);
    // The place that a reason names is the row’s own.
    const early = holder([
      row('opened', '18:00'),
      row('out', '19:00'),
      row('rebaked', '20:00', hot),
    ]);
    expect(rowsTold(early, zone)[2]).toEqual({
      problem: 'The hours at that temperature are missing',
    });
  });
});

describe('a quiver filled from a can', () => {
  const can = holder([row('opened', '18:00'), row('out', '19:00'), row('wet', '21:00')]);
  it('takes along what had happened by then, that minute included', () => {
    const drawn = drawnFrom(can, 'Quiver', at('19:00'), zone, 'TL');
    expect('problem' in drawn || drawn.rows.map(({ event, at: when }) => [event, when])).toEqual([
      ['opened', '2026-06-01T18:00Z'],
      ['out', '2026-06-01T19:00Z'],
      ['out', '2026-06-01T19:00Z'],
    ]);
    expect(drawn).toMatchObject({ name: 'Quiver', diameter: '1/8 in' });
  });
  it('is refused while the can is in a rebake, by both their names', () => {
    const baking = holder([row('opened', '18:00'), row('rebaked', '19:00', bake)]);
    expect(drawnFrom(baking, 'Quiver', at('20:00'), zone, 'TL')).toEqual({
      problem:
        'Name Quiver cannot be filled from Can 3: 20:00 comes before the row above is over, at 21:00',
    });
  });
});

describe('the end of a trace', () => {
  const trace = {
    limit: 4,
    line: [
      { time: 0, hours: 0 },
      { time: 2, hours: 2 },
      { time: 6, hours: 2 },
      { time: 6, hours: 0 },
      { time: 8, hours: 2 },
    ],
    stays: [
      { from: 0, to: 2, place: 'air' as const },
      { from: 2, to: 6, place: 'oven' as const },
      { from: 6, to: 8, place: 'air' as const },
    ],
  };
  it('begins in the middle of a stay, which is cut there', () => {
    expect(recentTrace(trace, 1)).toEqual({
      limit: 4,
      line: [{ time: 1, hours: 1 }, ...trace.line.slice(1)],
      stays: [{ from: 1, to: 2, place: 'air' }, ...trace.stays.slice(1)],
    });
  });
  it('begins at a corner without the stay that ends there', () => {
    const { line, stays } = recentTrace(trace, 2);
    expect(line).toEqual([{ time: 2, hours: 2 }, ...trace.line.slice(2)]);
    expect(stays).toEqual(trace.stays.slice(1));
    // What is not cut is handed on as it is.
    expect(stays[0]).toBe(trace.stays[1]);
  });
  it('is the whole trace where nothing lies after it', () => {
    expect(recentTrace(trace, 8)).toBe(trace);
    expect(recentTrace(trace, -1)).toBe(trace);
  });
});

it('a remembered answer is asked for once for each object, and anew for other values', () => {
  const asked: string[] = [];
  const ask = remembered((who: { name: string }, when: number, where: string) => {
    asked.push(`${who.name} ${when} ${where}`);
    return asked.length;
  });
  const [can, quiver] = [{ name: 'can' }, { name: 'quiver' }];
  expect([ask(can, 1, 'UTC'), ask(can, 1, 'UTC'), ask(quiver, 1, 'UTC')]).toEqual([1, 1, 2]);
  expect([ask(can, 2, 'UTC'), ask(can, 2, 'EST'), ask(quiver, 1, 'UTC')]).toEqual([3, 4, 2]);
  // Twelve and three are not one and twenty-three.
  expect([ask(can, 12, '3'), ask(can, 1, '23')]).toEqual([5, 6]);
});
