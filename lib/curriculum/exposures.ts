/**
 * What an exercise exposes a learner to, read from its electrodes, its positions and the words of
 * its steps, so that nobody has to remember to write it down. Common practice, no source.
 */
import type { AuditedExercise } from './curriculum.ts';

export interface Exposure {
  hazard: string;
  /** The step that brings it, where it is one. */
  step?: string;
}

const byArc = ['arc-rays', 'fume', 'shock', 'burns', 'fire'];

const byWord: readonly [RegExp, readonly string[]][] = [
  [/\bchip\b|\bchip(ping|ped)\b/i, ['chipping', 'hot-metal']],
  [/\bgrind(er|ing)?\b/i, ['grinding', 'noise']],
  [/\bsaw\b|\bflame[- ]cut/i, ['cutting']],
  [/\betch(ing|ant)?\b|\bacid\b/i, ['acid']],
  [/\btorch\b/i, ['torch']],
  [/\boven\b/i, ['hot-oven']],
  [/\b(lugs?|terminals?)\b/i, ['live-terminals']],
  [/\bbend(ing)? (press|jig)\b|\bguided bend\b/i, ['bend-press']],
  [/\bsolvent\b|\bacetone\b/i, ['solvent']],
];

/** Each hazard once, with the first step that brings it. */
export function exposures(exercise: AuditedExercise): Exposure[] {
  const { electrodes, position, joint, steps } = exercise;
  const found: Exposure[] = [
    ...(electrodes.length > 0 ? byArc.map((hazard) => ({ hazard })) : []),
    ...(electrodes.length > 0 && position.some((one) => /overhead|5G|6G/.test(one))
      ? [{ hazard: 'overhead-spatter' }]
      : []),
    ...(joint.includes('pipe groove') ? [{ hazard: 'rolling-pipe' }] : []),
    ...steps.flatMap((step) =>
      byWord.flatMap(([word, hazards]) =>
        word.test(step) ? hazards.map((hazard) => ({ hazard, step })) : [],
      ),
    ),
  ];
  return found.filter(
    ({ hazard }, index) => found.findIndex((one) => one.hazard === hazard) === index,
  );
}
