import type { Curriculum } from './curriculum.ts';

/** A place that a rule looked at, in words, and where a reader finds it. */
export interface Finding {
  holds: boolean;
  says: string;
  at: Spot;
}

export interface Spot {
  page: 'lesson' | 'exercise' | 'calculation' | 'source' | 'term';
  id: string;
  /** The part of that page: the id of one of its headings or sections. */
  part?: string;
  /** The sentence there that the finding speaks of. */
  sentence?: string | undefined;
}

/** What may be named in a finding. A term goes by its own words. */
export type NamedKind =
  | 'unit'
  | 'lesson'
  | 'exercise'
  | 'skill'
  | 'hazard'
  | 'calculation'
  | 'source';

/** What a finding calls the thing with this id: its id to an author, its title to a reader. */
export type Name = (kind: NamedKind, id: string) => string;

/** What makes a sequence sound: a sentence, why it matters, and the places where it was looked for. */
export interface Rule {
  id: string;
  sentence: string;
  why: string;
  look(course: Curriculum, name: Name): Finding[];
}
