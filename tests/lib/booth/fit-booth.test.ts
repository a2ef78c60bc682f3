/** A booth's number reaches the inputs that mean it, and no other. */
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../../content/commands/calculation-ids.ts';
import { answer } from '../../../lib/answer.ts';
import { fitBooth } from '../../../lib/booth/fit-booth.ts';
import { loadCalculation } from '../../../lib/calculations.ts';

const everything = {
  class: 'E7018',
  electrode: '5/32in',
  current: '130A',
  voltage: '23V',
  thickness: '1/2in',
  leg: '3/8in',
  opening: '3/16in',
  width: '7/16in',
  overlap: '40',
  runout: '7in',
} as const;
const all = await Promise.all(
  calculationIds().map(async (id) => ({ id, calculation: await loadCalculation(id) })),
);
const fitted = (id: string) => {
  const found = all.find((it) => it.id === id);
  if (!found) throw new Error(id);
  return fitBooth(id, found.calculation.inputs, everything);
};

describe('the numbers of a booth', () => {
  it.each([
    ['heat-input', { current: '130A', voltage: '23V' }],
    ['fillet-throat', { legA: '3/8in', legB: '3/8in' }],
    ['padding-plan', { width: '7/16in', overlap: '40', runOut: '7in' }],
    ['fillet-minimum', { electrodeKind: 'low-hydrogen', thinner: '1/2in', thicker: '1/2in' }],
    ['bend-strain', {}],
    ['fillet-leg', {}],
    ['booth-calibration', { wanted: '130A' }],
    ['rod-check', { coreDiameter: '5/32in' }],
  ])('%s takes what it asks for', (id, expected) => {
    expect(fitted(id)).toEqual(expected);
  });
  it('give the electrode of the root to the root, and the other one to everything else', () => {
    const numbers = { electrode: '1/8in', rootelectrode: '3/32in' };
    const inputsOf = (id: string) => all.find((it) => it.id === id)?.calculation.inputs ?? {};
    const takes = (id: string) => fitBooth(id, inputsOf(id), numbers);
    expect(takes('root-fit-up')).toEqual({ diameter: '3/32in' });
    expect(takes('weave-width')).toEqual({ diameter: '1/8in' });
    const start = inputsOf('starting-current');
    expect(fitBooth('starting-current', start, numbers, { use: 'open root' })).toEqual({
      diameter: '3/32in',
    });
    expect(fitBooth('starting-current', start, numbers)).toEqual({ diameter: '1/8in' });
    expect(fitBooth('root-fit-up', inputsOf('root-fit-up'), { electrode: '1/8in' })).toEqual({
      diameter: '1/8in',
    });
  });
  it('tell the two kinds of overlap apart: a share is no answer to “is there overlap?”', () => {
    expect(fitted('visual-check')).not.toHaveProperty('overlap');
    expect(fitted('bead-overlap')).toHaveProperty('overlap', '40');
  });
  it('leave a choice alone that does not offer them', () => {
    const { inputs } = all.find((it) => it.id === 'starting-current')?.calculation ?? {};
    expect(fitBooth('starting-current', inputs ?? {}, { class: 'E7024' })).toEqual({});
  });
  it('tell an electrode without low hydrogen from one with it', () => {
    const { inputs } = all.find((it) => it.id === 'preheat-minimum')?.calculation ?? {};
    expect(fitBooth('preheat-minimum', inputs ?? {}, { class: 'E6010' })).toEqual({
      electrodeKind: 'not low-hydrogen',
    });
  });
  it.each(all.map(({ id, calculation }) => [id, calculation] as const))(
    '%s can read all of them: none is refused for its unit or its words',
    (id, calculation) => {
      const given = fitBooth(id, calculation.inputs, everything);
      const answered = answer(calculation, given);
      const about = answered.ok
        ? []
        : answered.problems.filter(
            ({ field, text }) => field in given && /unit|fit|known/.test(text),
          );
      expect(about).toEqual([]);
    },
  );
});
