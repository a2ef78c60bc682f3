/** Procedures, tests, and looking at a weld. */
import type { Scene } from '../scene.ts';

export default {
  'prequalified-limits': [
    {
      told: [
        'A prequalified procedure: {position} position, {electrodeKind} electrodes.',
        'You weld in the {position} position with {electrodeKind} electrodes, by a prequalified procedure of AWS D1.1.',
      ],
      asked: {
        filletDiameter: 'What is the largest electrode for a fillet?',
        grooveDiameter: 'What is the largest electrode for a groove?',
        singlePassFillet: 'What is the largest fillet in one pass?',
        fillPassThickness: 'How thick may a fill pass be?',
      },
      values: { electrodeKind: ['low-hydrogen'] },
    },
  ],
  'procedure-check': [
    {
      told: [
        'The procedure says {currentFrom} to {currentTo}. Your meter shows {current}.',
        'You weld at {current}, and the procedure asks for {currentFrom} to {currentTo}.',
      ],
      asked: { currentInside: ['Is that inside?', 'Is the current inside the procedure?'] },
      values: {
        current: ['105 A', '110 A', '115 A', '125 A', '140 A', '145 A', '150 A'],
        currentFrom: ['115 A'],
        currentTo: ['140 A'],
      },
    },
    {
      told: [
        'The procedure allows {arcEnergyTo} of heat input, without efficiency. You weld at {voltage}, {current} and {travelSpeed}.',
        'At {voltage} and {current} you travel {travelSpeed}. The sheet says: heat input {arcEnergyTo} at most, without efficiency.',
      ],
      asked: { arcEnergyInside: ['Is the heat input inside the procedure?'] },
      values: {
        voltage: ['22 V', '24 V'],
        current: ['120 A', '130 A', '140 A'],
        travelSpeed: {
          us: ['3 in/min', '4 in/min', '5 in/min', '6 in/min'],
          metric: ['75 mm/min', '100 mm/min', '125 mm/min', '150 mm/min'],
        },
        arcEnergyTo: { us: ['40 kJ/in', '45 kJ/in'], metric: ['1.6 kJ/mm', '1.8 kJ/mm'] },
      },
    },
  ],
  continuity: [
    {
      told: [
        'A welder passed the test with {process} on {qualified} by {code} and has not used the process since. Today is {on}.',
        'By {code}: tested with {process} on {qualified}, nothing welded with it after that. You ask on {on}.',
      ],
      asked: { state: ['Is the qualification current?', 'Is it current, or has it ended?'] },
      values: {
        process: ['SMAW'],
        qualified: ['2026-03-02', '2026-01-15', '2026-02-10'],
        on: ['2026-05-20', '2026-06-30', '2026-08-05', '2026-08-20', '2026-09-10', '2026-10-01'],
      },
    },
  ],
  'test-range': [
    {
      told: [
        'A welder passes {test} on {thickness} plate by {code}, with backing, with E7018.',
        'By {code}, with backing and E7018, a {test} test is welded on {thickness} plate.',
      ],
      asked: {
        thicknessTo: 'Up to what thickness may that welder weld?',
        thicknessFrom: 'From what thickness on may that welder weld?',
      },
      values: {
        code: ['AWS D1.1'],
        form: ['plate'],
        test: ['1G', '2G', '3G', '4G'],
        thickness: { us: ['3/8 in', '1/2 in', '1 in'], metric: ['10 mm', '12 mm', '25 mm'] },
      },
    },
  ],
  'visual-check': [
    {
      told: [
        'A fillet on {thickness} plate, AWS D1.1, static load. The drawing asks for {filletSize}; the shortest leg is {leg}, the face {faceWidth} wide with {convexity} of convexity, undercut {undercutDepth}. No crack, overlap, arc strike or pore; fused everywhere, craters filled.',
        'You look at a fillet by AWS D1.1, static load, {thickness} plate: asked {filletSize}, shortest leg {leg}, undercut {undercutDepth}, face {faceWidth} with {convexity} of convexity. It is fused, without crack, pore, overlap or arc strike, and its craters are filled.',
      ],
      asked: { verdict: ['Does it pass?', 'Does the weld pass all together?'] },
      values: {
        code: ['AWS D1.1'],
        purpose: ['production, static load'],
        weld: ['fillet'],
        crack: ['no'],
        incompleteFusion: ['no'],
        craterFilled: ['yes'],
        overlap: ['no'],
        arcStrike: ['no'],
        transverseToTension: ['no'],
        porosityPerInch: { us: ['0 in'], metric: ['0 mm'] },
        porosityPerFoot: { us: ['0 in'], metric: ['0 mm'] },
        thickness: { us: ['3/8 in', '1/2 in'], metric: ['10 mm', '12 mm'] },
        filletSize: { us: ['5/16 in'], metric: ['8 mm'] },
        leg: {
          us: ['5/32 in', '5/16 in', '11/32 in', '3/8 in'],
          metric: ['4 mm', '8 mm', '9 mm', '10 mm'],
        },
        faceWidth: { us: ['7/16 in'], metric: ['11 mm'] },
        convexity: { us: ['1/16 in', '1/8 in', '3/16 in'], metric: ['1.5 mm', '3 mm', '5 mm'] },
        undercutDepth: {
          us: ['0 in', '1/64 in', '1/32 in', '3/32 in'],
          metric: ['0 mm', '0.4 mm', '0.8 mm', '2.5 mm'],
        },
      },
    },
  ],
} satisfies Readonly<Record<string, readonly Scene[]>>;
