import { expect, it } from 'vitest';
import { filletReadings } from '../../../lib/section/fillet-readings.ts';
import type { MeasuredFillet } from '../../../lib/section/measured-fillet.ts';

const reading = (value: number) => ({ value, uncertainty: 0.1 });
const found = {
  legB: reading(7),
  legA: reading(8),
  rise: reading(-0.4),
  penetration: reading(-0.6),
  meltedArea: reading(-3),
} as unknown as MeasuredFillet;

it('names what was read, plate A first, and leaves out what was not', () => {
  expect(filletReadings(found).map(({ name }) => name)).toEqual([
    'legA',
    'legB',
    'rise',
    'penetration',
    'meltedArea',
  ]);
});

it('shows no convexity and no melted metal below none, and a root that was missed as missed', () => {
  const value = Object.fromEntries(filletReadings(found).map((it) => [it.name, it.value]));
  expect(value).toMatchObject({ legA: 8, rise: 0, meltedArea: 0, penetration: -0.6 });
  for (const { uncertainty } of filletReadings(found)) expect(uncertainty).toBe(0.1);
});
