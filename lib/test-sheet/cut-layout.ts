/**
 * Where each specimen of a welder's test lies on its coupon, for a drawing. The order along a plate
 * and the quarters of a pipe are from memory; that four are bent from a pipe that stood still is read.
 */
import type { Citation } from '../calculation.ts';
import { cutCite } from '../tables/cut-places.ts';
import type { Code, Form } from '../tables/test-positions.ts';
import type { NamedSpecimen } from './named-specimens.ts';

/** A strip across the weld of a plate, in order along it. */
export interface Strip {
  /** Of a specimen; undefined where the strip is thrown away. */
  specimen: NamedSpecimen | undefined;
  /** The stop and the restart lie in its middle. */
  restart: boolean;
}

export type CutLayout =
  | { on: 'plate'; test: string; strips: readonly Strip[] }
  /** The middle of each specimen in hours of a clock, the top mark at 12. */
  | { on: 'pipe'; test: string; places: readonly { specimen: NamedSpecimen; hour: number }[] };

export interface Cuts {
  layouts: readonly CutLayout[];
  /** What the drawing cannot say, a sentence each. */
  notes: readonly string[];
  cite: Citation;
}

const rolled =
  'A pipe that was rolled or stood upright has no top: count from any mark, both pieces opposite each other.';
const quarters =
  'Mark the top before the pipe is cut loose. That four pieces are bent is read (ASME IX, 2010 QW-452.1); which one comes from which quarter is from memory and in doubt.';
const six =
  'Six pieces come from one pipe welded 2G and 5G. Where each is cut is not known here: take it from figure QW-463.2.';
const pipeFillet =
  'From a pipe fillet, two quarters opposite each other: one is broken, one is etched. The code’s figure shows which.';

/**
 * One layout for each coupon whose places are known; a note for the others.
 * @param specimens of the whole test, each named by its position
 */
export function cutLayout(
  code: Code,
  form: Form,
  tests: readonly string[],
  specimens: readonly NamedSpecimen[],
): Cuts {
  const layouts: CutLayout[] = [];
  const notes = new Set<string>();
  // Under ASME IX both positions are welded on one pipe, whose six places are not known.
  const onOne = code === 'ASME IX' && form === 'pipe' && tests.join('+') === '2G+5G';
  if (onOne) notes.add(six);
  for (const test of onOne ? [] : tests) {
    const own = specimens.filter(({ id }) => id.startsWith(`${test} `));
    if (own.length === 0) continue;
    if (form === 'plate') layouts.push({ on: 'plate', test, strips: stripsOf(own) });
    else if (/F/.test(test)) notes.add(pipeFillet);
    else {
      notes.add(own.length > 2 ? quarters : rolled);
      layouts.push({ on: 'pipe', test, places: quartersOf(own) });
    }
  }
  return { layouts, notes: [...notes], cite: cutCite(code, tests[0] ?? '') };
}

const away: Strip = { specimen: undefined, restart: false };

/** Both ends go; of a fillet, one end is etched and the middle is broken. */
function stripsOf(own: readonly NamedSpecimen[]): Strip[] {
  const broken = own.find(({ kind }) => kind === 'fillet break');
  const etched = own.find(({ kind }) => kind === 'macro-etch');
  if (broken)
    return [
      ...(etched ? [{ specimen: etched, restart: false }] : []),
      { specimen: broken, restart: true },
      away,
    ];
  return [away, ...own.map((specimen): Strip => ({ specimen, restart: false })), away];
}

/** Halfway between 12, 3, 6 and 9: root upper left, face upper right, and again going on below. */
function quartersOf(own: readonly NamedSpecimen[]) {
  const [upperRight, lowerRight, lowerLeft, upperLeft] = [1.5, 4.5, 7.5, 10.5];
  const faces = own.filter(({ kind }) => kind === 'face bend');
  const others = own.filter(({ kind }) => kind !== 'face bend');
  if (own.length === 2) {
    // Of two, the face bend lies upper left; both are alike where they are side bends.
    const [first, second] = faces.length === 1 ? [faces[0], others[0]] : own;
    return [
      { specimen: first as NamedSpecimen, hour: upperLeft },
      { specimen: second as NamedSpecimen, hour: lowerRight },
    ];
  }
  if (faces.length === 2)
    return [
      { specimen: others[0] as NamedSpecimen, hour: upperLeft },
      { specimen: faces[0] as NamedSpecimen, hour: upperRight },
      { specimen: others[1] as NamedSpecimen, hour: lowerRight },
      { specimen: faces[1] as NamedSpecimen, hour: lowerLeft },
    ];
  return own.slice(0, 4).map((specimen, i) => ({
    specimen,
    hour: [upperRight, lowerRight, lowerLeft, upperLeft][i] as number,
  }));
}
