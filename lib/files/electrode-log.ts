/** An electrode log: what happened to each can, quiver or other holder of electrodes, and when. */
import * as v from 'valibot';
import { designators } from '../inputs/classification.ts';
import { classifications } from '../tables/classifications.ts';
import type { FileKind } from './file-kind.ts';

const short = v.pipe(v.string(), v.maxLength(200, 'more than 200 letters'));

/** A minute in UTC: `2026-03-26T22:35Z`. */
const instant = v.pipe(
  v.string(),
  v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\dZ$/, 'an instant is written like 2026-03-26T22:35Z'),
  v.check((text) => instantText(instantOf(text)) === text, 'an instant that no calendar has'),
);

export const heldEvents = ['opened', 'out', 'in oven', 'rebaked', 'wet', 'tagged'] as const;

const row = v.object({
  event: v.picklist(heldEvents),
  at: instant,
  /** Of the oven, as read. */
  temperature: v.optional(
    v.object({
      value: v.pipe(v.number(), v.minValue(-100), v.maxValue(2000)),
      unit: v.picklist(['degF', 'degC']),
    }),
  ),
  hours: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(8784))),
  /** Initials of who wrote the row; may stay empty. */
  by: v.optional(short, ''),
});

const holder = v.object({
  /** "Can 3, lot 17A", "Quiver booth 4". */
  name: v.pipe(short, v.minLength(1, 'a holder has a name')),
  classification: v.picklist(classifications),
  designator: v.picklist(designators),
  /** As written: "1/8 in". May stay empty. */
  diameter: short,
  /** In the order of time. */
  rows: v.pipe(v.array(row), v.maxLength(2000, 'more than 2000 rows')),
});

const log = v.object({
  /** IANA name of the time zone whose clock hangs on the wall. */
  zone: short,
  holders: v.pipe(
    v.array(holder),
    v.maxLength(200, 'more than 200 holders'),
    v.check(
      (holders) => new Set(holders.map(({ name }) => name)).size === holders.length,
      'two holders have the same name',
    ),
  ),
});

export type ElectrodeLog = v.InferOutput<typeof log>;
export type Holder = v.InferOutput<typeof holder>;
export type HolderRow = v.InferOutput<typeof row>;
export type HeldEvent = (typeof heldEvents)[number];

export const electrodeLog: FileKind<ElectrodeLog> = {
  name: 'electrode-log',
  title: 'an electrode log',
  version: 1,
  schema: log,
};

/** @param zone the IANA name of the time zone, such as `America/New_York` */
export const emptyLog = (zone: string): ElectrodeLog => ({ zone, holders: [] });

/** Milliseconds since 1970 of a minute as the file writes it; NaN for what is none. */
export const instantOf = (text: string): number => Date.parse(text);

/** The minute in which an instant lies, as the file writes it; empty for no instant. */
export const instantText = (instant: number): string =>
  Number.isNaN(instant) ? '' : `${new Date(instant).toISOString().slice(0, 16)}Z`;
