import { defineProcedure, type Reason } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import {
  categories,
  citeRow,
  preheatRows,
  preheatSteels,
  thinnest,
} from '../tables/preheat-d1.1.ts';
import { printFraction } from '../text/inches.ts';

export default defineProcedure({
  title: 'Minimum preheat by the structural code',
  summary: 'The least temperature that AWS D1.1 asks for before the first pass and between passes.',
  inputs: {
    steel: {
      label: 'Steel',
      choices: Object.keys(preheatSteels),
      example: 'A36',
      obtain: 'Read it on the drawing, and on the mill test report that came with the plate.',
    },
    electrodeKind: {
      label: 'Electrode kind',
      choices: ['low-hydrogen', 'not low-hydrogen'],
      example: 'low-hydrogen',
      obtain:
        'E7015, E7016, E7018 and E7048 from a dry oven are low-hydrogen; E6010 and E6011 are not.',
    },
    thickness: {
      label: 'Thickness of the thickest part at the weld',
      symbol: 't',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.11, max: 40, why: 'the table starts at {1/8 in|3 mm}' },
      example: { us: '1', metric: '25' },
      obtain: 'Caliper or rule on the edge of the thickest part at the weld.',
    },
  },
  outputs: {
    category: { label: 'Category in the table', words: categories },
    minimumTemperature: {
      label: 'Minimum preheat and interpass temperature',
      symbol: 'T',
      printed: { us: 'degF', metric: 'degC' },
    },
  },
  beware: [
    'The contract’s code, the welding procedure and the engineer decide. This table is for prequalified procedures only.',
    'Parts of two steels or two thicknesses: the higher of the two minimums rules.',
  ],
  cite: [
    {
      source: 'aws-d1.1',
      at: 'Table 3.2 (to 2010), 3.3 (2015), 5.8 (2020)',
      known: 'read',
    },
  ],
  related: ['preheat-cet', 'carbon-equivalent'],
  compute({ steel, electrodeKind, thickness }) {
    const { value, system } = thickness;
    if (value < thinnest[system])
      throw new NoAnswer(
        'The table starts at {1/8 in|3 mm}; thinner metal has no row',
        'thickness',
      );
    const category = preheatSteels[steel]?.[electrodeKind];
    if (!category)
      throw new NoAnswer(
        `${steel} has no row for electrodes that are not low-hydrogen: the code does not prequalify them for it. Use a low-hydrogen electrode, or qualify a procedure by test`,
        'electrodeKind',
      );
    const index = preheatRows.findIndex((row) => value <= row.upTo[system]);
    const row = preheatRows[index] as (typeof preheatRows)[number];
    const minimumTemperature = row.minimum[category];
    const because: Reason[] = [
      {
        kind: 'rule',
        text: `${steel} with ${electrodeKind} electrodes stands in category ${category}.`,
        cite: citeRow(category),
      },
      {
        kind: 'row',
        text: `Used: ${rangeOf(index)}.`,
        cite: citeRow(category),
      },
    ];
    for (const next of [index - 1, index + 1])
      if (preheatRows[next])
        because.push({
          kind: 'passed',
          text: `Not used: ${rangeOf(next)}; each row reaches up to and including its upper thickness.`,
        });
    const other = electrodeKind === 'low-hydrogen' && preheatSteels[steel]?.['not low-hydrogen'];
    if (other)
      because.push({
        kind: 'caution',
        text: `An open root put in with E6010 or E6011 follows category ${other} instead: ${temperatureOf(row.minimum[other])} for this thickness. Category ${category} is for the low-hydrogen passes over it.`,
        cite: citeRow(other),
      });
    if (electrodeKind === 'not low-hydrogen')
      because.push({
        kind: 'caution',
        text: `This is for the passes without low-hydrogen electrodes, such as an E6010 root. Low-hydrogen passes over it follow category B: ${temperatureOf(row.minimum.B)} for this thickness.`,
        cite: citeRow('B'),
      });
    if (steel.startsWith('A913'))
      because.push({
        kind: 'passed',
        text: 'Not used: category D, which asks less of A913 when the electrode’s designator is H8 or lower.',
        cite: { source: 'aws-d1.1', at: '2015 Table 3.3, category D', known: 'memory' },
      });
    if (minimumTemperature.us === 32)
      because.push({
        kind: 'caution',
        text: 'Steel below {32 degF|0 degC} is first warmed to at least {70 degF|20 degC} and kept there. In every case it is dry, with no frost and no dew.',
        cite: {
          source: 'aws-d1.1',
          at: 'footnote to the table',
          known: 'memory',
        },
      });
    because.push({
      kind: 'caution',
      text: 'No welding where the air at the weld is below {0 degF|-20 degC}, whatever the steel has been warmed to.',
      cite: {
        source: 'aws-d1.1',
        at: 'clause on the welding environment, minimum ambient temperature',
        known: 'memory',
      },
    });
    because.push({
      kind: 'caution',
      text: 'Warm the steel through for at least {3 in|75 mm}, or its thickness if that is more, all round the weld. Measure away from the flame: on the far side, or a minute or two after the flame is off. Keep crayon marks out of the joint; an infrared gun reads low on bright steel.',
      cite: { source: 'aws-d1.1', at: '2008 clause 5.6', known: 'read' },
    });
    return { category, minimumTemperature, because };
  },
});

const temperatureOf = ({ us, metric }: PrintedFigure) => `{${us} degF|${metric} degC}`;

function rangeOf(index: number): string {
  const upper = preheatRows[index]?.upTo;
  const lower = preheatRows[index - 1]?.upTo;
  const size = (at: PrintedFigure) => `{${printFraction(at.us, 4)} in|${at.metric} mm}`;
  if (!lower) return `{1/8 in|3 mm} up to ${size(upper as never)}`;
  if (!upper || !Number.isFinite(upper.us)) return `over ${size(lower)}`;
  return `over ${size(lower)} up to ${size(upper)}`;
}
