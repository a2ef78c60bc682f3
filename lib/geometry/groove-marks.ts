/** What is marked on a picture of a cut and etched groove weld; see `etched-groove.ts` for its frame. */
import type { Point } from './outline.ts';

export interface GrooveMarks {
  /** Where the cap meets each plate. */
  toeA: Point;
  toeB: Point;
  /** Where the fusion on each plate ends at the root. */
  rootA: Point;
  rootB: Point;
  /** Along the cap between the toes. May be empty, as every list here. */
  cap: readonly Point[];
  /** Along the root bead's surface, or the edge of the melted metal in a backing strip. */
  rootBead: readonly Point[];
  /** Along the edge of the melted metal, from toe to root. */
  fusionA: readonly Point[];
  fusionB: readonly Point[];
  /** Along the edge as it was prepared, from the front down: two, or three where there is a land. */
  edgeA: readonly Point[];
  edgeB: readonly Point[];
  /** On the old faces of the plates beside the weld; fewer than two say nothing. */
  frontA: readonly Point[];
  frontB: readonly Point[];
  backA: readonly Point[];
  backB: readonly Point[];
  /** The bottom of an undercut beside each toe. */
  undercutA: readonly Point[];
  undercutB: readonly Point[];
  /** The root bead lies in a backing strip, which it melts. */
  onStrip: boolean;
}
