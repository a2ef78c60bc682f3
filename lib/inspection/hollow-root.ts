import type { Printed } from '../calculation.ts';
import { inSystem, isWithin } from './visual-item.ts';

/** Whether the cover pass stands at least as high as the root is hollow: then nothing is missing from the joint. */
export const isHollowCovered = (hollow: Printed, cover: Printed): boolean =>
  isWithin(inSystem(hollow, 'us'), inSystem(cover, 'us'));
