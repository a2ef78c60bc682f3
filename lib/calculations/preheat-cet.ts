import { defineFormula, type Reason } from '../calculation.ts';

export default defineFormula({
  title: 'Preheat by carbon equivalent CET',
  summary:
    'Another method than the code’s table, for engineers: preheat from chemistry, thickness, hydrogen and heat input.',
  forEngineers: true,
  inputs: {
    cet: {
      label: 'Carbon equivalent CET',
      symbol: 'CET',
      unit: 'percent',
      limits: {
        min: 0.2,
        max: 0.5,
        why: 'the method was fitted to steels between these',
        cite: { source: 'en-1011-2', at: 'C.3', known: 'memory' },
      },
      example: '0.277',
      obtain:
        'From the mill test report of the heat. Take the higher of the steel’s CET and the weld metal’s CET plus 0.03. Without a report take the highest figures that the specification allows.',
      estimateBy: 'carbon-equivalent',
    },
    thickness: {
      label: 'Plate thickness, of the thicker plate alone',
      symbol: 'd',
      unit: 'mm',
      limits: {
        min: 10,
        max: 90,
        why: 'the method was fitted to plates from {10 mm} to {90 mm}',
        cite: { source: 'en-1011-2', at: 'C.3', known: 'memory' },
      },
      example: { us: '1', metric: '25.4' },
      obtain: 'Caliper or rule on the edge. Not the sum of the parts: that is method A.',
    },
    hydrogen: {
      label: 'Hydrogen that the electrode brings',
      symbol: 'HD',
      unit: 'ml/100g',
      limits: {
        min: 1,
        max: 20,
        why: 'the method was fitted between these; an electrode without a hydrogen designator has no known figure',
        cite: { source: 'en-1011-2', at: 'C.3', known: 'memory' },
      },
      example: '5',
      obtain:
        'The designator on the electrode: H4 means 4 at most, H8 means 8, H16 means 16, if it was kept dry. Without one take 16 and say so.',
    },
    heatInput: {
      label: 'Heat input, with arc (thermal) efficiency',
      symbol: 'Q',
      unit: 'kJ/mm',
      limits: {
        min: 0.5,
        max: 4,
        why: 'the method was fitted between these',
        cite: { source: 'en-1011-2', at: 'C.3', known: 'memory' },
      },
      example: { us: '30', metric: '1.2' },
      obtain: 'From voltage, current and travel speed, with the efficiency of 0.8.',
      estimateBy: 'heat-input',
    },
    ambient: {
      label: 'Temperature of the steel before it is warmed',
      symbol: 'T_a',
      unit: 'degC',
      limits: { min: -50, max: 60, why: 'no shop or yard is colder or hotter' },
      example: { us: '68', metric: '20' },
      default: '20 degC',
      obtain: 'Contact thermometer on the plate; steel from a cold yard lags behind the air.',
    },
  },
  outputs: {
    compositionTerm: {
      label: 'Share of the chemistry',
      symbol: 'T_CET',
      unit: 'Cdeg',
      digits: 2,
      signed: true,
      formula: '750 * cet - 150',
    },
    thicknessTerm: {
      label: 'Share of the thickness',
      symbol: 'T_d',
      unit: 'Cdeg',
      digits: 2,
      signed: true,
      formula: '160 * tanh(thickness / 35) - 110',
    },
    hydrogenTerm: {
      label: 'Share of the hydrogen',
      symbol: 'T_HD',
      unit: 'Cdeg',
      digits: 2,
      signed: true,
      formula: '62 * hydrogen^0.35 - 100',
    },
    heatInputTerm: {
      label: 'Share of the heat input',
      symbol: 'T_Q',
      unit: 'Cdeg',
      digits: 2,
      signed: true,
      formula: '(53 * cet - 32) * heatInput - 53 * cet + 32',
    },
    temperature: {
      label: 'Preheat by this method',
      symbol: 'T_p',
      unit: 'degC',
      digits: 2,
      signed: true,
      formula: 'compositionTerm + thicknessTerm + hydrogenTerm + heatInputTerm',
    },
  },
  empirical: true,
  beware: [
    'The contract’s code comes first. If this method asks for less than the code’s table, the table stands.',
    'For yield strengths up to {1000 MPa}. The formula is from memory: check a copy of the standard before anyone relies on it.',
  ],
  cite: [
    { source: 'en-1011-2', at: 'C.3, method B', known: 'memory' },
    {
      source: 'plate-handbook',
      at: 'p. 23: single thickness, weld metal plus 0.03',
      known: 'read',
    },
  ],
  related: ['preheat-minimum', 'carbon-equivalent', 'heat-input'],
  notes: ({ ambient }, { temperature }): Reason[] => [
    {
      kind: 'rule',
      text: 'First find the minimum that the contract’s code sets, AWS D1.1 for one. The higher of the two is the one to warm to.',
    },
    ...(temperature <= ambient
      ? [
          {
            kind: 'rule',
            text: 'None needed by this method: what it asks for is not above the temperature that the steel has already. That says nothing about the code’s minimum.',
          } as const,
        ]
      : []),
    {
      text: 'It is often more cautious than the row of AWS D1.1 for the same plate. The row knows a group of steels and a thickness. This method counts chemistry, hydrogen and heat input one by one, and takes the joint as held stiffly.',
      cite: { source: 'en-1011-2', at: 'C.3', known: 'memory' },
    },
  ],
  compute({ cet, thickness, hydrogen, heatInput }) {
    const compositionTerm = 750 * cet - 150;
    const thicknessTerm = 160 * Math.tanh(thickness / 35) - 110;
    const hydrogenTerm = 62 * hydrogen ** 0.35 - 100;
    const heatInputTerm = (53 * cet - 32) * (heatInput - 1);
    return {
      compositionTerm,
      thicknessTerm,
      hydrogenTerm,
      heatInputTerm,
      temperature: compositionTerm + thicknessTerm + hydrogenTerm + heatInputTerm,
    };
  },
});
