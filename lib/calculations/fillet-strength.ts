import { type Citation, defineFormula } from '../calculation.ts';

const aisc = (at: string): Citation => ({ source: 'aisc-360', at, known: 'read' });

export default defineFormula({
  title: 'Strength of fillet weld metal',
  summary: 'What the weld metal of a fillet carries by AISC 360. Weld metal only; not for design.',
  forEngineers: true,
  inputs: {
    leg: {
      label: 'Leg of the fillet',
      symbol: 'w',
      unit: 'in',
      limits: { min: 0.03, max: 4, why: 'no fillet weld is smaller or larger' },
      usual: { min: 0.125, max: 1, why: 'fillets are usually {1/8 in} to {1 in}' },
      example: { us: '5/16', metric: '8' },
      obtain: 'On the drawing, to the left of the fillet symbol; the shorter leg on a weld.',
    },
    length: {
      label: 'Length of each weld',
      symbol: 'l',
      unit: 'in',
      limits: { min: 0.1, max: 2000, why: 'no weld is shorter or longer' },
      example: { us: '8', metric: '200' },
      obtain: 'Rule along the full-size part; a crater below size does not count.',
    },
    welds: {
      label: 'Equal welds that share the load',
      symbol: 'n',
      unit: '1',
      limits: { min: 1, max: 1000, why: 'there is at least one' },
      whole: true,
      example: '2',
      default: '1',
      obtain: 'Count them: two sides of a plate are two.',
    },
    electrodeStrength: {
      label: 'Strength class of the weld metal',
      symbol: 'F_EXX',
      unit: 'ksi',
      limits: {
        min: 50,
        max: 130,
        why: 'electrodes for steel are made from {60 ksi} to {120 ksi}',
      },
      example: { us: '70', metric: '480' },
      obtain: 'The first two digits of the electrode: E7018 is {70 ksi}.',
    },
    loadAngle: {
      label: 'Angle between the load and the weld’s length',
      symbol: 'θ',
      unit: 'deg',
      limits: { min: 0, max: 90, why: 'along the weld is 0°, straight across it 90°' },
      example: '0',
      obtain: 'From the drawing. Take 0° if in doubt: it gives the least.',
    },
  },
  constants: {
    shearShare: {
      value: 0.6,
      symbol: '0.60',
      unit: '1',
      name: 'shear strength as a share of the strength class',
      cite: aisc('Table J2.5'),
    },
    resistanceFactor: {
      value: 0.75,
      symbol: 'φ',
      unit: '1',
      name: 'resistance factor',
      cite: aisc('J2.4'),
    },
    safetyFactor: {
      value: 2,
      symbol: 'Ω',
      unit: '1',
      name: 'safety factor',
      cite: aisc('J2.4'),
    },
  },
  outputs: {
    directionFactor: {
      label: 'Gain from the direction of the load',
      symbol: 'k_ds',
      unit: '1',
      digits: 3,
      formula: '1 + 0.5 * sinDegrees(loadAngle)^1.5',
    },
    effectiveLength: {
      label: 'Length that counts, of each weld',
      symbol: 'l_e',
      unit: 'in',
      digits: 3,
      formula:
        'length <= 100 * leg ? length : length <= 300 * leg ? (1.2 - 0.002 * length / leg) * length : 180 * leg',
    },
    strengthPerLength: {
      label: 'Nominal strength of one weld for each inch or millimeter',
      symbol: 'r_n',
      unit: 'kip/in',
      digits: 3,
      formula: 'shearShare * electrodeStrength * leg / sqrt(2) * directionFactor',
    },
    nominal: {
      label: 'Nominal strength of all the welds',
      symbol: 'R_n',
      unit: 'kip',
      digits: 3,
      formula: 'welds * strengthPerLength * effectiveLength',
    },
    design: {
      label: 'Design strength (LRFD)',
      symbol: 'R_d',
      unit: 'kip',
      digits: 3,
      formula: 'resistanceFactor * nominal',
    },
    allowable: {
      label: 'Allowable strength (ASD)',
      symbol: 'R_a',
      unit: 'kip',
      digits: 3,
      formula: 'nominal / safetyFactor',
    },
  },
  beware: [
    'Weld metal only; not for design. The base metal beside the weld, the way the load comes in and the code’s detailing rules are not checked. A licensed engineer designs the joint.',
    'The gain from direction holds where all the welds lie the same way to the load. At the ends of hollow sections newer editions allow none.',
    'Long welds are shortened as for a lap loaded at its ends, where the middle of the weld does little.',
  ],
  cite: [
    aisc('J2.4 and J2.2b (2005 text)'),
    { source: 'aisc-examples', at: 'chapter J', known: 'read' },
  ],
  related: ['fillet-throat', 'fillet-minimum'],
  notes({ leg, length }) {
    if (length >= 4 * leg) return [];
    return [
      {
        kind: 'caution',
        text: 'The weld is shorter than four times its leg: the code then counts a leg of no more than a quarter of the length, which is not done here.',
        cite: { source: 'aws-d1.1', at: '2010 clause 2.4', known: 'read' },
      },
    ];
  },
  compute({ leg, length, welds, electrodeStrength, loadAngle }) {
    const directionFactor = 1 + 0.5 * Math.sin((loadAngle * Math.PI) / 180) ** 1.5;
    const effectiveLength = countedLength(leg, length);
    const strengthPerLength = ((0.6 * electrodeStrength * leg) / Math.SQRT2) * directionFactor;
    const nominal = welds * strengthPerLength * effectiveLength;
    return {
      directionFactor,
      effectiveLength,
      strengthPerLength,
      nominal,
      design: 0.75 * nominal,
      allowable: nominal / 2,
    };
  },
});

function countedLength(leg: number, length: number): number {
  if (length <= 100 * leg) return length;
  if (length <= 300 * leg) return (1.2 - (0.002 * length) / leg) * length;
  return 180 * leg;
}
