import { describe, expect, it } from 'vitest';
import { givenText } from '../../../components/WorkedExample/given-text.ts';
import { answer, type Typed } from '../../../lib/answer.ts';
import type { Calculation } from '../../../lib/calculation.ts';
import exposure from '../../../lib/calculations/electrode-exposure.ts';
import testRange from '../../../lib/calculations/test-range.ts';
import travelSpeed from '../../../lib/calculations/travel-speed.ts';

function told(calculation: Calculation, typed: Typed, name: string) {
  const answered = answer(calculation, typed);
  if (!answered.ok) throw new Error(answered.problems[0]?.text);
  const input = calculation.inputs[name];
  const given = answered.given[name];
  if (!input || !given) throw new Error(`${name} was not given`);
  return givenText(input, given);
}

describe('a given value', () => {
  it('is converted for the reader of the other system', () => {
    const typed: Typed = { beadLength: '6 in', arcTime: '60 s' };
    expect(told(travelSpeed, typed, 'beadLength')).toEqual({
      us: '6\u00a0in',
      metric: '152\u00a0mm',
    });
  });

  it('stays a clock time where a clock time was typed', () => {
    const typed: Typed = {
      classification: 'E7018',
      designator: 'none',
      events: [{ event: 'out', at: '18:15' }],
      now: '22:20',
    };
    expect(told(exposure, typed, 'now').us).toBe('22:20');
  });

  it('is told row by row where it is a list', () => {
    const typed: Typed = {
      classification: 'E7018',
      designator: 'none',
      events: [
        { event: 'opened', at: '18:15' },
        { event: 'in oven', at: '21:00', temperature: '302 degF' },
      ],
    };
    expect(told(exposure, typed, 'events')).toEqual({
      us: 'opened, when 18:15; in oven, when 21:00, oven temperature 302\u00a0°F',
      metric: 'opened, when 18:15; in oven, when 21:00, oven temperature 150\u00a0°C',
    });
  });

  it('names what each deposit of a test was laid with', () => {
    const typed: Typed = {
      code: 'ASME IX',
      test: '3G',
      form: 'plate',
      thickness: '10 mm',
      deposits: [
        { classification: 'E6010', thickness: '2.5 mm', layers: '1', backing: 'without backing' },
        { classification: 'E7018', thickness: '7.5 mm', layers: '2', backing: 'with backing' },
      ],
    };
    expect(told(testRange, typed, 'deposits').metric.replaceAll('\u00a0', ' ')).toBe(
      'E6010, deposit thickness 2.5 mm, layers 1, without backing; E7018, deposit thickness 7.5 mm, layers 2, with backing',
    );
  });
});
