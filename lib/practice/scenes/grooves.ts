/** Grooves: section, metal, layers, shrinkage, bends. */
import type { Scene } from '../scene.ts';

const backed = { us: ['3/16 in', '1/4 in', '5/16 in'], metric: ['5 mm', '6 mm', '8 mm'] };
const grooved = {
  us: ['3/8 in', '1/2 in', '5/8 in', '3/4 in', '1 in'],
  metric: ['10 mm', '12 mm', '16 mm', '20 mm', '25 mm'],
};

export default {
  'groove-area': [
    {
      told: [
        'A {groove} groove in {thickness} plate has no root face. Its root opening is {rootOpening} and its angle {includedAngle}.',
        'Two plates of {thickness}, root opening {rootOpening}, no root face, make a {groove} groove of {includedAngle}.',
      ],
      asked: {
        area: [
          'How large is the section of the groove?',
          'How large is its section, cap not counted?',
        ],
        faceWidth: 'How wide is the groove at the surface of the plate?',
        massPerLength:
          'Steel weighs {density}. How much weld metal does the groove take for each foot or meter?',
      },
      values: {
        groove: ['V', { typed: 'single bevel', said: 'single-bevel' }],
        thickness: grooved,
        rootOpening: backed,
        rootFace: { us: ['0 in'], metric: ['0 mm'] },
      },
    },
  ],
  'groove-passes': [
    {
      told: [
        'A V-groove in {thickness} plate on a strip: root opening {rootOpening}, angle {includedAngle}. The root pass is {rootPassThickness} thick, a fill layer {fillPassThickness} at most.',
        'You fill a V-groove of {includedAngle} in {thickness} plate with {rootOpening} of root opening and a strip behind it. Root pass {rootPassThickness} thick, fill layers no thicker than {fillPassThickness}.',
      ],
      asked: { layers: ['How many layers come up to the plate?', 'How many layers fill it?'] },
      values: {
        thickness: grooved,
        rootOpening: backed,
        rootPassThickness: { us: ['1/8 in'], metric: ['3 mm'] },
        fillPassThickness: { us: ['3/32 in', '1/8 in'], metric: ['2.5 mm', '3 mm'] },
        capHeight: { us: ['0 in'], metric: ['0 mm'] },
      },
    },
  ],
  'passes-left': [
    {
      told: [
        'From the surface of the plate down to the weld it is {depth}. You lay fill layers {layerThickness} thick.',
        'Your depth gauge reads {depth} down to the last layer, and your fill layers are {layerThickness} thick.',
      ],
      asked: {
        fillLayers: 'How many fill layers come before the cover?',
        next: 'What comes next?',
      },
      values: {
        depth: {
          us: ['1/16 in', '3/32 in', '1/8 in', '3/16 in', '1/4 in', '5/16 in', '3/8 in'],
          metric: ['1.5 mm', '2.5 mm', '3 mm', '5 mm', '6 mm', '8 mm', '10 mm'],
        },
        layerThickness: { us: ['3/32 in', '1/8 in'], metric: ['2.5 mm', '3 mm'] },
      },
    },
  ],
  deposit: [
    {
      told: [
        'A weld has a section of {area} and is {length} long. Steel weighs {density}.',
        'Over a length of {length} the section of a weld is {area}; take {density} for steel.',
      ],
      asked: {
        mass: ['How much weld metal is in it?', 'How heavy is its weld metal?'],
        massPerLength: 'How much weld metal does each foot or meter hold?',
      },
      values: {
        area: {
          us: ['0.05 in2', '0.08 in2', '0.1 in2', '0.125 in2', '0.15 in2', '0.2 in2'],
          metric: ['30 mm2', '50 mm2', '65 mm2', '80 mm2', '95 mm2', '130 mm2'],
        },
      },
    },
  ],
  'transverse-shrinkage': [
    {
      told: [
        'A butt weld in {thickness} plate has a section of {area} and a root opening of {rootOpening}.',
        'Plates of {thickness} are butted with {rootOpening} of root opening; the section of the weld is {area}.',
      ],
      asked: {
        shrinkageLow: 'How much does it draw together by the lower rule?',
        shrinkageHigh: 'How much does it draw together by the higher rule?',
      },
      values: {
        thickness: { us: ['3/8 in', '1/2 in'], metric: ['10 mm', '12 mm'] },
        area: {
          us: ['0.15 in2', '0.18 in2', '0.2 in2', '0.22 in2'],
          metric: ['97 mm2', '115 mm2', '130 mm2', '140 mm2'],
        },
        rootOpening: backed,
      },
    },
  ],
  'root-fit-up': [
    {
      told: [
        'An open root is fitted with an opening of {rootOpening} and a root face of {rootFace}; you weld it with a {diameter} electrode.',
        'Your gauge says {rootOpening} of opening and {rootFace} of root face. The electrode is {diameter}.',
      ],
      asked: {
        openingRatio: 'How many electrode diameters is the opening?',
        faceRatio: 'How many electrode diameters is the root face?',
      },
      values: {
        diameter: { us: ['3/32 in', '1/8 in'], metric: ['2.4 mm', '3.2 mm'] },
        rootOpening: { us: ['3/32 in', '1/8 in', '5/32 in'], metric: ['2.5 mm', '3 mm', '4 mm'] },
        rootFace: { us: ['1/16 in', '3/32 in', '1/8 in'], metric: ['1.5 mm', '2.5 mm', '3 mm'] },
        length: { us: ['7 in'], metric: ['180 mm'] },
      },
    },
  ],
  'bend-strain': [
    {
      told: [
        'A strap {thickness} thick is bent round a mandrel of {mandrelDiameter} diameter.',
        'The mandrel is {mandrelDiameter} in diameter, and the strap {thickness} thick.',
      ],
      asked: {
        strain: ['How far is its outer face stretched?', 'What is the strain of the outer face?'],
      },
      values: {
        thickness: { us: ['1/4 in', '3/8 in', '1/2 in'], metric: ['6 mm', '10 mm', '12 mm'] },
        mandrelDiameter: {
          us: ['1 in', '1-1/2 in', '2 in', '2-1/2 in'],
          metric: ['25 mm', '40 mm', '50 mm', '60 mm'],
        },
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
