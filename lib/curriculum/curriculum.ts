/** The course as the audit sees it: lessons in reading order, and what they stand on. */
import type { Known } from '../citation.ts';

export interface AuditedLesson {
  slug: string;
  title: string;
  unit: string;
  /** Minutes of reading. */
  minutes: number;
  boothHours: number;
  position: readonly string[];
  joint: readonly string[];
  electrodes: readonly AuditedElectrode[];
  /** Skills and what each means. */
  skills: Readonly<Record<string, string>>;
  /** Terms and their definitions. */
  terms: Readonly<Record<string, string>>;
  needs: readonly string[];
  calculations: readonly string[];
  exercises: readonly string[];
  hazards: readonly string[];
  sources: readonly AuditedCitation[];
  /** Terms and calculators that its text links to, and calculations that it computes with. */
  inText: {
    terms: readonly string[];
    calculations: readonly string[];
    calculators: readonly string[];
  };
}

export interface AuditedElectrode {
  classification: string;
  diameter: string;
}

export interface AuditedCitation {
  source: string;
  at: string;
  known: Known;
  /** What it carries. */
  for: string;
}

export interface AuditedExercise {
  slug: string;
  title: string;
  lesson: string;
  /** At the booth or at the side station, whose minutes are not booth hours. */
  station: 'booth' | 'side';
  position: readonly string[];
  joint: readonly string[];
  electrodes: readonly AuditedElectrode[];
  /** Nominal sizes of the pipe that is cut for it. */
  pipes: readonly string[];
  minutes: number;
  attempts: number;
  steps: readonly string[];
  practises: readonly string[];
  assesses: readonly string[];
  /** What it is judged by; a source, or none for the shop's own points. */
  grading: readonly AuditedPoint[];
}

export interface AuditedPoint {
  item: string;
  limit: string;
  known: Known;
  source?: string | undefined;
  at?: string | undefined;
}

export interface AuditedCheck {
  calculation: string;
  source: string;
  known: Known;
}

export interface AuditedCalculation {
  id: string;
  title: string;
  /** For whoever runs a class; no lesson needs to teach it. */
  forTeaching: boolean;
  sources: readonly { source: string; at?: string | undefined; known: Known }[];
}

/** One part of the course, and the lessons that it plans. */
export interface AuditedUnit {
  id: string;
  title: string;
  lessons: readonly string[];
}

export interface Curriculum {
  units: readonly AuditedUnit[];
  /** In reading order. */
  lessons: readonly AuditedLesson[];
  /** Lessons that are written and have no place in the order. */
  unplaced: readonly string[];
  exercises: readonly AuditedExercise[];
  calculations: readonly AuditedCalculation[];
  /** Values that hold a calculation to something outside it. */
  checks: readonly AuditedCheck[];
  /** Public outlines that the course is laid beside. */
  outlines: readonly { id: string; source: string }[];
  /** Publications on the page of sources. */
  sources: readonly string[];
}
