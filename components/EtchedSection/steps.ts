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

const scale: readonly Step[] = [
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
];

const undercuts: readonly Step[] = [
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
];

const passes: Step = {
  name: 'passes',
  title: 'Passes',
  mark: 'Pass',
  tell: 'One mark in each pass; they are counted. Or type the number below.',
  optional: true,
};

/** Everything there is to mark on a fillet, in the order it is marked. One of the first two is asked for. */
export const filletSteps: readonly Step[] = [
  ...scale,
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
  ...undercuts,
  passes,
];

/** The same for a groove, from the cap down. A is the left plate in every picture here; yours may differ. */
export const grooveSteps: readonly Step[] = [
  ...scale,
  {
    name: 'toeA',
    title: 'Toe of the cap on plate A',
    mark: 'Toe of the cap on plate A',
    tell: 'Where the cap meets one plate. Call that one A, above and below.',
  },
  {
    name: 'toeB',
    title: 'Toe of the cap on plate B',
    mark: 'Toe of the cap on plate B',
    tell: 'Where the cap meets the other plate.',
  },
  {
    name: 'rootA',
    title: 'End of fusion on plate A',
    mark: 'End of fusion on plate A',
    tell: 'At the root, where the melted metal leaves plate A: at its back, or higher up if the root is not fused through.',
  },
  {
    name: 'rootB',
    title: 'End of fusion on plate B',
    mark: 'End of fusion on plate B',
    tell: 'The same on plate B.',
  },
  {
    name: 'face',
    title: 'Cap',
    mark: 'Cap',
    tell: 'At least three marks along the cap between its toes, one of them on its crown.',
  },
  {
    name: 'rootBead',
    title: 'Root bead',
    mark: 'Root bead',
    tell: 'One mark or more along its surface, one at its lowest or most hollow place. On a backing strip: along the edge of what melted in the strip.',
    optional: true,
  },
  {
    name: 'fusionA',
    title: 'Edge of the melted metal, plate A',
    mark: 'Edge of the melted metal, plate A',
    tell: 'At least three marks from toe to root, where the gray changes. Where the weld does not reach the plate, mark the weld’s own edge: the gap shows as less than nothing.',
  },
  {
    name: 'fusionB',
    title: 'Edge of the melted metal, plate B',
    mark: 'Edge of the melted metal, plate B',
    tell: 'The same along plate B.',
  },
  {
    name: 'edgeA',
    title: 'Prepared edge of plate A',
    mark: 'Prepared edge of plate A',
    tell: 'The bevel as it was cut, from the plate’s face down: two marks, a third where a land begins. Leave it out if you can neither see it nor draw it from a twin that was cut before welding.',
    optional: true,
  },
  {
    name: 'edgeB',
    title: 'Prepared edge of plate B',
    mark: 'Prepared edge of plate B',
    tell: 'The same on plate B.',
    optional: true,
  },
  {
    name: 'plateA',
    title: 'Face of plate A',
    mark: 'Face of plate A',
    tell: 'Two marks on the plate’s face beside the cap, far apart. The height of the cap is measured from there.',
    optional: true,
  },
  {
    name: 'plateB',
    title: 'Face of plate B',
    mark: 'Face of plate B',
    tell: 'Two marks on the other plate’s face beside the cap.',
    optional: true,
  },
  {
    name: 'backA',
    title: 'Back of plate A',
    mark: 'Back of plate A',
    tell: 'Two marks on the plate’s back beside the root, far apart. They give the thickness, and tell whether the root is fused through.',
    optional: true,
  },
  {
    name: 'backB',
    title: 'Back of plate B',
    mark: 'Back of plate B',
    tell: 'Two marks on the back of the other plate.',
    optional: true,
  },
  ...undercuts,
  passes,
];
