import { describe, expect, it } from 'vitest';
import { readRow } from '../../../lib/electrode-log/read-row.ts';
import { readWhen, typedWhen } from '../../../lib/electrode-log/read-when.ts';
import { whenWords } from '../../../lib/electrode-log/when-text.ts';

const zone = 'America/New_York';
const problem = (day: string, time: string, where = zone) => {
  const read = readWhen({ day, time }, where);
  return read.ok ? undefined : `${read.field}: ${read.problem}`;
};

describe('a day and a time as typed', () => {
  it('says which part is missing or is none', () => {
    expect(problem('', '18:00')).toBe('day: Day needs a whole date');
    expect(problem('2026-02-30', '18:00')).toBe('day: Day 2026-02-30 is a day no calendar has');
    for (const time of ['', '24:00', '18', '18:60', 'noon'])
      expect(problem('2026-03-26', time), time).toMatch(/^time: Time needs hours and minutes/);
    expect(readWhen({ day: '2026-03-26', time: '9:05' }, 'UTC')).toMatchObject({
      at: Date.parse('2026-03-26T09:05Z'),
    });
  });

  it('says that an hour does not exist, and between which times it is left out', () => {
    expect(problem('2026-03-08', '02:30')).toBe(
      'time: Time 2:30 does not exist on 2026-03-08: clocks go from 2:00 to 3:00',
    );
    expect(problem('2026-03-29', '02:59', 'Europe/Berlin')).toMatch(/clocks go from 2:00 to 3:00/);
    expect(problem('2011-12-30', '12:00', 'Pacific/Apia')).toMatch(/from 0:00 to 2011-12-31, 0:00/);
  });

  it.each([
    ['America/New_York', '2026-11-01', '01:30', ['EDT', 'EST']],
    ['Europe/Berlin', '2026-10-25', '02:30', ['GMT+2', 'GMT+1']],
  ])('asks which one in %s where an hour comes twice', (where, day, time, marks) => {
    const asked = readWhen({ day, time }, where);
    expect(asked).toMatchObject({ ok: false, field: 'which' });
    expect(asked.twice?.map(({ words }) => words)).toEqual([
      `the first time (${marks[0]})`,
      `the second time (${marks[1]})`,
    ]);
    const [first, second] = (['first', 'second'] as const).map((which) =>
      readWhen({ day, time, which }, where),
    );
    if (!first?.ok || !second?.ok) throw new Error('both exist');
    expect(second.at - first.at).toBe(3_600_000);
    for (const at of [first.at, second.at])
      expect(readWhen(typedWhen(at, where), where)).toMatchObject({ ok: true, at });
    expect(whenWords(second.at, where, day)).toMatch(
      new RegExp(` ${marks[1]?.replace('+', '.')}$`),
    );
  });
});

describe('an event as typed', () => {
  const typed = { event: 'out', temperature: '', hours: '', by: '' } as const;
  // 0:40 after an evening: 23:50 is typed, and the field still says today.
  const now = Date.parse('2026-03-27T00:40-04:00');
  const read = (day: string, time: string) => readRow({ ...typed, day, time }, zone, 'us', now);

  it('is not taken before it has happened, and past midnight the day before is offered', () => {
    expect(read('2026-03-27', '23:50')).toMatchObject({
      ok: false,
      field: 'time',
      problem: 'Time 23:50 on 2026-03-27 is still to come; the log takes what has happened',
      dayBefore: true,
    });
    expect(read('2026-03-26', '23:50')).toMatchObject({
      ok: true,
      row: { at: '2026-03-27T03:50Z' },
    });
    expect(read('2026-03-29', '12:00')).not.toHaveProperty('dayBefore');
    expect(read('2026-03-27', '00:41').ok).toBe(true);
  });

  it('has an oven that an oven can have, in the units it was read in', () => {
    const oven = (temperature: string, system: 'us' | 'metric') =>
      readRow(
        { ...typed, event: 'in oven', day: '2026-03-26', time: '20:00', temperature },
        zone,
        system,
        now,
      );
    expect(oven('275', 'us')).toMatchObject({ row: { temperature: { value: 275, unit: 'degF' } } });
    expect(oven('120', 'metric')).toMatchObject({
      row: { temperature: { value: 120, unit: 'degC' } },
    });
    expect(oven('120 °C', 'us')).toMatchObject({
      row: { temperature: { value: 120, unit: 'degC' } },
    });
    for (const text of ['', 'hot', '12 in', '9000', '-40'])
      expect(oven(text, 'us'), text).toMatchObject({ ok: false, field: 'temperature' });
  });

  it('has hours where electrodes are rebaked', () => {
    const baked = (hours: string) =>
      readRow(
        { ...typed, event: 'rebaked', day: '2026-03-26', time: '20:00', temperature: '700', hours },
        zone,
        'us',
        now,
      );
    expect(baked('2')).toMatchObject({ ok: true, row: { hours: 2 } });
    expect(baked('1:30')).toMatchObject({ ok: true, row: { hours: 1.5 } });
    for (const text of ['', '0', '49', 'long'])
      expect(baked(text), text).toMatchObject({ ok: false, field: 'hours' });
  });
});
