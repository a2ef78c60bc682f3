/** The types of what was read on a weld; `inputs/visual-readings.ts` says how each is got. */
import type { Printed, ValuesOf } from '../calculation.ts';
import type { visualReadings } from '../inputs/visual-readings.ts';

/** What was seen and gauged on one weld, sizes in the system of their gauge. What nobody looked at is undefined. */
export type GaugeReadings = ValuesOf<typeof visualReadings>;

export type YesNo = 'yes' | 'no' | undefined;
export type Reading = Printed | undefined;
