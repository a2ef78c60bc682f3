import { defineProcedure, type Reason } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import {
  citeFilletMinimum,
  type FilletCode,
  type FilletRow,
  filletCodes,
  filletMinimumRows,
} from '../tables/fillet-minimum.ts';
import { inBothSystems, largestLegAtEdge } from '../tables/lap-edge.ts';
import { printFraction } from '../text/inches.ts';

type ElectrodeKind = 'low-hydrogen' | 'not low-hydrogen';

export default defineProcedure({
  title: 'Smallest and largest fillet',
  summary:
    'The least leg a code allows on parts of these thicknesses, and the most along a plate edge.',
  inputs: {
    code: {
      label: 'Code',
      choices: filletCodes,
      example: 'AISC 360',
      default: 'AISC 360',
      obtain:
        'The contract names it. Buildings in the US are designed to AISC, welded to AWS D1.1.',
    },
    electrodeKind: {
      label: 'Electrode kind',
      choices: ['low-hydrogen', 'not low-hydrogen'],
      example: 'low-hydrogen',
      default: 'low-hydrogen',
      obtain:
        'E7015, E7016, E7018 and E7048 from a dry oven are low-hydrogen; E6010 and E6011 are not.',
    },
    thinner: {
      label: 'Thickness of the thinner part',
      symbol: 't',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.03, max: 40, why: 'thinner or thicker metal is not joined by these rules' },
      example: { us: '3/8', metric: '10' },
      obtain: 'Caliper on the edge of the thinner of the two parts.',
    },
    thicker: {
      label: 'Thickness of the thicker part',
      symbol: 'T',
      printed: { us: 'in', metric: 'mm' },
      limits: { min: 0.03, max: 40, why: 'thinner or thicker metal is not joined by these rules' },
      example: { us: '1/2', metric: '12' },
      obtain: 'Caliper on the edge of the other part. The same figure if they are alike.',
    },
  },
  outputs: {
    minimumLeg: {
      label: 'Smallest leg allowed',
      symbol: 'w',
      printed: { us: 'in', metric: 'mm' },
      fraction: 32,
    },
    maximumLegAtEdge: {
      label: 'Largest leg along the edge of the thinner part (lap joint)',
      printed: { us: 'in', metric: 'mm' },
      fraction: 32,
    },
  },
  beware: [
    'The drawing’s size rules. These are the least and the most that a designer may ask for.',
    'A minimum size is about heat, not strength: a small bead on thick metal is quenched and may crack.',
  ],
  cite: [
    citeFilletMinimum['AISC 360'],
    citeFilletMinimum['AWS D1.1'],
    { source: 'aisc-360', at: 'J2.2b (2005 text)', known: 'read' },
  ],
  related: ['fillet-throat', 'fillet-passes', 'prequalified-limits'],
  compute({ code, electrodeKind, thinner, thicker }) {
    const thin = inBothSystems(thinner);
    if (thin.us > inBothSystems(thicker).us * (1 + 1e-9))
      throw new NoAnswer('The thinner part is given thicker than the thicker one', 'thinner');
    const byThicker = code === 'AWS D1.1' && electrodeKind === 'not low-hydrogen';
    const ruling = byThicker ? thicker : thinner;
    const rows = filletMinimumRows[code];
    const index = rows.findIndex((row) => ruling.value <= row.upTo[ruling.system]);
    const { leg } = rows[index] as FilletRow;
    const clipped = leg[thinner.system] > thinner.value;
    const minimumLeg = clipped ? thin : leg;
    const because: Reason[] = [
      {
        kind: 'rule',
        text: byThicker
          ? 'Electrodes that are not low-hydrogen, and no preheat worked out: the thicker part rules.'
          : 'The thinner part rules.',
        cite: citeFilletMinimum[code],
      },
      {
        kind: 'row',
        text: `Used: ${rangeOf(rows, index)}, leg ${size(leg)}.`,
        cite: citeFilletMinimum[code],
      },
      ...[index - 1, index + 1]
        .filter((next) => rows[next])
        .map((next) => ({
          kind: 'passed' as const,
          text: `Not used: ${rangeOf(rows, next)}; each row reaches up to and including its upper thickness.`,
        })),
    ];
    if (clipped)
      because.push({
        kind: 'rule',
        text: 'The leg need not be larger than the thinner part is thick, so that is the answer.',
        cite: { ...citeFilletMinimum[code], known: 'memory' },
      });
    const edge = largestLegAtEdge(thinner);
    because.push(edge.because, ...passReasons(code, electrodeKind));
    return { minimumLeg, maximumLegAtEdge: edge.leg, because };
  },
});

function passReasons(code: FilletCode, kind: ElectrodeKind): Reason[] {
  if (code === 'AWS D1.1')
    return [
      ...(kind === 'not low-hydrogen'
        ? [
            {
              kind: 'caution' as const,
              text: 'The minimum size is then laid in a single pass.',
              cite: { ...citeFilletMinimum[code], known: 'memory' as const },
            },
          ]
        : []),
      {
        kind: 'caution',
        text: 'Where the load comes and goes (cyclic loading) no fillet is smaller than {3/16 in|5 mm}.',
        cite: { ...citeFilletMinimum[code], known: 'memory' },
      },
    ];
  return [
    {
      kind: 'caution',
      text: 'The 2005 and 2010 editions want the minimum size laid in a single pass; the 2022 edition, as quoted elsewhere, only for electrodes that are not low-hydrogen.',
      cite: { source: 'aisc-360', at: 'Table J2.4, footnote', known: 'read' },
    },
  ];
}

const size = ({ us, metric }: PrintedFigure): string =>
  `{${printFraction(us, 16)} in|${metric} mm}`;

function rangeOf(rows: readonly FilletRow[], index: number): string {
  const lower = rows[index - 1]?.upTo;
  const upper = rows[index]?.upTo as FilletRow['upTo'];
  if (!lower) return `up to ${size(upper)}`;
  if (!Number.isFinite(upper.us)) return `over ${size(lower)}`;
  return `over ${size(lower)} up to ${size(upper)}`;
}
