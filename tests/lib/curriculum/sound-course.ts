/** A small course in which every rule is met; tests break it one thing at a time. */
import type {
  AuditedExercise,
  AuditedLesson,
  Curriculum,
} from '../../../lib/curriculum/curriculum.ts';

export const lesson = (slug: string, change: Partial<AuditedLesson> = {}): AuditedLesson => ({
  slug,
  title: slug,
  unit: 'all',
  minutes: 20,
  boothHours: 3,
  position: ['flat'],
  joint: ['bead'],
  electrodes: [{ classification: 'E7018', diameter: '1/8 in' }],
  skills: { [`do-${slug}`]: `Do ${slug}` },
  terms: {},
  needs: [],
  calculations: ['travel-speed'],
  exercises: [`try-${slug}`],
  hazards: [],
  sources: [],
  inText: { terms: [], calculations: ['travel-speed'], calculators: [] },
  ...change,
});

export const exercise = (of: string, change: Partial<AuditedExercise> = {}): AuditedExercise => ({
  slug: `try-${of}`,
  title: of,
  lesson: of,
  station: 'booth',
  position: ['flat'],
  joint: ['bead'],
  electrodes: [{ classification: 'E7018', diameter: '1/8 in' }],
  pipes: [],
  minutes: 60,
  attempts: 3,
  steps: ['Run a bead.'],
  practises: [`do-${of}`],
  assesses: [`do-${of}`],
  grading: [{ item: 'undercut', limit: 'None', known: 'read', source: 'book' }],
  ...change,
});

export const gateLesson = lesson('gate', {
  boothHours: 1,
  position: [],
  joint: [],
  electrodes: [],
  terms: { arc: 'A light' },
  hazards: ['arc-rays', 'fume', 'shock', 'burns', 'fire'],
  inText: { terms: ['arc'], calculations: ['travel-speed'], calculators: [] },
});
export const gate = exercise('gate', {
  position: [],
  joint: [],
  electrodes: [],
  attempts: 1,
  steps: ['Show the way out.'],
});

export const bead = lesson('bead', { needs: ['do-gate'] });
export const groove = lesson('groove', { needs: ['do-bead'], joint: ['groove'] });
export const tryBead = exercise('bead');
export const tryGroove = exercise('groove', {
  joint: ['groove'],
  practises: ['do-groove', 'do-bead'],
});

export const sound: Curriculum = {
  units: [{ id: 'all', title: 'All', lessons: ['gate', 'bead', 'groove'] }],
  lessons: [gateLesson, bead, groove],
  unplaced: [],
  exercises: [gate, tryBead, tryGroove],
  calculations: [{ id: 'travel-speed', title: 'Speed', forTeaching: false, sources: [] }],
  checks: [{ calculation: 'travel-speed', source: 'book', known: 'read' }],
  outlines: [],
  sources: ['book'],
};

/** The sound course with other lessons and exercises in place of its own. */
export const withChanges = (
  lessons: readonly AuditedLesson[],
  exercises: readonly AuditedExercise[] = [],
): Curriculum => ({
  ...sound,
  lessons: sound.lessons.map((one) => lessons.find(({ slug }) => slug === one.slug) ?? one),
  exercises: sound.exercises.map((one) => exercises.find(({ slug }) => slug === one.slug) ?? one),
});
