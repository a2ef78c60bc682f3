/** What a fillet and a groove have of their own on the bench: what is marked, measured, drawn and judged. */
import type { Printed } from '../../lib/calculation.ts';
import type { Homography } from '../../lib/geometry/homography.ts';
import type { DrawnSection } from '../../lib/section/drawn-section.ts';
import { drawnFillet, filletLines } from '../../lib/section/fillet-lines.ts';
import { filletReadings, type NamedReading } from '../../lib/section/fillet-readings.ts';
import { filletItems } from '../../lib/section/fillet-verdicts.ts';
import { grooveLines } from '../../lib/section/groove-lines.ts';
import { grooveReadings } from '../../lib/section/groove-readings.ts';
import { grooveItems } from '../../lib/section/groove-verdicts.ts';
import type { PicturePlane } from '../../lib/section/picture-plane.ts';
import { filletMarks, placedFillet } from '../../lib/section/placed-fillet.ts';
import { grooveMarks, placedGroove } from '../../lib/section/placed-groove.ts';
import type { Missing, TypedScale } from '../../lib/section/placed-plane.ts';
import {
  filletSampleLength,
  filletSampleMarks,
  filletTruth,
} from '../../lib/section/sample-fillet.ts';
import {
  grooveSampleLength,
  grooveSampleMarks,
  grooveTruth,
} from '../../lib/section/sample-groove.ts';
import type { SectionItem, Seen } from '../../lib/section/section-item.ts';
import { noMarks, type Placed } from '../../lib/section/section-marks.ts';
import { grooveCodes, type MacroCode, macroCodes } from '../../lib/tables/macro-limits.ts';
import type { System } from '../../lib/units.ts';
import type { SampleName } from './picture.ts';
import { filletSteps, grooveSteps, type Step } from './steps.ts';

export interface Judging {
  code: MacroCode;
  system: System;
  size: Printed | undefined;
  cracks: Seen;
  unfused: Seen;
}

export interface Found {
  plane: PicturePlane;
  readings: readonly NamedReading[];
  items(judging: Judging): SectionItem[];
}

export interface Kind {
  title: string;
  steps: readonly Step[];
  codes: readonly MacroCode[];
  /** What the box for the drawing's size asks for, where it is not what a fillet asks. */
  sizeHint?: string;
  /** What stands under the verdicts. */
  aside?: string;
  /** Readings that a screen reader is told of once the hand rests. */
  told: RegExp;
  sample: {
    marks: Placed;
    length: number;
    truth: Readonly<Record<string, number>>;
    size: Readonly<Record<System, string>>;
  };
  /** @param markingError standard error of each coordinate of a mark, in pixels of the picture */
  measure(
    placed: Placed,
    typed: TypedScale,
    markingError: number,
    onStrip: boolean,
  ): Found | Missing;
  draw(placed: Placed, map: Homography | undefined, onStrip: boolean): DrawnSection | undefined;
}

const fillet: Kind = {
  title: 'Fillet',
  steps: filletSteps,
  codes: macroCodes,
  told: /^(legA|legB|throat|penetration)$/,
  sample: {
    marks: { ...noMarks, ...filletSampleMarks },
    length: filletSampleLength,
    truth: filletTruth,
    size: { us: '5/16', metric: '8' },
  },
  measure(placed, typed, markingError) {
    const measured = placedFillet(placed, typed, markingError);
    if ('missing' in measured) return measured;
    const { found, plane } = measured;
    return {
      plane,
      readings: filletReadings(found),
      items: (judging) => filletItems({ ...judging, found }),
    };
  },
  draw(placed, map) {
    const marks = filletMarks(placed);
    const lines = marks && filletLines(marks, map);
    return lines && drawnFillet(lines);
  },
};

const groove: Kind = {
  title: 'Groove',
  steps: grooveSteps,
  codes: grooveCodes,
  sizeHint: 'Leave it empty where the weld goes through the whole plate.',
  aside:
    'A section shows one place of the groove. The codes judge a welder’s groove by eye, then by bends or a radiograph; this teaches and qualifies nobody.',
  told: /^(capHeight|rootHeight|throat|sidewallA|sidewallB)$/,
  sample: {
    marks: { ...noMarks, ...grooveSampleMarks },
    length: grooveSampleLength,
    truth: grooveTruth,
    size: { us: '', metric: '' },
  },
  measure(placed, typed, markingError, onStrip) {
    const measured = placedGroove(placed, typed, markingError, onStrip);
    if ('missing' in measured) return measured;
    const { found, plane } = measured;
    return {
      plane,
      readings: grooveReadings(found, onStrip),
      items: ({ code, ...judging }) =>
        grooveItems({
          ...judging,
          code: grooveCodes.find((one) => one === code) ?? grooveCodes[0],
          onStrip,
          found,
        }),
    };
  },
  draw(placed, map, onStrip) {
    const marks = grooveMarks(placed, onStrip);
    return marks && grooveLines(marks, map);
  },
};

export const kinds: Readonly<Record<SampleName, Kind>> = { fillet, groove };
