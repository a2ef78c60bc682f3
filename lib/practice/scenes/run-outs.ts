/** What one electrode leaves behind: length, metal, leg, heat. */
import type { Scene } from '../scene.ts';

const electrode =
  '{diameter} electrodes, {electrodeLength} long, leave {stub} stubs. Of their weight {coatingFraction} is coating, and of what burns off {recovery} ends in the weld';

export default {
  'rod-check': [
    {
      told: [
        'A {coreDiameter} electrode burns off {consumedLength} and leaves {beadLength} of {bead}.',
        'You lay {beadLength} of {bead} and find that {consumedLength} of a {coreDiameter} electrode is gone.',
      ],
      asked: {
        runOutRatio: 'How much bead came from each length of electrode, as a ratio?',
        verdict: 'Was the travel right for this size?',
      },
      values: {
        bead: [
          { typed: 'stringer bead', said: 'stringer' },
          { typed: 'weave or one-pass fillet', said: 'one-pass fillet' },
        ],
      },
    },
  ],
  'run-out-heat': [
    {
      told: [
        'A {coreDiameter} electrode burns off {consumedLength} and leaves a bead {runOut} long. Its run-out factor is {factor}.',
        'You measure a bead {runOut} long from {consumedLength} of a {coreDiameter} electrode with run-out factor {factor}.',
      ],
      asked: { heatInput: 'How much heat went in, as EN counts it?' },
      values: { factor: ['0.0472 kJ/mm3', '0.0408 kJ/mm3', '0.0608 kJ/mm3'] },
    },
  ],
  'run-out-length': [
    {
      told: [
        'You burn off {consumedLength} of a {coreDiameter} electrode with run-out factor {factor}. The sheet asks for {heatInput}, as EN counts it.',
        'The heat input to keep is {heatInput}, as EN counts it. You burn off {consumedLength} of a {coreDiameter} electrode whose run-out factor is {factor}.',
      ],
      asked: { runOut: ['How long must the bead be?', 'How much bead should that leave?'] },
      values: {
        factor: ['0.0472 kJ/mm3'],
        heatInput: {
          us: ['20 kJ/in', '25 kJ/in', '30 kJ/in'],
          metric: ['0.8 kJ/mm', '1 kJ/mm', '1.2 kJ/mm'],
        },
      },
    },
  ],
  'bead-from-electrode': [
    {
      told: [
        `A bead {runOut} long comes from one electrode. Your ${electrode}. Steel weighs {density}.`,
        `Your ${electrode}. Each runs {runOut}. Take {density} for steel.`,
      ],
      asked: {
        depositPerElectrode: 'How much weld metal does one electrode leave?',
        area: 'How large is the section of the bead?',
      },
    },
  ],
  'leg-from-rod': [
    {
      told: [
        `In one pass each electrode runs {runOut}. The ${electrode}. Count {bulgeShare} of the triangle for the bulge of the face.`,
        `Your ${electrode}. Each gives {runOut} of one-pass fillet, and the bulge adds {bulgeShare} to the triangle.`,
      ],
      asked: {
        leg: ['What leg does that give?', 'How large is the leg?'],
        passArea: 'How large is the section of the pass?',
      },
      values: { bulgeShare: ['10 percent'] },
    },
  ],
  'run-out-for-leg': [
    {
      told: [
        `You want a fillet with legs of {leg} in one pass. The ${electrode}. Count {bulgeShare} of the triangle for the bulge.`,
        `A one-pass fillet shall have legs of {leg}, its bulge {bulgeShare} of the triangle. Your ${electrode}.`,
      ],
      asked: {
        runOut: 'How much bead must each electrode give?',
        area: 'How large is the section of that fillet, bulge included?',
      },
      values: {
        leg: { us: ['3/16 in', '1/4 in', '5/16 in'], metric: ['5 mm', '6 mm', '8 mm'] },
        bulgeShare: ['10 percent'],
      },
    },
  ],
  'weigh-in': [
    {
      told: [
        'Ten electrodes weigh {rodsMass}; their stubs weigh {stubsMass} afterwards. The plate weighed {couponBefore} before and weighs {couponAfter} now.',
        'You weigh a plate: {couponBefore} before, {couponAfter} after. The ten electrodes weighed {rodsMass}, and {stubsMass} of stubs is left.',
      ],
      asked: {
        deposit: 'How much weld metal is on the plate?',
        electrodeYield: 'What is the yield of the whole electrodes?',
        depositPerRod: 'How much weld metal did each electrode leave?',
      },
      values: {
        rods: ['10'],
        rodsMass: {
          us: ['0.7 lb', '0.71 lb', '0.72 lb', '0.73 lb'],
          metric: ['318 g', '322 g', '326 g', '330 g'],
        },
        stubsMass: { us: ['0.1 lb', '0.11 lb', '0.12 lb'], metric: ['48 g', '50 g', '52 g'] },
        couponBefore: { us: ['3.4 lb'], metric: ['1540 g'] },
        couponAfter: {
          us: ['3.8 lb', '3.81 lb', '3.82 lb', '3.83 lb'],
          metric: ['1724 g', '1728 g', '1732 g', '1736 g'],
        },
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
