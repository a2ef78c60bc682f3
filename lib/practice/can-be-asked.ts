import type { Output } from '../calculation.ts';

/** Outputs that have one answer: a number, one of a few words, yes or no. */
export const canBeAsked = (output: Output): boolean =>
  !('text' in output || 'list' in output || 'shape' in output);
