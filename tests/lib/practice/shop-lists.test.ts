/** What a shop has on its shelves: common practice, no source. Angles and currents go by even steps. */
import { expect, it } from 'vitest';
import { shopLists } from '../../../lib/practice/shop-lists.ts';

const list = (name: string, system: 'us' | 'metric' = 'us') => {
  const values = shopLists[name] ?? [];
  return 'us' in values ? values[system] : values;
};
const run = (from: number, to: number, by: number, unit: string) => {
  const texts: string[] = [];
  for (let value = from; value <= to; value += by) texts.push(`${value} ${unit}`);
  return texts;
};

it('steps begin and end where they say', () => {
  expect(list('clockAngle')).toEqual(run(15, 345, 15, 'deg'));
  expect(list('pipeInclination')).toEqual(run(0, 90, 15, 'deg'));
  expect(list('current')).toEqual(run(85, 175, 5, 'A'));
  expect(list('arcTime')).toEqual(run(45, 100, 5, 's'));
  expect(list('overlap')).toEqual(run(30, 55, 5, 'percent'));
});

it('sizes are named with the unit of their system', () => {
  expect(list('diameter')).toEqual(['3/32 in', '1/8 in', '5/32 in']);
  expect(list('diameter', 'metric')).toEqual(['2.4 mm', '3.2 mm', '4 mm']);
  expect(list('coreDiameter')).toEqual(list('diameter'));
  expect(list('thickness')).toEqual(
    ['1/4', '5/16', '3/8', '1/2', '5/8', '3/4', '1'].map((it) => `${it} in`),
  );
  expect(list('thickness', 'metric')).toEqual([6, 8, 10, 12, 16, 20, 25].map((it) => `${it} mm`));
  expect(list('leg')).toEqual(['3/16', '1/4', '5/16', '3/8', '1/2'].map((it) => `${it} in`));
  expect(list('electrodeLength')).toEqual(['14 in']);
  expect(list('electrodeLength', 'metric')).toEqual(['350 mm']);
  expect(list('stub')).toEqual(['2 in']);
  expect(list('travelSpeed').at(-1)).toBe('8 in/min');
  expect(list('travelSpeed', 'metric')[0]).toBe('100 mm/min');
  // The steel of the course: 0.2836 lb/in³, 7850 kg/m³; SMAW keeps 0.8 of its heat (EN 1011-1).
  expect(list('density')).toEqual(['0.2836 lb/in3']);
  expect(list('density', 'metric')).toEqual(['7850 kg/m3']);
  expect(list('efficiency')).toEqual(['0.8']);
});
