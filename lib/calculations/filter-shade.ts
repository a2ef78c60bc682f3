import { defineProcedure, type Reason } from '../calculation.ts';
import { tradeSize } from '../tables/electrode-sizes.ts';
import {
  leastShades,
  type ShadeRow,
  startShadesByCurrent,
  startShadesByDiameter,
} from '../tables/filter-shades.ts';

export default defineProcedure({
  title: 'Filter shade',
  summary: 'The shade to start with, and the least that US federal law allows.',
  inputs: {
    diameter: {
      label: 'Electrode diameter (core wire)',
      symbol: 'd',
      unit: 'in',
      limits: {
        min: 0.03,
        max: 0.4,
        why: 'covered electrodes end at {3/8 in}, and so do the tables',
      },
      example: { us: '1/8', metric: '3.2' },
      obtain: 'Printed on the box; it is the wire without its coating.',
    },
    current: {
      label: 'Welding current',
      symbol: 'I',
      unit: 'A',
      limits: { min: 5, max: 550, why: 'the table covers stick welding up to {550 A}' },
      example: '125',
      obtain: 'The highest current you will set today, by dial or clamp meter.',
    },
  },
  outputs: {
    startShade: { label: 'Shade to start with', unit: '1', digits: 2 },
    minimumShade: {
      label: 'Least shade by US federal law; never go below it',
      unit: '1',
      digits: 2,
    },
  },
  beware: [
    'The lens protects the eyes only. Safety glasses under the hood, covered skin, and a curtain for the neighbours come with it.',
    'Your shop, your country or your doctor may ask for a darker one: that rules.',
  ],
  cite: [leastShades.cite, startShadesByDiameter.cite, startShadesByCurrent.cite],
  related: ['starting-current'],
  compute({ diameter, current }) {
    const parts = (tradeSize(diameter) ?? diameter) * 32;
    const byDiameter = darkest(leastShades.byDiameter, parts);
    const byCurrent = darkest(leastShades.byCurrent, current);
    const minimumShade = Math.max(byDiameter, byCurrent);
    // The printed rows name sizes; what lies between two sizes goes to the darker row.
    const startByDiameter = startShadesByDiameter.rows.find(({ to }) => parts <= to)?.shade ?? 14;
    const startByCurrent = darkest(startShadesByCurrent.rows, current);
    const startShade = Math.max(startByDiameter, startByCurrent, minimumShade);
    const onSharedLimit = parts === 5 || current === 160 || current === 250;
    const because: Reason[] = [
      {
        kind: 'row',
        text: `Least shade: the electrode’s size asks for ${byDiameter}, the current for ${byCurrent}. ${
          byDiameter === byCurrent ? 'They agree.' : `The darker rules: ${minimumShade}.`
        }${onSharedLimit ? ' Where two rows name the same limit, the darker is taken.' : ''}`,
        cite: leastShades.cite,
      },
      {
        kind: 'row',
        text: `To start with: by the electrode’s size ${startByDiameter}.`,
        cite: startShadesByDiameter.cite,
      },
    ];
    if (startByCurrent > 0)
      because.push({
        kind: startByCurrent > startByDiameter ? 'row' : 'passed',
        text: `To start with: by the current ${startByCurrent}. The darker of the two is taken.`,
        cite: startShadesByCurrent.cite,
      });
    because.push({
      kind: 'caution',
      text: `Begin with ${startShade}. If you cannot see the weld pool, go one shade lighter at a time until you can, and never below ${minimumShade}.`,
      cite: { ...leastShades.cite, at: '(a)(5), note to the table' },
    });
    return { startShade, minimumShade, because };
  },
});

/**
 * The darkest shade whose row a value reaches; 0 where none does. A row ends where a darker one begins,
 * so its own end need not be looked at.
 */
const darkest = (rows: readonly ShadeRow[], value: number): number =>
  Math.max(
    0,
    ...rows
      .filter(({ from, above }) => (above ? value > from : value >= from))
      .map(({ shade }) => shade),
  );
