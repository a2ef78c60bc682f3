import { type Citation, defineProcedure } from '../calculation.ts';

const formulas: Citation = {
  source: 'plate-handbook',
  at: 'p. 17, formulas 3.1 and 3.2; the same in EN 1011-2 annex D',
  known: 'read',
};

export default defineProcedure({
  title: 'Cooling time from 800 to 500 °C',
  summary:
    'How many seconds the metal beside the weld takes to cool through the range in which it hardens.',
  forEngineers: true,
  inputs: {
    heatInput: {
      label: 'Heat input, with arc (thermal) efficiency',
      symbol: 'Q',
      unit: 'kJ/mm',
      limits: { min: 0.1, max: 10, why: 'no hand-held electrode puts in less or more' },
      usual: { min: 0.3, max: 4, why: 'covered electrodes put in {0.3 kJ/mm} to {4 kJ/mm}' },
      example: { us: '25', metric: '1' },
      obtain: 'From voltage, current and travel speed, with the efficiency of 0.8.',
      estimateBy: 'heat-input',
    },
    startTemperature: {
      label: 'Temperature of the plate when the pass starts',
      symbol: 'T_0',
      unit: 'degC',
      limits: {
        min: -50,
        max: 450,
        why: 'the formulas follow steel that cools through {500 degC}, so it has to start well below',
      },
      usual: { min: -20, max: 300, why: 'structural steel is welded cooler than that' },
      example: { us: '68', metric: '20' },
      obtain: 'Contact thermometer or crayon just before the pass: preheat or interpass.',
    },
    thickness: {
      label: 'Plate thickness',
      symbol: 'd',
      unit: 'mm',
      limits: { min: 2, max: 400, why: 'the formulas are for plate' },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper or rule on the edge.',
    },
    shapeFactor3d: {
      label: 'Shape factor for thick plate',
      symbol: 'F_3',
      unit: '1',
      limits: { min: 0.3, max: 1, why: 'a joint draws heat faster than a bead on plate, at most' },
      example: '1',
      default: '1',
      obtain:
        'Bead on plate 1. From memory: fill pass in a butt joint 0.9, single-pass corner fillet 0.67 to 0.9, single-pass tee fillet 0.45 to 0.67.',
    },
    shapeFactor2d: {
      label: 'Shape factor for thin plate',
      symbol: 'F_2',
      unit: '1',
      limits: { min: 0.3, max: 1, why: 'a joint draws heat faster than a bead on plate, at most' },
      example: '1',
      default: '1',
      obtain:
        'Bead on plate 1. From memory: fill pass in a butt joint 0.9, single-pass fillet 0.67.',
    },
  },
  outputs: {
    time: { label: 'Cooling time', symbol: 't_8/5', unit: 's', digits: 2 },
    regime: { label: 'The plate cools as', words: ['thick plate', 'thin plate'] },
    transitionThickness: {
      label: 'Thickness at which thin turns to thick',
      symbol: 'd_t',
      unit: 'mm',
      digits: 2,
    },
  },
  beware: [
    'Not for small coupons and not for small pipe: the formulas take a plate without end, and a coupon soaks up heat from pass to pass. There, measure the interpass temperature instead.',
    'For unalloyed and low-alloy steel.',
  ],
  cite: [
    formulas,
    { source: 'en-1011-2', at: 'annex D, shape factors', known: 'memory' },
    { source: 'geometry', at: 'transition thickness: both formulas set equal', known: 'derived' },
  ],
  related: ['heat-input', 'preheat-cet'],
  compute({ heatInput, startTemperature, thickness, shapeFactor3d, shapeFactor2d }) {
    const to500 = 1 / (500 - startTemperature);
    const to800 = 1 / (800 - startTemperature);
    const thick = (6700 - 5 * startTemperature) * heatInput * (to500 - to800) * shapeFactor3d;
    /** The thin-plate time is this over the thickness squared. */
    const thin =
      (4300 - 4.3 * startTemperature) *
      1e5 *
      heatInput ** 2 *
      (to500 ** 2 - to800 ** 2) *
      shapeFactor2d;
    const transitionThickness = Math.sqrt(thin / thick);
    const isThin = thickness < transitionThickness;
    return {
      time: isThin ? thin / thickness ** 2 : thick,
      regime: isThin ? 'thin plate' : 'thick plate',
      transitionThickness,
      because: [
        {
          kind: 'rule',
          text: isThin
            ? 'Thin plate: the heat fills the thickness and then flows along the plate. t = (4300 − 4.3·T₀)·10⁵·(Q/d)²·(1/(500 − T₀)² − 1/(800 − T₀)²)·F₂, in kJ/mm, °C and mm.'
            : 'Thick plate: the heat flows away in all directions and the thickness no longer counts. t = (6700 − 5·T₀)·Q·(1/(500 − T₀) − 1/(800 − T₀))·F₃, in kJ/mm and °C.',
          cite: formulas,
        },
      ],
    };
  },
});
