/**
 * The clock of open air against a plain count, quarter hour by quarter hour, and each of its bounds a
 * second before and after. AWS D1.1 2015 clauses 5.3.2.1 and 5.3.2.2 (read): four hours at 250 °F or
 * more start it afresh. That a shorter return does not even stop it is our reading of them.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ExposureClock } from '../../../lib/exposure/exposure-clock.ts';
import { ExposureLog, type LogEvent } from '../../../lib/exposure/exposure-log.ts';
import { exposureNow } from '../../../lib/exposure/exposure-now.ts';
import { exposureTrace } from '../../../lib/exposure/exposure-trace.ts';

const hot = { value: 275, system: 'us' } as const;
const cool = { value: 200, system: 'us' } as const;
const secondInHours = 1 / 3600;

type Step = { wait: number; to: 'out' | 'hot' | 'cool' | 'hot for an hour' };

/** Quarters of an hour out and held, counted one by one; what lies behind the last step too. */
function counted(steps: readonly Step[], rest: number, limit: number) {
  let [out, held] = [0, 0];
  let place: 'air' | 'hot' = 'air';
  const leave = () => {
    if (out > 0 && out <= 4 * limit) out = held >= 16 ? 0 : out + held;
    held = 0;
    place = 'air';
  };
  const pass = (quarters: number) => {
    for (let i = 0; i < quarters; i++) {
      if (place === 'hot') held++;
      else out++;
    }
  };
  for (const { wait, to } of steps) {
    pass(wait);
    if (to === 'out' || to === 'cool') leave();
    else place = 'hot';
    if (to === 'hot for an hour') {
      pass(4);
      leave();
    }
  }
  pass(rest);
  const over = out > 4 * limit;
  const whole = place === 'hot' && (out === 0 || held >= 16);
  const hours = over ? out / 4 : whole ? 0 : (out + held) / 4;
  const state = over
    ? 'out too long'
    : place === 'air'
      ? 'out, within its time'
      : whole
        ? 'in the oven, ready'
        : 'in the oven, holding';
  return { hours, state, holdLeft: (16 - held) / 4 };
}

const steps = fc.array(
  fc.record({
    wait: fc.nat(18),
    to: fc.constantFrom('out', 'hot', 'cool', 'hot for an hour') as fc.Arbitrary<Step['to']>,
  }),
  { maxLength: 7 },
);
/** From one hot oven into the next without a moment out, the hold goes on: tried by itself below. */
const withoutHandingOver = (list: readonly Step[]) =>
  list.every(({ wait }, i) => wait > 0 || list[i - 1]?.to !== 'hot for an hour');

function logOf(list: readonly Step[]): { events: LogEvent[]; end: number } {
  let at = 6;
  const events: LogEvent[] = [{ event: 'opened', at }];
  for (const { wait, to } of list) {
    at += wait / 4;
    if (to === 'out') events.push({ event: 'out', at });
    else if (to === 'hot for an hour') {
      events.push({ event: 'in oven', at, temperature: hot, hours: 1 });
      at += 1;
    } else events.push({ event: 'in oven', at, temperature: to === 'hot' ? hot : cool });
  }
  return { events, end: at };
}

describe('a container followed through its log', () => {
  it('shows what counting by quarters of an hour shows, under both limits', () => {
    fc.assert(
      fc.property(steps, fc.nat(24), fc.constantFrom(4, 9), (list, rest, limit) => {
        const { events, end } = logOf(list);
        const now = end + rest / 4;
        fc.pre(withoutHandingOver(list));
        // A stay that has just ended is not yet noticed at its very end.
        fc.pre(rest > 0 || list.at(-1)?.to !== 'hot for an hour');
        const found = exposureNow({
          classification: 'E7018',
          designator: limit === 9 ? 'R' : 'none',
          events,
          now,
        });
        const { hours, state, holdLeft } = counted(list, rest, limit);
        expect(found.state).toBe(state);
        expect(found.hoursOut).toBeCloseTo(hours, 9);
        expect(found.hoursLeft).toBeCloseTo(
          state === 'out too long' ? 0 : Math.max(0, limit - hours),
          9,
        );
        expect(found.until).toBe(now);
        expect(found.mayReturnToOven).toBe(state === 'out, within its time');
        expect(found.backBy ?? 0).toBeCloseTo(
          state === 'out, within its time' ? now + limit - hours : 0,
          9,
        );
        expect(found.readyFrom ?? 0).toBeCloseTo(
          state === 'in the oven, holding' ? now + holdLeft : 0,
          9,
        );
      }),
      { numRuns: 400 },
    );
  });

  it('is drawn as it is counted: corners, and where they were', () => {
    fc.assert(
      fc.property(steps, fc.integer({ min: 1, max: 24 }), (list, rest) => {
        const { events, end } = logOf(list);
        fc.pre(withoutHandingOver(list));
        const { line, stays, limit } = exposureTrace(4, events, end + rest / 4);
        expect(limit).toBe(4);
        expect(line[0]).toEqual({ time: 6, hours: 0 });
        expect(line.at(-1)?.time).toBeCloseTo(end + rest / 4, 9);
        expect(line.at(-1)?.hours).toBeCloseTo(counted(list, rest, 4).hours, 9);
        for (const [i, { time }] of line.entries())
          if (i > 0) expect(time).toBeGreaterThanOrEqual((line[i - 1]?.time as number) - 1e-12);
        // It climbs an hour in an hour, or falls to nothing after a whole hold and stays there.
        for (const [i, corner] of line.entries()) {
          const before = line[i - 1];
          if (!before || corner.time - before.time < 0.01) continue;
          const climb = corner.hours - before.hours;
          const still = Math.abs(climb) < 1e-9;
          expect(still || Math.abs(climb - (corner.time - before.time)) < 1e-3).toBe(true);
        }
        for (const [i, { from, to, place }] of stays.entries()) {
          expect(to).toBeGreaterThan(from);
          if (i === 0) continue;
          expect(from).toBe(stays[i - 1]?.to);
          expect(place).not.toBe(stays[i - 1]?.place);
        }
        const inOven = stays.filter(({ place }) => place === 'oven');
        const ovens = inOven.reduce((sum, { from, to }) => sum + to - from, 0);
        let [expected, place] = [0, 'air'];
        for (const [i, { to }] of list.entries()) {
          if (to === 'hot for an hour') expected += 1;
          place = to === 'out' || to === 'hot for an hour' ? 'air' : 'oven';
          if (place === 'oven') expected += (list[i + 1]?.wait ?? rest) / 4;
        }
        expect(ovens).toBeCloseTo(expected, 9);
      }),
      { numRuns: 200 },
    );
  });
});

describe('a bound of the clock', () => {
  const held = (hours: number) => {
    const log = new ExposureLog(4);
    log.add({ event: 'opened', at: 0 }, 1);
    log.add({ event: 'in oven', at: 1, temperature: hot }, 2);
    log.advance(1 + hours);
    return log;
  };
  const out = (hours: number) => {
    const log = new ExposureLog(4);
    log.add({ event: 'opened', at: 0 }, 1);
    log.advance(hours);
    return log;
  };
  it.each([
    [4, true],
    [4 - secondInHours / 2, true],
    [4 - 3 * secondInHours, false],
    [3, false],
  ])('a hold of %d h is whole: %s', (hours, whole) => {
    const log = held(hours);
    expect(log.state).toBe(whole ? 'in the oven, ready' : 'in the oven, holding');
    expect(log.clock.hoursOut).toBeCloseTo(whole ? 0 : 1 + hours, 9);
    expect(log.clock.isReady).toBe(whole);
    log.clock.takeOut();
    expect(log.clock.hoursOut).toBeCloseTo(whole ? 0 : 1 + hours, 9);
  });
  it.each([
    [4, false],
    [4 + secondInHours / 2, false],
    [4 + 3 * secondInHours, true],
  ])('%d h out of 4 are too long: %s', (hours, over) => {
    expect(out(hours).state).toBe(over ? 'out too long' : 'out, within its time');
    expect(out(hours).clock.isOver).toBe(over);
  });
  it('half a second in the air is no time out, three are', () => {
    for (const [seconds, state] of [
      [0.5, 'in the oven, ready'],
      [3, 'in the oven, holding'],
    ] as const) {
      const log = out(seconds * secondInHours);
      log.add({ event: 'in oven', at: seconds * secondInHours, temperature: hot }, 2);
      expect(log.state).toBe(state);
    }
  });
  it('a stay ends at its hour, and a second later it is noticed', () => {
    const clock = new ExposureClock(4);
    clock.takeOut();
    clock.advance(1);
    clock.putInOven(true, 2);
    expect(clock.advance(2 + secondInHours / 2)).toBeUndefined();
    expect(clock.place).toBe('oven');
    expect(clock.advance(2 + 3 * secondInHours)).toBe(2);
    expect([clock.place, clock.stayEnds]).toEqual(['air', undefined]);
    expect(clock.hoursOut).toBeCloseTo(2, 2);
  });
  it('a clock never runs back, and one that was out too long is mended by no hold', () => {
    const log = out(5);
    log.advance(3);
    expect(log.clock.time).toBe(5);
    log.add({ event: 'in oven', at: 5, temperature: hot }, 2);
    log.advance(12);
    expect(log.clock).toMatchObject({ hoursOut: 5, isReady: false, isOver: true });
    expect(log.state).toBe('out too long');
    log.add({ event: 'out', at: 12 }, 3);
    expect(log.state).toBe('out too long');
    expect(log.clock.hoursOut).toBe(5);
  });
  it('a container in a cool oven, or taken from one hot oven to another, keeps its count', () => {
    const log = out(1);
    log.add({ event: 'in oven', at: 1, temperature: hot }, 2);
    log.add({ event: 'in oven', at: 3, temperature: hot }, 3);
    log.advance(5);
    expect(log.state).toBe('in the oven, ready');
    const broken = out(1);
    broken.add({ event: 'in oven', at: 1, temperature: hot }, 2);
    broken.add({ event: 'in oven', at: 3, temperature: cool }, 3);
    broken.add({ event: 'in oven', at: 3, temperature: hot }, 4);
    const handed = out(1);
    handed.add({ event: 'in oven', at: 1, temperature: hot, hours: 2 }, 2);
    handed.add({ event: 'in oven', at: 3, temperature: hot }, 3);
    handed.advance(5);
    expect(handed.state).toBe('in the oven, ready');
    broken.advance(5);
    expect(broken.state).toBe('in the oven, holding');
    expect(broken.clock.holdEnds).toBe(7);
  });
});

describe('a row that cannot stand', () => {
  const refused = (events: LogEvent[], told?: ConstructorParameters<typeof ExposureLog>[1]) => {
    const log = new ExposureLog(4, told);
    try {
      for (const [i, event] of events.entries()) log.add(event, i + 1);
    } catch (thrown) {
      return thrown as { message: string; field: string };
    }
    return undefined;
  };
  const opened: LogEvent = { event: 'opened', at: 18 };
  it('comes before the row above is over, by more than a second', () => {
    const early = refused([opened, { event: 'out', at: 17 }]);
    expect(early?.field).toBe('events.2.at');
    expect(early?.message).toBe(
      '17:00 comes before the row above is over, at 18:00; past midnight count on, so that 1:00 is 25:00',
    );
    expect(refused([opened, { event: 'out', at: 18 - secondInHours / 2 }])).toBeUndefined();
    expect(refused([opened, { event: 'out', at: 18 - 3 * secondInHours }])).toBeDefined();
    const stay: LogEvent = { event: 'in oven', at: 19, temperature: hot, hours: 2 };
    expect(refused([opened, stay, { event: 'out', at: 20.5 }])?.message).toMatch(
      /^20:30 comes before the row above is over, at 21:00/,
    );
    expect(refused([opened, stay, { event: 'out', at: 21 }])).toBeUndefined();
    const plain = { time: (hours: number) => `hour ${hours}` };
    expect(refused([opened, { event: 'out', at: 17 }], plain)?.message).toBe(
      'hour 17 comes before the row above is over, at hour 18',
    );
  });
  it('opens what is open, or lacks what its oven needs', () => {
    expect(refused([opened, { event: 'opened', at: 19 }])).toMatchObject({
      message: 'A container is opened once, in the first row',
      field: 'events.2.event',
    });
    for (const event of ['in oven', 'rebaked'] as const)
      expect(refused([opened, { event, at: 19, hours: 2 }])).toMatchObject({
        message: 'The oven’s temperature is missing',
        field: 'events.2.temperature',
      });
    expect(refused([opened, { event: 'rebaked', at: 19, temperature: hot }])).toMatchObject({
      message: 'The hours at that temperature are missing',
      field: 'events.2.hours',
    });
    expect(refused([opened, { event: 'in oven', at: 19, temperature: hot }])).toBeUndefined();
  });
});

describe('a rebake (AWS D1.1 2015 clause 5.3.2.4, read)', () => {
  const baked = (hours: number, degrees = 700, at = 23) => {
    const log = new ExposureLog(4);
    log.add({ event: 'opened', at: 18 }, 1);
    log.add({ event: 'rebaked', at, temperature: { value: degrees, system: 'us' }, hours }, 2);
    return log;
  };
  it('takes its hours on the clock of the wall and starts the other one afresh', () => {
    const log = baked(2);
    expect(log.reasons.at(-1)).toBe(
      '23:00: rebaked until 1:00 the next day; the clock starts afresh. There is no second rebake.',
    );
    expect(log.clock).toMatchObject({ time: 25, hoursOut: 0, place: 'air' });
    log.advance(26);
    expect(log.clock.hoursOut).toBeCloseTo(1, 9);
  });
  it('of less than two hours, by more than a second, leaves it in doubt', () => {
    expect(baked(2 - secondInHours / 2).state).toBe('out, within its time');
    expect(baked(2 - 3 * secondInHours).state).toBe('practice only, tagged');
    expect(baked(2 - 3 * secondInHours).clock.time).toBeCloseTo(25, 2);
  });
  it('from an oven, cool or hot, ends the stay there', () => {
    const log = new ExposureLog(4);
    log.add({ event: 'opened', at: 0 }, 1);
    log.add({ event: 'in oven', at: 1, temperature: hot }, 2);
    log.add({ event: 'rebaked', at: 2, temperature: { value: 900, system: 'us' }, hours: 1 }, 3);
    expect(log.clock).toMatchObject({ place: 'air', time: 3, hoursOut: 2 });
    expect(log.state).toBe('scrap');
  });
  it('may be done once, and not in a sealed container', () => {
    expect(new ExposureLog(4).mayRebake).toBe(false);
    const log = new ExposureLog(4);
    log.add({ event: 'opened', at: 0 }, 1);
    expect(log.mayRebake).toBe(true);
    expect(baked(2).mayRebake).toBe(false);
    log.add({ event: 'tagged', at: 1 }, 2);
    expect([log.mayRebake, log.state]).toEqual([false, 'practice only, tagged']);
    log.add({ event: 'wet', at: 2 }, 3);
    log.add({ event: 'tagged', at: 3 }, 4);
    expect(log.state).toBe('scrap');
  });
});

it('an opening that is logged is not missed, and a row that cannot stand is named by its number', () => {
  const log = new ExposureLog(4);
  log.add({ event: 'opened', at: 0 }, 1);
  log.add({ event: 'out', at: 1 }, 2);
  log.add({ event: 'in oven', at: 2, temperature: hot }, 3);
  expect(log.reasons.join()).not.toContain('No opening is logged');
  const twice = () =>
    exposureNow({
      classification: 'E7018',
      designator: 'none',
      events: [
        { event: 'opened', at: 0 },
        { event: 'opened', at: 1 },
      ],
      now: undefined,
    });
  expect(twice).toThrow(expect.objectContaining({ field: 'events.2.event' }));
});

it('out too long again after the one rebake, they are for practice only', () => {
  const log = new ExposureLog(4);
  log.add({ event: 'opened', at: 0 }, 1);
  log.advance(5);
  expect([log.state, log.mayRebake]).toEqual(['out too long', true]);
  log.add({ event: 'rebaked', at: 5, temperature: { value: 700, system: 'us' }, hours: 2 }, 2);
  log.advance(12);
  expect([log.state, log.mayRebake]).toEqual(['practice only, tagged', false]);
});

describe('the moment asked about', () => {
  const events: LogEvent[] = [
    { event: 'opened', at: 0 },
    { event: 'rebaked', at: 5, temperature: { value: 700, system: 'us' }, hours: 2 },
  ];
  const ask = (now: number | undefined, list = events) =>
    exposureNow({ classification: 'E7018', designator: 'none', events: list, now });
  it('may not lie before the end of the log', () => {
    expect(() => ask(6.9)).toThrow('6:54 lies before the end of the log, 7:00');
    expect(ask(7).until).toBe(7);
    expect(ask(undefined).until).toBe(7);
  });
  it('is the end of a stay whose hours are known where none is given', () => {
    const stay: LogEvent = { event: 'in oven', at: 1, temperature: hot, hours: 1.5 };
    expect(ask(undefined, [events[0] as LogEvent, stay]).until).toBe(2.5);
  });
  it('leaves no hours to what is spoiled, and all of them to what is sealed', () => {
    expect(ask(1, [events[0] as LogEvent, { event: 'wet', at: 1 }]).hoursLeft).toBe(0);
    expect(ask(3, []).hoursLeft).toBe(4);
    const dry: LogEvent = { event: 'in oven', at: 1, temperature: hot };
    expect(ask(2, [events[0] as LogEvent, dry]).hoursLeft).toBe(2);
  });
  it('is refused for electrodes that no oven may hold', () => {
    const of = (classification: 'E6010' | 'E7024' | 'E7018M', designator: 'none' | 'R') => () =>
      exposureNow({ classification, designator, events: [], now: undefined });
    expect(of('E6010', 'none')).toThrow('cellulose covering');
    expect(of('E7024', 'none')).toThrow('is not a low-hydrogen electrode');
    expect(of('E7018M', 'R')).toThrow('no R follows it');
    expect(of('E7018M', 'none')().limit).toBe(9);
  });
});
