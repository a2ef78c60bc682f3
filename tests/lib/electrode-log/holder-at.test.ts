/**
 * What the log says at a moment, against AWS D1.1 2015 clause 5.3.2 (hold, rebake) and Table 5.1
 * (hours, from memory), counted here in instants by hand.
 */
import { describe, expect, it } from 'vitest';
import { readCsv } from '../../../lib/csv.ts';
import { drawnFrom } from '../../../lib/electrode-log/drawn-from.ts';
import { holderAt } from '../../../lib/electrode-log/holder-at.ts';
import { logCsv } from '../../../lib/electrode-log/log-csv.ts';
import { logSheet } from '../../../lib/electrode-log/log-sheet.ts';
import { rowsTold } from '../../../lib/electrode-log/rows-told.ts';
import { withRow } from '../../../lib/electrode-log/with-row.ts';
import type { Holder, HolderRow } from '../../../lib/files/electrode-log.ts';

const zone = 'America/New_York';
const holder = (rows: HolderRow[], part: Partial<Holder> = {}): Holder => ({
  name: 'Can 3',
  classification: 'E7018',
  designator: 'none',
  diameter: '1/8 in',
  rows,
  ...part,
});
const row = (event: HolderRow['event'], at: string, rest: Partial<HolderRow> = {}): HolderRow => ({
  event,
  at,
  by: '',
  ...rest,
});
const hot = { temperature: { value: 250, unit: 'degF' } } as const;
const bake = { temperature: { value: 700, unit: 'degF' }, hours: 2 } as const;
const counted = (one: Holder, at: string, where = zone) => {
  const found = holderAt(one, Date.parse(at), where);
  if (!found.counted) throw new Error(found.why);
  return found;
};

describe('one holder at a moment', () => {
  // Opened at 18:00 in New York, which is 22:00 UTC in March after the change.
  const opened = holder([row('opened', '2026-03-26T22:00Z')]);

  it('must be back four hours after it was issued, nine with an R', () => {
    expect(counted(opened, '2026-03-26T23:00Z')).toMatchObject({
      state: 'out, within its time',
      backBy: Date.parse('2026-03-27T02:00Z'),
      next: 'Use them, or have them back in the oven by 22:00.',
      mayReturn: true,
      limit: 4,
    });
    const resistant = holder(opened.rows, { designator: 'H4R' });
    expect(counted(resistant, '2026-03-26T23:00Z')).toMatchObject({
      backBy: Date.parse('2026-03-27T07:00Z'),
      next: 'Use them, or have them back in the oven by 2026-03-27, 3:00.',
      limit: 9,
    });
  });

  it('warns from half an hour before, to the minute, and says so when it is over', () => {
    const warning = (at: string) => counted(opened, at).warning;
    expect(warning('2026-03-27T01:29Z')).toBeUndefined();
    expect(warning('2026-03-27T01:30Z')).toBe('soon');
    expect(warning('2026-03-27T02:00Z')).toBe('soon');
    expect(warning('2026-03-27T02:01Z')).toBe('over');
    expect(counted(opened, '2026-03-27T02:01Z').mayRebake).toBe(true);
  });

  it('has a true length in a night on which clocks change', () => {
    // 23:30 on the last evening of summer time; clocks go back, so four hours end at 2:30.
    const autumn = holder([row('out', '2026-11-01T03:30Z')]);
    expect(counted(autumn, '2026-11-01T05:30Z').next).toMatch(/by 2:30\.$/);
    expect(counted(autumn, '2026-11-01T06:00Z')).toMatchObject({ hoursOut: 2.5 });
    const berlin = holder([row('out', '2026-10-24T21:30Z')]);
    expect(counted(berlin, '2026-10-25T00:30Z', 'Europe/Berlin').next).toMatch(/by 2:30 GMT\+1\.$/);
    // Clocks go forward: issued at 23:30, back by 4:30, not 3:30.
    const spring = holder([row('out', '2026-03-08T04:30Z')]);
    expect(counted(spring, '2026-03-08T07:00Z').next).toMatch(/by 4:30\.$/);
  });

  it('counts only what had happened by then', () => {
    const whole = holder([...opened.rows, row('in oven', '2026-03-27T01:00Z', hot)]);
    expect(counted(whole, '2026-03-27T00:00Z').state).toBe('out, within its time');
    expect(counted(whole, '2026-03-27T01:00Z').state).toBe('in the oven, holding');
    expect(counted(whole, '2026-03-27T02:00Z')).toMatchObject({
      state: 'in the oven, holding',
      readyFrom: Date.parse('2026-03-27T05:00Z'),
    });
    expect(counted(whole, '2026-03-26T21:00Z')).toMatchObject({
      state: 'sealed',
      next: expect.stringMatching(/^Nothing is logged yet/),
    });
  });

  it('says that a rebake goes on, and how it ends', () => {
    const over = holder([...opened.rows, row('rebaked', '2026-03-27T04:00Z', bake)]);
    expect(counted(over, '2026-03-27T05:00Z')).toMatchObject({
      state: 'being rebaked',
      bakedAt: Date.parse('2026-03-27T06:00Z'),
      mayRebake: false,
    });
    expect(counted(over, '2026-03-27T06:00Z')).toMatchObject({
      state: 'out, within its time',
      hoursOut: 0,
    });
  });

  it('is for practice only once it is tagged, and scrap once it is wet', () => {
    const tagged = holder([...opened.rows, row('tagged', '2026-03-26T22:30Z')]);
    expect(counted(tagged, '2026-03-26T23:00Z')).toMatchObject({
      state: 'practice only, tagged',
      mayReturn: false,
      mayRebake: false,
    });
    const wet = holder([...tagged.rows, row('wet', '2026-03-26T22:40Z')]);
    expect(counted(wet, '2026-03-26T23:00Z').state).toBe('scrap');
    const both = holder([...wet.rows, row('tagged', '2026-03-26T22:50Z')]);
    expect(counted(both, '2026-03-26T23:00Z').state).toBe('scrap');
  });

  it('gives no oven advice for cellulose electrodes, and says why', () => {
    for (const classification of ['E6010', 'E6011', 'E6013'] as const) {
      const one = holder(opened.rows, { classification });
      const found = holderAt(one, Date.parse('2026-03-27T02:00Z'), zone);
      expect(found).toMatchObject({ counted: false });
      expect(found.counted || found.why).toMatch(/moisture|not a low-hydrogen/);
      const into = withRow(one, row('in oven', '2026-03-27T01:00Z', hot), zone);
      expect(into).toMatchObject({ ok: false, field: 'event' });
      const wet = withRow(one, row('wet', '2026-03-27T01:00Z'), zone);
      expect(wet.ok && holderAt(wet.holder, Date.parse('2026-03-27T02:00Z'), zone)).toMatchObject({
        marked: 'scrap',
      });
    }
  });

  it('names the row that cannot follow the one above it', () => {
    const broken = holder([...opened.rows, row('opened', '2026-03-26T23:00Z')]);
    expect(holderAt(broken, Date.parse('2026-03-27T00:00Z'), zone)).toMatchObject({
      counted: false,
      row: 1,
      why: 'A container is opened once, in the first row',
    });
    expect(rowsTold(broken, zone)[1]?.problem).toMatch(/opened once/);
  });
});

describe('a row put into the log', () => {
  const rows = [row('opened', '2026-03-26T22:00Z'), row('in oven', '2026-03-27T00:00Z', hot)];

  it('finds its place in time, however late it is written down', () => {
    const put = withRow(holder(rows), row('out', '2026-03-26T23:00Z'), zone);
    if (!put.ok) throw new Error(put.problem);
    expect(put.place).toBe(1);
    expect(put.holder.rows.map(({ event }) => event)).toEqual(['opened', 'out', 'in oven']);
  });

  it('is refused by its own field, or with the row that could not follow it', () => {
    expect(withRow(holder(rows), row('opened', '2026-03-27T01:00Z'), zone)).toMatchObject({
      field: 'event',
    });
    const late = row('rebaked', '2026-03-26T23:30Z', bake);
    expect(withRow(holder(rows), late, zone)).toMatchObject({
      ok: false,
      field: 'time',
      problem: expect.stringMatching(/^Row 3 of the log could not follow this one: 20:00 comes/),
    });
  });

  it('goes along when a quiver is filled from a can', () => {
    const quiver = drawnFrom(holder(rows), 'Quiver', Date.parse('2026-03-27T01:00Z'), zone, 'TL');
    if ('problem' in quiver) throw new Error(quiver.problem);
    expect(counted(quiver, '2026-03-27T01:00Z')).toMatchObject({ hoursOut: 3 });
    expect(quiver).toMatchObject({ name: 'Quiver', classification: 'E7018' });
  });
});

describe('the sheet and the table', () => {
  const log = {
    zone,
    holders: [
      holder([row('opened', '2026-03-25T22:00Z'), row('in oven', '2026-03-26T22:00Z', hot)]),
      holder([row('out', '2026-03-26T21:00Z')], { name: 'Quiver, booth 4' }),
    ],
  };
  const at = Date.parse('2026-03-26T23:00Z');

  it('tell all rows of the evening in the order of time, and count the earlier ones', () => {
    const sheet = logSheet(log, at - 12 * 3_600_000, at, zone);
    expect(sheet.rows.map(({ time, holder: name }) => `${time} ${name}`)).toEqual([
      '17:00 Quiver, booth 4',
      '18:00 Can 3',
    ]);
    expect(sheet.holders.map(({ earlier, until }) => [earlier, until])).toEqual([
      [1, ''],
      [0, 'back by 21:00'],
    ]);
    expect(logSheet(log, Number.NEGATIVE_INFINITY, at, zone).rows).toHaveLength(3);
    const before = at - 2 * 3_600_000;
    expect(logSheet(log, Number.NEGATIVE_INFINITY, before, zone).rows).toHaveLength(2);
  });

  it('come back from CSV with every row', () => {
    const read = readCsv(logCsv(log, zone), ['holder', 'day', 'time', 'event', 'state after']);
    expect(read.ok && read.rows).toEqual([
      {
        holder: 'Can 3',
        day: '2026-03-25',
        time: '18:00',
        event: 'opened',
        'state after': 'out, within its time',
      },
      {
        holder: 'Can 3',
        day: '2026-03-26',
        time: '18:00',
        event: 'returned to the oven',
        'state after': 'out too long',
      },
      {
        holder: 'Quiver, booth 4',
        day: '2026-03-26',
        time: '17:00',
        event: 'issued',
        'state after': 'out, within its time',
      },
    ]);
  });

  it.skipIf(process.env.STRYKER_MUTATOR_WORKER)(
    'stay quick with thirty holders of two hundred rows',
    () => {
      const rows = Array.from({ length: 200 }, (_, place) =>
        row(
          place % 2 ? 'in oven' : 'out',
          new Date(Date.parse('2026-01-05T22:00Z') + place * 6 * 3_600_000)
            .toISOString()
            .replace(':00.000Z', 'Z'),
          place % 2 ? hot : {},
        ),
      );
      const holders = Array.from({ length: 30 }, (_, place) =>
        holder(rows, { name: `Can ${place}` }),
      );
      const now = Date.parse('2026-03-01T00:00Z');
      const start = performance.now();
      for (const one of holders) holderAt(one, now, zone);
      const sheet = logSheet({ zone, holders }, now - 864e5, now, zone);
      expect(sheet.holders).toHaveLength(30);
      // About 40 ms on a small machine; a tenth of a second feels immediate.
      expect(performance.now() - start).toBeLessThan(1000);
    },
  );
});
