import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answer, type Typed } from '../../../lib/answer.ts';
import electrodeExposure from '../../../lib/calculations/electrode-exposure.ts';

type Row = Record<string, string>;
const row = (event: string, at: string | number, rest: Row = {}): Row => ({
  event,
  at: String(at),
  ...rest,
});
const hot = { temperature: '250 degF' };
const bake = { temperature: '700 degF', hours: '2' };

function ask(events: Row[], rest: Typed = {}) {
  const answered = answer(electrodeExposure, { classification: 'E7018', events, ...rest });
  if (!answered.ok) return { refused: answered.problems[0]?.field };
  return answered.results as ReturnType<typeof electrodeExposure.compute>;
}

describe('electrode-exposure: every event from every state', () => {
  // Common practice and AWS D1.1 2015 5.3.2, restated as a table. A log that leads to each state,
  // all of them standing at 10 h, and the state after each event at 10 h.
  const expired = [row('out', 0), row('out', 5)];
  const states: Record<string, Row[]> = {
    sealed: [],
    'out, within its time': [row('opened', 9)],
    'in the oven, holding': [row('opened', 5), row('in oven', 8, hot)],
    'in the oven, ready': [row('opened', 1), row('in oven', 3, hot)],
    'out too long': [row('opened', 2)],
    'practice only, tagged': [row('rebaked', 1, bake), row('out', 3)],
    scrap: [row('wet', 1)],
  };
  const table: Record<string, [opened: string, out: string, oven: string, bake: string]> = {
    sealed: [
      'out, within its time',
      'out, within its time',
      'in the oven, ready',
      'out, within its time',
    ],
    'out, within its time': [
      '-',
      'out, within its time',
      'in the oven, holding',
      'out, within its time',
    ],
    'in the oven, holding': ['-', 'out too long', 'in the oven, holding', 'out, within its time'],
    'in the oven, ready': [
      '-',
      'out, within its time',
      'in the oven, ready',
      'out, within its time',
    ],
    'out too long': ['-', 'out too long', 'out too long', 'out, within its time'],
    'practice only, tagged': [
      '-',
      'practice only, tagged',
      'practice only, tagged',
      'practice only, tagged',
    ],
    scrap: ['scrap', 'scrap', 'scrap', 'scrap'],
  };
  it.each(Object.entries(table))('from %s', (state, [opened, out, oven, baked]) => {
    const log = states[state] as Row[];
    expect(ask(log, { now: '10' })).toMatchObject({ state });
    const stateAfter = (...event: Parameters<typeof row>) => {
      const result = ask([...log, row(...event)]);
      return 'refused' in result ? '-' : result.state;
    };
    expect(stateAfter('opened', 10)).toBe(opened);
    expect(stateAfter('out', 10)).toBe(out);
    expect(stateAfter('in oven', 10, hot)).toBe(oven);
    expect(stateAfter('rebaked', 10, bake)).toBe(baked);
    expect(stateAfter('wet', 10)).toBe('scrap');
    expect(stateAfter('tagged', 10)).toBe(state === 'scrap' ? 'scrap' : 'practice only, tagged');
  });

  it('gives the two times only where they mean something, and every reason with what to do', () => {
    const times = (events: Typed['events'], now?: string) => {
      const found = answer(electrodeExposure, { classification: 'E7018', events, now });
      if (!found.ok) throw new Error(found.problems[0]?.text);
      const { backBy, readyFrom, reasons } = found.results;
      return { backBy, readyFrom, reasons: reasons as { reason: string }[] };
    };
    const opened = { event: 'opened', at: '18:00' };
    const back = { event: 'in oven', at: '19:00', temperature: '275 °F' };
    expect(times([opened])).toMatchObject({ backBy: '22:00', readyFrom: undefined });
    const holding = times([opened, back], '20:00');
    expect(holding).toMatchObject({ backBy: undefined, readyFrom: '23:00' });
    expect(holding.reasons.map(({ reason }) => reason.slice(0, 6))).toEqual([
      '18:00:',
      '19:00:',
      'Taken ',
    ]);
  });
  it('knows an expired log however it is written', () => {
    expect(ask(expired)).toMatchObject({ state: 'out too long', hoursOut: 5, hoursLeft: 0 });
  });
});

describe('electrode-exposure: the clock', () => {
  it('issues again from 1:00 what went back at 21:00 after three hours', () => {
    const log = [row('opened', '18:00'), row('in oven', '21:00', hot)];
    expect(ask(log)).toMatchObject({
      state: 'in the oven, holding',
      readyFrom: '1:00 the next day',
      hoursOut: 3,
    });
    expect(ask(log, { now: '24:59' })).toMatchObject({ state: 'in the oven, holding' });
    expect(ask(log, { now: '25:00' })).toMatchObject({ state: 'in the oven, ready', hoursOut: 0 });
    expect(ask([...log, row('out', '25:00')], { now: '26:00' })).toMatchObject({
      state: 'out, within its time',
      hoursOut: 1,
      hoursLeft: 3,
      backBy: '5:00 the next day',
    });
  });

  it('does not stop for a short return', () => {
    const log = [row('opened', 0), row('in oven', 1, hot), row('out', 3)];
    expect(ask(log)).toMatchObject({ state: 'out, within its time', hoursOut: 3, hoursLeft: 1 });
    expect(ask(log, { now: '4.1' })).toMatchObject({ state: 'out too long', mayRebake: true });
  });

  it('takes four hours to the minute and no more', () => {
    const log = [row('out', '18:20')];
    expect(ask(log, { now: '22:20' })).toMatchObject({
      state: 'out, within its time',
      mayReturnToOven: true,
    });
    expect(ask(log, { now: '22:21' })).toMatchObject({
      state: 'out too long',
      mayReturnToOven: false,
      mayRebake: true,
      hoursLeft: 0,
    });
  });

  it.each([
    { designator: 'R', hours: 9 },
    { designator: 'H4R', hours: 9 },
    { designator: 'H16R', hours: 9 },
    { designator: 'H4', hours: 4 },
    { designator: 'none', hours: 4 },
    { classification: 'E7018M', hours: 9 },
    { classification: 'E7016-1', hours: 4 },
  ])('gives $hours h for $classification $designator', ({ hours, ...given }) => {
    expect(ask([row('out', 0)], given)).toMatchObject({ hoursLeft: hours, backBy: `${hours}:00` });
    expect(ask([row('out', 0)], { ...given, now: String(hours + 0.1) })).toMatchObject({
      state: 'out too long',
    });
  });

  it('counts an oven below 250 °F, or 120 °C, as time out', () => {
    const inOvenAt = (temperature: string) =>
      ask([row('opened', 0), row('in oven', 1, { temperature })], { now: '5.5' });
    expect(inOvenAt('249 degF')).toMatchObject({ state: 'out too long', hoursOut: 5.5 });
    expect(inOvenAt('119 degC')).toMatchObject({ state: 'out too long' });
    expect(inOvenAt('250 degF')).toMatchObject({ state: 'in the oven, ready' });
    expect(inOvenAt('120 degC')).toMatchObject({ state: 'in the oven, ready' });
  });

  it('counts the time of an oven that goes cold and comes back', () => {
    const log = [
      row('opened', 0),
      row('in oven', 1, hot),
      row('in oven', 2, { temperature: '100 degF' }),
      row('in oven', 3, hot),
    ];
    expect(ask(log)).toMatchObject({
      state: 'in the oven, holding',
      hoursOut: 3,
      readyFrom: '7:00',
    });
  });

  it('goes on holding through a second reading of the oven', () => {
    const log = [row('opened', 0), row('in oven', 1, hot), row('in oven', 3, hot)];
    expect(ask(log)).toMatchObject({ readyFrom: '5:00' });
  });

  it('takes a stay with hours as over at its end', () => {
    const log = [row('opened', 0), row('in oven', 1, { ...hot, hours: '4' })];
    expect(ask(log)).toMatchObject({ state: 'in the oven, ready' });
    expect(ask(log, { now: '7' })).toMatchObject({ state: 'out, within its time', hoursOut: 2 });
    const short = [row('opened', 0), row('in oven', 1, { ...hot, hours: '2' })];
    expect(ask(short, { now: '3.5' })).toMatchObject({ hoursOut: 3.5 });
  });

  it('does not start while they go from the container straight into the oven', () => {
    const log = [row('opened', 0), row('in oven', 0, hot), row('out', 1)];
    expect(ask(log)).toMatchObject({ state: 'out, within its time', hoursOut: 0, hoursLeft: 4 });
  });
});

describe('electrode-exposure: the rebake', () => {
  const stale = [row('out', 0), row('out', 6)];
  it.each([
    ['500 degF', '2', 'out, within its time'],
    ['800 degF', '2', 'out, within its time'],
    ['260 degC', '2', 'out, within its time'],
    ['430 degC', '2', 'out, within its time'],
    ['499 degF', '2', 'practice only, tagged'],
    ['259 degC', '2', 'practice only, tagged'],
    ['700 degF', '1.9', 'practice only, tagged'],
    ['801 degF', '2', 'scrap'],
    ['431 degC', '2', 'scrap'],
  ])('at %s for %s h: %s', (temperature, hours, state) => {
    expect(ask([...stale, row('rebaked', 7, { temperature, hours })])).toMatchObject({
      state,
      mayRebake: false,
    });
  });

  it('starts the clock afresh when it ends, once', () => {
    const once = [...stale, row('rebaked', 7, bake)];
    expect(ask(once, { now: '10' })).toMatchObject({ hoursOut: 1, hoursLeft: 3, mayRebake: false });
    expect(ask(once, { now: '13.5' })).toMatchObject({ state: 'practice only, tagged' });
    expect(ask([...once, row('rebaked', 20, bake)])).toMatchObject({
      state: 'practice only, tagged',
    });
  });
});

describe('electrode-exposure: what it refuses', () => {
  it.each(['E6010', 'E6011', 'E6013', 'E7024'])('oven advice for %s', (classification) => {
    expect(ask([row('out', 0)], { classification })).toEqual({ refused: 'classification' });
  });
  it('says that cellulose needs its moisture', () => {
    const answered = answer(electrodeExposure, { classification: 'E6010', events: [] });
    expect(JSON.stringify(answered)).toContain('Never put it in an electrode oven');
  });
  it.each([
    ['a row out of order', [row('out', 21), row('in oven', 1, hot)], 'events.2.at'],
    [
      'a row inside a stay of the row above',
      [row('in oven', 1, { ...hot, hours: '4' }), row('out', 3)],
      'events.2.at',
    ],
    ['a row inside the bake above', [row('rebaked', 1, bake), row('out', 2)], 'events.2.at'],
    ['a container opened twice', [row('opened', 1), row('opened', 2)], 'events.2.event'],
    ['an oven without its temperature', [row('in oven', 1)], 'events.1.temperature'],
    ['a bake without its hours', [row('rebaked', 1, { temperature: '700' })], 'events.1.hours'],
    ['an event of another name', [row('stolen', 1)], 'events.1.event'],
    ['a minute that no clock shows', [row('out', '18:75')], 'events.1.at'],
  ])('%s', (_, events, refused) => {
    expect(ask(events)).toEqual({ refused });
  });
  it('a question about a time before the log ends', () => {
    expect(ask([row('out', 5)], { now: '4' })).toEqual({ refused: 'now' });
  });
});

describe('electrode-exposure: any log of outs and returns', () => {
  const stay = fc.record({
    out: fc.integer({ min: 1, max: 300 }),
    held: fc.integer({ min: 1, max: 400 }),
  });
  it('adds up as a minute count does', () => {
    fc.assert(
      fc.property(fc.array(stay, { minLength: 1, maxLength: 8 }), (stays) => {
        // The rule again, minute by minute: a hold of 240 wipes the slate while it is within 240.
        let slate = 0;
        let dead = false;
        let minute = 0;
        const rows: Row[] = [];
        for (const { out, held } of stays) {
          rows.push(row('out', minute / 60));
          for (let m = 0; m < out; m++) if (++slate > 240) dead = true;
          minute += out;
          rows.push(row('in oven', minute / 60, hot));
          if (!dead && held >= 240) slate = 0;
          else for (let m = 0; m < held; m++) if (++slate > 240) dead = true;
          minute += held;
        }
        rows.push(row('out', minute / 60));
        const result = ask(rows);
        if ('refused' in result) throw new Error(`refused ${result.refused}`);
        expect(result.state).toBe(dead ? 'out too long' : 'out, within its time');
        if (!dead) expect(result.hoursOut * 60).toBeCloseTo(slate, 6);
      }),
    );
  });
});

describe('electrode-exposure: low-alloy electrodes of A5.5 (AWS D1.1 2015 Table 5.1, from memory)', () => {
  it.each([
    ['E70XX-X', 4],
    ['E80XX-X', 2],
    ['E90XX-X', 1],
    ['E100XX-X', 0.5],
    ['E110XX-X', 0.5],
  ])('%s may be out for %d h, with an R or without', (classification, hours) => {
    const events = [row('out', 0)];
    for (const designator of ['none', 'H4R'])
      expect(ask(events, { classification, designator })).toMatchObject({ hoursLeft: hours });
    const over = ask(events, { classification, now: String(hours + 0.01) });
    expect(over).toMatchObject({ state: 'out too long', mayRebake: true });
  });

  it.each([
    ['700 degF', '1', 'out, within its time'],
    ['370 degC', '1', 'out, within its time'],
    ['800 degF', '1', 'out, within its time'],
    ['699 degF', '1', 'practice only, tagged'],
    ['369 degC', '2', 'practice only, tagged'],
    ['700 degF', '0.9', 'practice only, tagged'],
    ['801 degF', '1', 'scrap'],
  ])(
    'are rebaked at 700 to 800 °F for an hour: %s for %s h leaves them %s',
    (temperature, hours, state) => {
      const events = [row('out', 0), row('rebaked', 5, { temperature, hours })];
      const found = ask(events, { classification: 'E80XX-X' });
      expect(found).toMatchObject({ state, mayRebake: false });
    },
  );

  it('say their own bake, and draw it', () => {
    const events = [row('out', 0), row('rebaked', 5, { temperature: '700 degF', hours: '1' })];
    const found = answer(electrodeExposure, { classification: 'E80XX-X', events });
    if (!found.ok) throw new Error(found.problems[0]?.text);
    expect(found.because.map(({ text }) => text).join(' ')).toContain(
      '{700 degF|370 degC} to {800 degF|430 degC} for at least 1 h',
    );
    const { limit, line } = found.results.trace as { limit: number; line: { hours: number }[] };
    expect([limit, line.at(-1)?.hours]).toEqual([2, 0]);
  });
});
