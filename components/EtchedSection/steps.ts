import type { MarkName } from '../../lib/section/section-marks.ts';

export interface Step {
  name: MarkName;
  /** What is marked, as its button says. */
  title: string;
  /** What a single mark is called. */
  mark: string;
  tell: string;
  optional?: true;
}

/** Everything there is to mark, in the order it is marked. Only one of the first two is asked for. */
export const steps: readonly Step[] = [
  {
    name: 'ends',
    title: 'Known distance',
    mark: 'End of the known distance',
    tell: 'Two points on the ruler, as far apart as you can. Or both faces of a plate that you measured with a caliper.',
  },
  {
    name: 'corners',
    title: 'Corners of a rectangle',
    mark: 'Corner',
    tell: 'Four corners of a rectangle in the plane of the slice, going round. The first two span its first side.',
  },
  {
    name: 'root',
    title: 'Root',
    mark: 'Root',
    tell: 'Where the old faces of the two plates cross. Carry both on in your mind, under the weld.',
  },
  {
    name: 'toeA',
    title: 'Toe on plate A',
    mark: 'Toe on plate A',
    tell: 'Where the face of the weld meets one plate. Call that one A; in a tee, take the flat one.',
  },
  {
    name: 'toeB',
    title: 'Toe on plate B',
    mark: 'Toe on plate B',
    tell: 'Where the face of the weld meets the other plate.',
  },
  {
    name: 'face',
    title: 'Face',
    mark: 'Face',
    tell: 'At least three marks along the face between the toes. Five are better, closer together where it bends.',
  },
  {
    name: 'fusion',
    title: 'Edge of the melted metal',
    mark: 'Edge of the melted metal',
    tell: 'At least five marks from toe to toe behind the root, where the gray changes. Nine are better.',
  },
  {
    name: 'plateA',
    title: 'Old face of plate A',
    mark: 'Old face of plate A',
    tell: 'Two marks on the plate’s face past the toe, far apart. They give the angle, and the leg along the plate.',
    optional: true,
  },
  {
    name: 'plateB',
    title: 'Old face of plate B',
    mark: 'Old face of plate B',
    tell: 'Two marks on the other plate’s face past the toe, far apart.',
    optional: true,
  },
  {
    name: 'undercutA',
    title: 'Undercut at toe A',
    mark: 'Undercut at toe A',
    tell: 'The bottom of the notch beside the toe, if there is one.',
    optional: true,
  },
  {
    name: 'undercutB',
    title: 'Undercut at toe B',
    mark: 'Undercut at toe B',
    tell: 'The bottom of the notch beside the other toe, if there is one.',
    optional: true,
  },
  {
    name: 'passes',
    title: 'Passes',
    mark: 'Pass',
    tell: 'One mark in each pass; they are counted.',
    optional: true,
  },
];
