/** One part of the course: the lessons that are read one after another in it. */
export interface Unit {
  /** Stands in the front matter of its lessons. */
  id: string;
  title: string;
  /** What a learner can do at its end, in a few words. */
  aim: string;
  /** The file names of its lessons, in the order they are read. */
  lessons: readonly string[];
}

/** The course in the order it is read. No lesson relies on one that comes after it. */
export const readingOrder = [
  {
    id: 'before-the-arc',
    title: 'Before the arc',
    aim: 'Walk into a booth, set it up and know what can hurt you there.',
    lessons: ['booth-safety', 'machine-setup', 'low-hydrogen-electrodes'],
  },
  {
    id: 'flat',
    title: 'Flat',
    aim: 'Lay straight, even beads, stop and start them, and say what they tell you.',
    lessons: [
      'flat-bead',
      'starts-and-stops',
      'metal-and-fit-up',
      'padding-flat',
      'reading-a-bead',
      'arc-length-clinic',
    ],
  },
  {
    id: 'flat-and-horizontal',
    title: 'Flat and horizontal',
    aim: 'Make fillets and grooves of a stated size, cut one open and see inside.',
    lessons: ['fillet-2f', 'cut-and-etch', 'groove-1g', 'groove-2g', 'thick-plate-and-preheat'],
  },
  {
    id: 'vertical',
    title: 'Vertical',
    aim: 'Carry the pool uphill, first on plate, then in tees and in a test groove.',
    lessons: [
      'padding-vertical',
      'fillet-3f-weave',
      'fillet-3f-stringers',
      'larger-electrode-vertical',
      'groove-3g',
    ],
  },
  {
    id: 'overhead',
    title: 'Overhead',
    aim: 'Weld above your head with a short arc and a steady body.',
    lessons: ['padding-overhead', 'fillet-4f', 'roof-and-corner-plates', 'groove-4g'],
  },
  {
    id: 'pipe',
    title: 'Pipe',
    aim: 'Follow a joint round a fixed pipe, from an open root to a cap at 45°.',
    lessons: ['open-root', 'pipe-and-fit-up', 'around-the-clock', 'pipe-6g-nps-6', 'pipe-6g-nps-2'],
  },
  {
    id: 'test-day',
    title: 'Test day',
    aim: 'Know what is looked at, what is recorded and what a passed test covers.',
    lessons: ['test-day'],
  },
] as const satisfies readonly Unit[];

export type UnitId = (typeof readingOrder)[number]['id'];
