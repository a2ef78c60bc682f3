/** What the log says of each row, and what is to be done next. AWS D1.1 2015 clause 5.3.2. */
import { describe, expect, it } from 'vitest';
import type { LogEvent } from '../../../lib/exposure/exposure-log.ts';
import { exposureNow } from '../../../lib/exposure/exposure-now.ts';

const oven = (value: number, system: 'us' | 'metric' = 'us') => ({ value, system });
const ask = (events: LogEvent[], now?: number) =>
  exposureNow({ classification: 'E7018', designator: 'none', events, now });
const opened: LogEvent = { event: 'opened', at: 18 };

describe('a log', () => {
  it('says that a stay in the oven ends where its hours are known', () => {
    const stay: LogEvent = { event: 'in oven', at: 19, temperature: oven(275), hours: 1 };
    const { reasons, state, hoursOut } = ask([opened, stay], 22);
    expect(reasons).toContain('20:00: the stay in the oven ends, and they are out.');
    expect(state).toBe('out, within its time');
    // One hour out, one in the oven that was too short to count, two out again.
    expect(hoursOut).toBeCloseTo(4, 9);
    expect(ask([opened, stay], 19.5).reasons.join()).not.toContain('the stay in the oven ends');
  });

  it('tells a cool oven from a hot one, at 250 °F and at 120 °C', () => {
    const said = (temperature: LogEvent['temperature']) =>
      ask([opened, { event: 'in oven', at: 18.75, temperature }]).reasons.at(-1);
    expect(said(oven(249))).toBe(
      '18:45: in an oven below 250 °F (120 °C), which counts as time out.',
    );
    expect(said(oven(119, 'metric'))).toContain('counts as time out');
    const hold =
      '18:45: in the oven with 45 min on the clock; 4 h at 250 °F (120 °C) or more start it afresh.';
    expect(said(oven(250))).toBe(hold);
    expect(said(oven(120, 'metric'))).toBe(hold);
  });

  it('says that nothing is on the clock, or too much', () => {
    const at = (hours: number): LogEvent => ({
      event: 'in oven',
      at: hours,
      temperature: oven(275),
    });
    expect(ask([opened, at(18)]).reasons.at(-1)).toBe(
      '18:00: in the oven, with nothing on the clock.',
    );
    expect(ask([opened, at(22.5)]).reasons.at(-1)).toContain('holding them warm does not dry them');
  });

  it('says what is on the clock when they come out, and that it starts afresh after a whole hold', () => {
    const back: LogEvent = { event: 'in oven', at: 19, temperature: oven(275) };
    const out = (at: number) => ask([opened, back, { event: 'out', at }]).reasons.at(-1);
    expect(out(21)).toBe('21:00: out, with 3 h on the clock.');
    expect(out(23)).toBe('23:00: out; the clock starts afresh.');
  });

  it.each([
    [500, 2, 'out, within its time', /starts afresh\. There is no second rebake/],
    [800, 2, 'out, within its time', /starts afresh/],
    [499, 2, 'practice only, tagged', /nobody knows that they are dry/],
    [750, 1.95, 'practice only, tagged', /nobody knows that they are dry/],
    [801, 2, 'scrap', /baked hotter than .*: scrap/],
  ])('rebaked at %s °F for %s h they are: %s', (degrees, hours, state, said) => {
    const rebaked: LogEvent = { event: 'rebaked', at: 23, temperature: oven(degrees), hours };
    const found = ask([opened, rebaked]);
    expect(found.state).toBe(state);
    expect(found.reasons.at(-1)).toMatch(said);
    expect(found.mayRebake).toBe(false);
  });

  it('rebakes once, and wet ones never', () => {
    const bake = (at: number): LogEvent => ({
      event: 'rebaked',
      at,
      temperature: oven(750),
      hours: 2,
    });
    const twice = ask([opened, bake(23), bake(29)]);
    expect(twice.state).toBe('practice only, tagged');
    expect(twice.reasons.at(-1)).toContain('Once is all that the code allows');
    const wet = ask([opened, { event: 'wet', at: 19 }, bake(23)]);
    expect(wet.state).toBe('scrap');
    expect(wet.reasons.at(-1)).toContain('does not help any more');
  });

  it('without an opening takes them as fresh in the first row', () => {
    expect(ask([{ event: 'out', at: 18 }]).reasons[0]).toContain('taken as fresh');
    expect(ask([opened]).reasons.join()).not.toContain('taken as fresh');
    expect(ask([{ event: 'wet', at: 18 }]).reasons.join()).not.toContain('taken as fresh');
  });
});

describe('what to do next', () => {
  it('is told with its time', () => {
    expect(ask([opened]).next).toBe('Use them, or have them back in the oven by 22:00.');
    const back: LogEvent = { event: 'in oven', at: 19, temperature: oven(275) };
    expect(ask([opened, back], 20).next).toMatch(/They are ready at 23:00\.$/);
    expect(ask([opened, back], 23).next).toBe('They may be issued.');
    expect(ask([opened], 23).next).toMatch(/^Rebake them once/);
  });

  it('is nothing while the container is sealed, with all of its time left', () => {
    expect(ask([])).toMatchObject({
      state: 'sealed',
      hoursLeft: 4,
      mayRebake: false,
      mayReturnToOven: false,
      next: 'Keep the container shut, dry and whole until it is needed.',
    });
  });
});
