/** The signs under which faults are sorted: what a learner sees first, before knowing the cause. */
export const faultSigns = {
  profile: 'Wrong shape',
  size: 'Wrong size',
  'start-stop': 'Bad start, stop or crater',
  undercut: 'A groove along the toe',
  fusion: 'Metal that lies on, not in',
  slag: 'Slag left in or stuck on',
  porosity: 'Holes',
  crack: 'A crack',
  spatter: 'Spatter',
  distortion: 'Parts pulled out of line',
  arc: 'An arc that will not behave',
} as const;

export type FaultSign = keyof typeof faultSigns;
