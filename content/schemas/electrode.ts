import { z } from 'astro/zod';
import { quantity } from './words.ts';

/** An electrode by its classification and core diameter. */
export const electrode = z.strictObject({
  classification: z
    .string()
    .regex(/^E\d{4,5}(-\w+)*$/, 'a classification such as E7018')
    .describe('Classification as stamped on the electrode.'),
  diameter: quantity.describe('Diameter of the core wire.'),
});
