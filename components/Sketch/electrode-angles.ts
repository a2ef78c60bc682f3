/**
 * How the electrode leans, by joint and position. Common practice of the trade with low-hydrogen
 * electrodes, no source. The work angle is measured from the plate that lies lower or nearer; the
 * travel angle from upright over the weld.
 */
export type Joint = 'bead' | 'pad' | 'tee' | 'groove';
export type Position = 'flat' | 'horizontal' | 'vertical' | 'overhead';

export interface Lean {
  work: readonly [from: number, to: number];
  travel: readonly [from: number, to: number];
  way: 'drag' | 'push';
}

const drag = [5, 15] as const;
const slightDrag = [5, 10] as const;
const push = [0, 10] as const;
const upright = [90, 90] as const;

export const leans: Record<Joint, Record<Position, Lean>> = {
  bead: {
    flat: { work: upright, travel: drag, way: 'drag' },
    horizontal: { work: [80, 85], travel: drag, way: 'drag' },
    vertical: { work: upright, travel: push, way: 'push' },
    overhead: { work: upright, travel: slightDrag, way: 'drag' },
  },
  pad: {
    flat: { work: [70, 80], travel: drag, way: 'drag' },
    horizontal: { work: [75, 85], travel: drag, way: 'drag' },
    vertical: { work: [70, 80], travel: push, way: 'push' },
    overhead: { work: [70, 80], travel: slightDrag, way: 'drag' },
  },
  tee: {
    flat: { work: [45, 45], travel: drag, way: 'drag' },
    horizontal: { work: [45, 45], travel: drag, way: 'drag' },
    vertical: { work: [45, 45], travel: push, way: 'push' },
    overhead: { work: [45, 60], travel: slightDrag, way: 'drag' },
  },
  groove: {
    flat: { work: upright, travel: drag, way: 'drag' },
    horizontal: { work: [80, 85], travel: drag, way: 'drag' },
    vertical: { work: upright, travel: push, way: 'push' },
    overhead: { work: upright, travel: slightDrag, way: 'drag' },
  },
};

/** Going up a fixed pipe: on the radius with a push that fades toward the top; as on a wall where the joint runs level. */
export const pipeLeans: Record<Position, Lean> = {
  flat: { work: upright, travel: [0, 5], way: 'push' },
  horizontal: leans.groove.horizontal,
  vertical: { work: upright, travel: [5, 10], way: 'push' },
  overhead: { work: upright, travel: [5, 10], way: 'push' },
};
