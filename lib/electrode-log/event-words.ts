/** What can happen to a holder, as the page and the sheet say it. */
import type { HeldEvent, Holder, HolderRow } from '../files/electrode-log.ts';

/** By event, in the past tense. */
export const eventWords: Readonly<Record<HeldEvent, string>> = {
  opened: 'opened',
  out: 'issued',
  'in oven': 'returned to the oven',
  rebaked: 'rebaked',
  wet: 'got wet',
  tagged: 'tagged, practice only',
};

/** `275 °F`, as it was read; empty where no oven came in. */
export const ovenText = ({ temperature }: Pick<HolderRow, 'temperature'>): string =>
  temperature ? `${temperature.value}\u00a0${temperature.unit === 'degF' ? '°F' : '°C'}` : '';

/** `E7018 H4R, 1/8 in`. */
export function electrodeText({ classification, designator, diameter }: Holder): string {
  const printed = designator === 'none' ? classification : `${classification} ${designator}`;
  return diameter.trim() === '' ? printed : `${printed}, ${diameter.trim()}`;
}
