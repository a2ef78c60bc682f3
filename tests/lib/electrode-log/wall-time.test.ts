/**
 * Held to what Intl writes for each instant, minute by minute over whole days, and to the laws that
 * say when clocks change: 15 U.S.C. 260a (second Sunday of March, first of November, at 2:00) and
 * Directive 2000/84/EC (last Sundays of March and October, at 1:00 UTC).
 */
import { describe, expect, it } from 'vitest';
import {
  comesTwice,
  instantsOf,
  isZone,
  jumpOver,
  wallTime,
  zoneMark,
} from '../../../lib/electrode-log/wall-time.ts';

const minute = 60_000;
const zones: Record<string, [spring: string, autumn: string]> = {
  'America/New_York': ['2026-03-08', '2026-11-01'],
  'America/Los_Angeles': ['2026-03-08', '2026-11-01'],
  'Europe/Berlin': ['2026-03-29', '2026-10-25'],
  'Australia/Lord_Howe': ['2026-10-04', '2026-04-05'],
};

/** All minutes that the wall shows on a day, in order, as Intl writes them. */
function shown(day: string, zone: string): { time: string; instant: number }[] {
  const text = new Intl.DateTimeFormat('sv-SE', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
  });
  const noon = Date.parse(`${day}T12:00Z`);
  return Array.from({ length: 72 * 60 }, (_, at) => noon + (at - 36 * 60) * minute)
    .map((instant) => ({ instant, text: text.format(instant) }))
    .filter((it) => it.text.startsWith(day))
    .map((it) => ({ instant: it.instant, time: it.text.slice(-5) }));
}

describe.each(Object.entries(zones))('in %s', (zone, days) => {
  it.each(days)('on %s, every minute of the day has the instants that Intl shows it at', (day) => {
    const minutes = Map.groupBy(shown(day, zone), ({ time }) => time);
    for (let at = 0; at < 24 * 60; at++) {
      const time = new Date(at * minute).toISOString().slice(11, 16);
      const expected = (minutes.get(time) ?? []).map(({ instant }) => instant);
      expect(instantsOf({ day, time }, zone), time).toEqual(expected);
      for (const instant of expected) expect(wallTime(instant, zone)).toEqual({ day, time });
    }
  });
});

describe('when clocks change', () => {
  it('an hour that nobody has is told with the times around it', () => {
    const at = (day: string, time: string, zone: string) => jumpOver({ day, time }, zone);
    expect(at('2026-03-08', '02:30', 'America/New_York')).toEqual({
      from: { day: '2026-03-08', time: '02:00' },
      to: { day: '2026-03-08', time: '03:00' },
    });
    expect(at('2026-03-29', '02:00', 'Europe/Berlin')).toEqual({
      from: { day: '2026-03-29', time: '02:00' },
      to: { day: '2026-03-29', time: '03:00' },
    });
    // Samoa went over the date line and left out a day: Standard Time Act amendment of 2011.
    expect(instantsOf({ day: '2011-12-30', time: '12:00' }, 'Pacific/Apia')).toEqual([]);
    expect(at('2011-12-30', '12:00', 'Pacific/Apia')).toEqual({
      from: { day: '2011-12-30', time: '00:00' },
      to: { day: '2011-12-31', time: '00:00' },
    });
  });

  it('an hour that comes twice has two marks', () => {
    const [first = 0, second = 0] = instantsOf(
      { day: '2026-11-01', time: '01:30' },
      'America/New_York',
    );
    expect([first, second].map((it) => new Date(it).toISOString())).toEqual([
      '2026-11-01T05:30:00.000Z',
      '2026-11-01T06:30:00.000Z',
    ]);
    expect([first, second].map((it) => zoneMark(it, 'America/New_York'))).toEqual(['EDT', 'EST']);
  });
});

it('an hour comes twice at both of its instants, and not before, after, or on any other day', () => {
  for (const [zone, first] of [
    ['America/New_York', '2026-11-01T05:00Z'],
    ['Europe/Berlin', '2026-10-25T00:00Z'],
  ] as const) {
    const at = (minutes: number) => comesTwice(Date.parse(first) + minutes * minute, zone);
    expect([0, 59, 60, 119].map(at)).toEqual([true, true, true, true]);
    expect([-1, 120, -24 * 60, 24 * 60, 48 * 60].map(at)).toEqual(Array(5).fill(false));
  }
  expect(comesTwice(Date.parse('2026-03-08T07:00Z'), 'America/New_York')).toBe(false);
});

it('knows a zone from a name that is none', () => {
  expect(['Europe/Berlin', 'UTC', 'Nowhere/Land', ''].map(isZone)).toEqual([
    true,
    true,
    false,
    false,
  ]);
});
