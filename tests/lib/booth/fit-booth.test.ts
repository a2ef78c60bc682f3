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
const length = {
  label: '',
  obtain: '',
  symbol: 's',
  unit: 'in' as const,
  limits: { why: '' },
  example: '1',
};
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
  it('take of the root what it has of its own, and nothing of the other electrode then', () => {
    const inputs = {
      classification: { label: '', obtain: '', choices: ['E6010', 'E7018'], example: '' },
      diameter: { ...length },
      current: { ...length, unit: 'A' as const },
      thickness: { ...length },
    };
    const takes = (numbers: object, id = 'root-fit-up') => fitBooth(id, inputs, numbers);
    const fill = { class: 'E7018', electrode: '1/8in', current: '120A', thickness: '3/8in' };
    const root = { rootclass: 'E6010', rootelectrode: '3/32in', rootcurrent: '75A' };
    expect(takes({ ...fill, ...root })).toEqual({
      classification: 'E6010',
      diameter: '3/32in',
      current: '75A',
      thickness: '3/8in',
    });
    expect(takes({ ...fill, rootclass: 'E6010' })).toEqual({
      classification: 'E6010',
      thickness: '3/8in',
    });
    expect(takes({ ...fill, rootcurrent: '75A' })).toEqual({ current: '75A', thickness: '3/8in' });
    expect(takes(fill)).toEqual({
      classification: 'E7018',
      diameter: '1/8in',
      current: '120A',
      thickness: '3/8in',
    });
    expect(takes({ ...fill, ...root }, 'heat-input')).toEqual(takes(fill));
  });
  it('leave alone an input of another kind: a list, a day, a word, another quantity', () => {
    const inputs = {
      current: { label: '', obtain: '', list: {}, example: [] },
      voltage: { label: '', obtain: '', date: true as const, example: '' },
      leg: { label: '', obtain: '', choices: ['3/8in'], example: '' },
      width: { ...length, unit: 'A' as const },
      classification: { ...length },
    };
    const numbers = { current: '120A', voltage: '22V', leg: '3/8in', width: '1/2in' };
    expect(fitBooth('any', inputs, { ...numbers, class: 'E7018' })).toEqual({});
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
