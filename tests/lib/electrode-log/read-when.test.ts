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
    for (const time of [
      '',
      '24:00',
      '18',
      '18:60',
      'noon',
      '118:15',
      '18:15:60',
      '18:15:5',
      '8:5',
      '18:15 h',
    ])
      expect(problem('2026-03-26', time), time).toMatch(/^time: Time needs hours and minutes/);
    expect(readWhen({ day: '2026-03-26', time: '9:05' }, 'UTC')).toMatchObject({
      at: Date.parse('2026-03-26T09:05Z'),
    });
    for (const time of [' 23:59 ', '23:59:00', '23:59:59'])
      expect(readWhen({ day: '2026-03-26', time }, 'UTC')).toEqual({
        ok: true,
        at: Date.parse('2026-03-26T23:59Z'),
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
    expect(first.twice?.map(({ which }) => which)).toEqual(['first', 'second']);
    expect(second.twice).toEqual(first.twice);
    expect(typedWhen(first.at, where)).toEqual({ day, time, which: 'first' });
    expect(typedWhen(second.at, where)).toEqual({ day, time, which: 'second' });
    expect(typedWhen(second.at + 3 * 3_600_000, where)).not.toHaveProperty('which');
    // A row in such an hour says which one it was, and offers the other, even where it is refused.
    const typed = { event: 'in oven', day, time, hours: '', by: ' TL ' } as const;
    const row = (temperature: string, which?: string) =>
      readRow({ ...typed, temperature, ...(which && { which }) }, where, 'us', second.at);
    expect(row('275')).toMatchObject({ ok: false, field: 'which', twice: first.twice });
    expect(row('275', 'second')).toMatchObject({ ok: true, twice: first.twice, row: { by: 'TL' } });
    expect(row('', 'first')).toMatchObject({ field: 'temperature', twice: first.twice });
    const early = readRow({ ...typed, temperature: '275', which: 'second' }, where, 'us', first.at);
    expect(early).toMatchObject({ ok: false, field: 'time', twice: first.twice });
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
    // The clock on the wall and the one in a phone differ by two minutes at most.
    expect(read('2026-03-27', '00:42').ok).toBe(true);
    expect(read('2026-03-27', '00:43').ok).toBe(false);
    // To the minute a day from now, it was a day ago; a minute later it was not.
    expect(read('2026-03-28', '00:40')).toHaveProperty('dayBefore', true);
    expect(read('2026-03-28', '00:41')).not.toHaveProperty('dayBefore');
    expect(read('2026-03-26', '20:00')).not.toHaveProperty('twice');
    expect(read('', '20:00')).toMatchObject({ ok: false, field: 'day' });
    expect(read('2026-03-26', '20:00')).not.toHaveProperty('row.temperature');
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
    for (const text of ['32', '1500', '0 °C'])
      expect(oven(text, 'us'), text).toMatchObject({ ok: true });
    for (const text of ['31.9', '1500.1', '-0.1 °C'])
      expect(oven(text, 'us'), text).toMatchObject({
        problem:
          'Oven temperature must be from {32 degF} to {1500 degF}: no electrode oven is colder or hotter',
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
    expect(baked('48')).toMatchObject({ ok: true, row: { hours: 48 } });
    expect(baked('90 min')).toMatchObject({ ok: true, row: { hours: 1.5 } });
    // Kept to the minute.
    expect(baked('1.999')).toMatchObject({ ok: true, row: { hours: 2 } });
    expect(baked('2')).toMatchObject({ row: { temperature: { value: 700, unit: 'degF' } } });
    for (const text of ['', '0', '49', 'long', '48.1', '-1'])
      expect(baked(text), text).toMatchObject({ ok: false, field: 'hours' });
  });
});
