/** The readings of a groove in the order and under the names in which they are shown. */
import type { GrooveReadings } from '../geometry/etched-groove.ts';
import type { Unit } from '../units.ts';
import type { NamedReading } from './fillet-readings.ts';
import type { MeasuredGroove } from './picture-groove.ts';

type Named = readonly [keyof GrooveReadings, string, Unit];

const named = (onStrip: boolean): readonly Named[] => [
  ['capWidth', 'Width of the cap, toe to toe', 'mm'],
  ['capHeight', 'Height of the cap', 'mm'],
  ['underfill', 'Underfill: cap below the plates', 'mm'],
  ['rootWidth', 'Width of the root', 'mm'],
  ...(onStrip
    ? ([['rootHeight', 'Fusion into the backing strip', 'mm']] satisfies Named[])
    : ([
        ['rootHeight', 'Height of the root bead', 'mm'],
        ['rootHollow', 'Hollow of the root', 'mm'],
      ] satisfies Named[])),
  ['thickness', 'Thickness of the thinner plate', 'mm'],
  ['throat', 'Throat that counts, without cap and root bead', 'mm'],
  ['wholeThickness', 'Weld at its thinnest, cap and root bead included', 'mm'],
  ['unfusedA', 'Not fused at the back of plate A', 'mm'],
  ['unfusedB', 'Not fused at the back of plate B', 'mm'],
  ['sidewallA', 'Fusion beyond the edge of plate A, least', 'mm'],
  ['sidewallMostA', 'Fusion beyond the edge of plate A, most', 'mm'],
  ['sidewallB', 'Fusion beyond the edge of plate B, least', 'mm'],
  ['sidewallMostB', 'Fusion beyond the edge of plate B, most', 'mm'],
  ['undercutA', 'Undercut at toe A', 'mm'],
  ['undercutB', 'Undercut at toe B', 'mm'],
  ['weldArea', 'Area of all weld metal', 'mm2'],
  ['depositArea', 'Area of deposit', 'mm2'],
  ['meltedArea', 'Area of melted base metal', 'mm2'],
  ['dilution', 'Dilution', 'percent'],
];

/** What there is none of is none, not below none. A gap at an edge and a strip that was missed stay below. */
const neverBelowZero = (onStrip: boolean): ReadonlySet<string> =>
  new Set([
    'capHeight',
    'underfill',
    ...(onStrip ? [] : ['rootHeight']),
    'rootHollow',
    'unfusedA',
    'unfusedB',
    'undercutA',
    'undercutB',
  ]);

/** A reading that was not taken is left out. */
export const grooveReadings = (
  found: MeasuredGroove,
  onStrip: boolean,
): NamedReading<keyof GrooveReadings>[] =>
  named(onStrip).flatMap(([name, label, unit]) => {
    const reading = found[name];
    if (!reading) return [];
    const { value, uncertainty } = reading;
    const shown = neverBelowZero(onStrip).has(name) ? Math.max(0, value) : value;
    return [{ name, label, unit, value: shown, uncertainty }];
  });
