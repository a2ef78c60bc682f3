import { defineProcedure } from '../calculation.ts';

const osha = { source: 'osha-1910-254', at: '(b)(3), manual arc welding', known: 'read' } as const;
/** Volts across the output with no arc burning. */
const limits = { AC: 80, DC: 100 } as const;

export default defineProcedure({
  title: 'Open-circuit voltage limit',
  summary: 'Whether a stick machine’s voltage with no arc burning stays under the legal limit.',
  inputs: {
    currentKind: {
      label: 'Kind of current',
      choices: ['AC', 'DC'],
      example: 'DC',
      obtain: 'Rating plate: a wave for alternating, a straight line for direct current.',
    },
    openCircuitVoltage: {
      label: 'Open-circuit voltage on the plate',
      symbol: 'U_0',
      unit: 'V',
      limits: { min: 1, max: 1000, why: 'no welding machine idles there' },
      example: '75',
      obtain: 'Rating plate, U₀. Read it; do not probe the output.',
    },
  },
  outputs: {
    within: { label: 'At or under the limit', yes: true },
    limit: { label: 'Limit for manual welding', unit: 'V', digits: 3 },
  },
  beware: [
    'A voltage under the limit can still kill, above all through wet gloves, sweat or a damp floor. Dry gloves without holes, dry boots, a dry mat; never an electrode against bare skin; the electrode out of the holder when you put it down.',
    'Wiring, grounding and repair are for a qualified electrician, by the local electrical code.',
  ],
  cite: [osha],
  related: ['load-voltage'],
  compute({ currentKind, openCircuitVoltage }) {
    const limit = limits[currentKind];
    const within = openCircuitVoltage <= limit;
    return {
      within,
      limit,
      because: [
        {
          kind: 'row',
          text: `Manual ${currentKind} machines idle at no more than {${limit} V}.`,
          cite: osha,
        },
        {
          kind: 'passed',
          text:
            currentKind === 'DC'
              ? 'Not used: manual AC machines, {80 V}. Alternating current is the more dangerous of the two.'
              : 'Not used: manual DC machines, {100 V}. Alternating current is the more dangerous of the two, so its limit is lower.',
          cite: osha,
        },
        {
          kind: 'passed',
          text: 'Not used: IEC 60974-1, {113 V} peak for DC, and for AC in places with more danger of shock only {48 V} effective.',
          cite: { source: 'iec-60974-1', at: 'rated no-load voltage', known: 'memory' },
        },
        ...(within
          ? []
          : [
              {
                kind: 'caution' as const,
                text: 'Over the limit: keep the machine off until a qualified person has looked at it.',
              },
            ]),
      ],
    };
  },
});
