import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import type { Input } from '../../../lib/calculation.ts';
import { loadCalculation } from '../../../lib/calculations.ts';
import { gauges } from '../../../lib/tables/cable-resistance.ts';
import { npsSizes, schedules } from '../../../lib/tables/pipe-b36.10.ts';
import { preheatSteels } from '../../../lib/tables/preheat-d1.1.ts';
import { tests } from '../../../lib/tables/test-positions.ts';
import { listedWord } from '../../../lib/typed/listed-word.ts';

const steels = Object.keys(preheatSteels);

describe('a steel', () => {
  it.each([
    ['astm a36', 'A36'],
    ['A36/A36M', 'A36'],
    ['A572-50', 'A572 Grade 50'],
    ['A572 Gr. 50', 'A572 Grade 50'],
    ['A572 Gr.50', 'A572 Grade 50'],
    ['A572GR50', 'A572 Grade 50'],
    ['A572 Grade 50 (345)', 'A572 Grade 50'],
    ['A53B', 'A53 Grade B'],
    ['A106-B', 'A106 Grade B'],
    ['A500/A500M Grade C', 'A500 Grade C'],
    ['A709-50W', 'A709 Grade 50W'],
    ['API 5L X52', 'API 5L Grade X52'],
    ['A588 Grade A', 'A588'],
    ['A618', 'A618 Grade II'],
    ['A537', 'A537 Class 1'],
  ])('%s is %s', (typed, steel) => {
    expect(listedWord(steels, typed)).toBe(steel);
  });

  it.each(['A572', 'A514', 'A131', 'steel', '', 'A36 or so', 'A588 Grade Z'])(
    '%j is none',
    (typed) => {
      expect(listedWord(steels, typed)).toBeUndefined();
    },
  );
});

describe('a pipe', () => {
  it.each([
    ['NPS 6', '6'],
    ['nps6', '6'],
    ['6 in', '6'],
    ['6"', '6'],
    ['DN 150', '6'],
    ['1.25', '1-1/4'],
    ['1¼', '1-1/4'],
    ['1 1/4”', '1-1/4'],
    ['NPS 2-1/2', '2-1/2'],
    ['dn300', '12'],
  ])('of size %s is NPS %s', (typed, nps) => {
    expect(listedWord(npsSizes, typed)).toBe(nps);
  });

  it.each([
    ['Sch 80', '80'],
    ['SCH80', '80'],
    ['Schedule 160', '160'],
    ['Sch. 40', '40'],
    ['sch xs', 'XS'],
    ['Extra strong', 'XS'],
    ['XH', 'XS'],
    ['double extra heavy', 'XXS'],
    ['Standard', 'STD'],
  ])('of wall %s is Schedule %s', (typed, schedule) => {
    expect(listedWord(schedules, typed)).toBe(schedule);
  });

  it.each(['11/4', '7', 'DN 7', '1/0', '6 mm', 'x6'])('%s is none of the sizes', (typed) => {
    expect(listedWord(npsSizes, typed)).toBeUndefined();
  });
});

describe('a cable', () => {
  it.each([
    ['2', '2 AWG'],
    ['#2', '2 AWG'],
    ['AWG 2', '2 AWG'],
    ['No. 2', '2 AWG'],
    ['2 gauge', '2 AWG'],
    ['2/0', '2/0 AWG'],
    ['00', '2/0 AWG'],
    ['4/0 awg', '4/0 AWG'],
    ['35', '35 mm2'],
    ['35 mm²', '35 mm2'],
    ['35 sq mm', '35 mm2'],
    ['10', undefined],
    ['-1', undefined],
    ['1/0 mm2', undefined],
  ])('of size %s is %s', (typed, gauge) => {
    expect(listedWord(gauges, typed)).toBe(gauge);
  });
});

describe('a test', () => {
  it.each([
    ['3g', '3G'],
    ['3G + 4G', '3G+4G'],
    ['4g+3g', '3G+4G'],
    ['3G/4G', '3G+4G'],
    ['3G and 4G', '3G+4G'],
    ['4G, 2G, 3G', '2G+3G+4G'],
    ['5G & 2G', '2G+5G'],
  ])('%s is %s', (typed, test) => {
    expect(listedWord(tests, typed)).toBe(test);
  });

  it.each(['7G', '3G + 7G', '3G + x', '1G+2G', '3 + 4'])('%s is none', (typed) => {
    expect(listedWord(tests, typed)).toBeUndefined();
  });
});

describe('other words of the trade', () => {
  it.each([
    ['D1.1', 'AWS D1.1'],
    ['AWS D1.1:2020', 'AWS D1.1'],
    ['AWS D1.1/D1.1M:2015', 'AWS D1.1'],
    ['Section IX', 'ASME IX'],
    ['ASME BPVC Section IX', 'ASME IX'],
    ['B31.3', 'ASME B31.3'],
    ['D1.5', undefined],
  ])('the code %s is %s', (typed, code) => {
    expect(listedWord(['AWS D1.1', 'ASME IX', 'ASME B31.3'], typed)).toBe(code);
  });

  it.each([
    ['low hydrogen', 'low-hydrogen'],
    ['E7018', 'low-hydrogen'],
    ['7018-1 H4R', 'low-hydrogen'],
    ['E7028', 'low-hydrogen'],
    ['E6010', 'not low-hydrogen'],
    ['E7024', 'not low-hydrogen'],
    ['non-low-hydrogen', 'not low-hydrogen'],
    ['other than low-hydrogen', 'not low-hydrogen'],
    ['E70', undefined],
  ])('the kind %s is %s', (typed, kind) => {
    expect(listedWord(['low-hydrogen', 'not low-hydrogen'], typed)).toBe(kind);
  });

  it.each([
    ['F', 'flat'],
    ['Horizontal position', 'horizontal'],
    ['vertical up', 'vertical'],
    ['3G', 'vertical'],
    ['OH', 'overhead'],
    ['sideways', undefined],
  ])('the position %s is %s', (typed, position) => {
    expect(listedWord(['flat', 'horizontal', 'vertical', 'overhead'], typed)).toBe(position);
  });

  it.each([
    ['true', ['no', 'yes'], 'yes'],
    ['false', ['no', 'yes'], 'no'],
    ['Fillet weld', ['groove', 'fillet'], 'fillet'],
    [
      "welder's test coupon",
      ['production, static load', 'welder’s test coupon'],
      'welder’s test coupon',
    ],
    ['static', ['production, static load', 'production, cyclic load'], 'production, static load'],
    ['production', ['production, static load', 'production, cyclic load'], undefined],
    ['false', ['with backing', 'without backing'], 'without backing'],
    ['strip', ['with backing', 'without backing'], 'with backing'],
    ['container opened', ['opened', 'out', 'in oven', 'rebaked'], 'opened'],
    ['in the holding oven', ['opened', 'out', 'in oven', 'rebaked'], 'in oven'],
    ['bake', ['opened', 'out', 'in oven', 'rebaked'], 'rebaked'],
    ['issued', ['opened', 'out', 'in oven', 'rebaked'], 'out'],
    ['stick', ['SMAW', 'GTAW'], 'SMAW'],
    ['2015', ['2010 or later', 'older, with named test pipes'], '2010 or later'],
    ['2000', ['2010 or later', 'older, with named test pipes'], 'older, with named test pipes'],
    ['2007', ['2010 or later', 'older, with named test pipes'], undefined],
    ['none', ['none', 'H4'], 'none'],
    ['DCEP', ['AC', 'DC'], 'DC'],
    ['DC+', ['AC', 'DC'], 'DC'],
    ['DC−', ['AC', 'DC'], 'DC'],
    ['dc-', ['AC', 'DC'], 'DC'],
    ['alternating', ['AC', 'DC'], 'AC'],
    ['D', ['AC', 'DC'], undefined],
    ['AISC', ['AISC 360', 'AWS D1.1'], 'AISC 360'],
    ['AISC 360-16', ['AISC 360', 'AWS D1.1'], 'AISC 360'],
    ['AISC 341', ['AISC 360', 'AWS D1.1'], undefined],
    ['circle', ['parabola', 'arc', 'cosine'], 'arc'],
    ['cos', ['parabola', 'arc', 'cosine'], 'cosine'],
    ['with backing', ['strip', 'open root'], 'strip'],
    ['steel backing', ['strip', 'open root'], 'strip'],
    ['no backing', ['strip', 'open root'], 'open root'],
  ])('%s among %j is %s', (typed, choices, word) => {
    expect(listedWord(choices, typed)).toBe(word);
  });

  it('leaves a word that could be two as it is', () => {
    expect(listedWord(['A B', 'A-B'], 'a  b')).toBeUndefined();
    expect(listedWord(['A B', 'A-B'], 'a b')).toBe('A B');
  });
});

it('every listed word of every calculation stands for itself, in capitals too', async () => {
  const all = await Promise.all(calculationIds().map(loadCalculation));
  const fields = (inputs: Record<string, Input>): Input[] =>
    Object.values(inputs).flatMap((input) => ('list' in input ? fields(input.list) : [input]));
  const asked = all.flatMap(({ inputs }) => fields(inputs));
  expect(asked.length).toBeGreaterThan(100);
  for (const input of asked)
    if ('choices' in input)
      for (const choice of input.choices) {
        expect(listedWord(input.choices, choice)).toBe(choice);
        expect(listedWord(input.choices, ` ${choice.toUpperCase()} `)).toBe(choice);
      }
});
