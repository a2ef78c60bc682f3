/** The course as the audit sees it: lessons in reading order, and their booth exercises. */
export interface AuditedLesson {
  slug: string;
  title: string;
  unit: string;
  minutes: number;
  boothHours: number;
  position: readonly string[];
  joint: readonly string[];
  /** Skills and what each means. */
  skills: Readonly<Record<string, string>>;
  needs: readonly string[];
  calculations: readonly string[];
  exercises: readonly string[];
  hazards: readonly string[];
}

export interface AuditedExercise {
  slug: string;
  lesson: string;
  /** At the booth or at the side station, whose minutes are not booth hours. */
  station: 'booth' | 'side';
  minutes: number;
  attempts: number;
  practises: readonly string[];
  assesses: readonly string[];
  /** What it is judged by; a source, or none for the shop's own points. */
  grading: readonly { item: string; source?: string | undefined }[];
}

export interface Curriculum {
  lessons: readonly AuditedLesson[];
  exercises: readonly AuditedExercise[];
  /** Calculations that a published value checks. */
  checked: readonly string[];
}
