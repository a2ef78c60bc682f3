/** A holder filled from another one: electrodes take their hours in open air along. */
import { type Holder, instantOf, instantText } from '../files/electrode-log.ts';
import { withRow } from './with-row.ts';

/**
 * The new holder has the rows of its source up to `now`, and is issued at `now`, an instant. A
 * source whose log does not allow that says why.
 */
export function drawnFrom(
  source: Holder,
  name: string,
  now: number,
  zone: string,
  by: string,
): Holder | { problem: string } {
  const rows = source.rows.filter((row) => instantOf(row.at) <= now);
  const drawn = withRow(
    { ...source, name, rows },
    { event: 'out', at: instantText(now), by },
    zone,
  );
  return drawn.ok
    ? drawn.holder
    : { problem: `Name ${name} cannot be filled from ${source.name}: ${drawn.problem}` };
}
