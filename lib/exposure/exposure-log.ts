/**
 * One container or quiver of low-hydrogen electrodes, followed through its log: what each row did
 * and what may still be done. AWS D1.1 2015 clause 5.3.2 (2020 clause 7.3.2).
 */
import type { Printed } from '../calculation.ts';
import { NoAnswer } from '../no-answer.ts';
import type { PrintedFigure } from '../printed-figure.ts';
import { type Bake, ovenRules } from '../tables/exposure-d1.1.ts';
import { durationText, wallClock } from '../text/clock-text.ts';
import { ExposureClock, second } from './exposure-clock.ts';

export const logEvents = ['opened', 'out', 'in oven', 'rebaked', 'wet', 'tagged'] as const;

export interface LogEvent {
  event: (typeof logEvents)[number];
  /** Hours on a clock that runs on past midnight. */
  at: number;
  /** Of the oven, in the system it was read in. */
  temperature?: Printed | undefined;
  /** How long it stayed in the oven, in hours. */
  hours?: number | undefined;
}

export const exposureStates = [
  'sealed',
  'out, within its time',
  'in the oven, holding',
  'in the oven, ready',
  'out too long',
  'practice only, tagged',
  'scrap',
] as const;

const { hold } = ovenRules;
const both = ({ us, metric }: PrintedFigure) => `${us} °F (${metric} °C)`;

/** What happens to a shut container as well as to an open one. */
const unopened: readonly string[] = ['opened', 'wet', 'tagged'];

/** How a log tells its times. */
export interface Told {
  time(hours: number): string;
  /** Stands after a time that comes too early. */
  hint?: string;
}
const onRunningClock: Told = {
  time: wallClock,
  hint: '; past midnight count on, so that 1:00 is 25:00',
};

/**
 * Rows go in one by one with `add`; the state is read at any time. `reasons` tells what each row
 * did.
 */
export class ExposureLog {
  readonly clock: ExposureClock;
  readonly reasons: string[] = [];
  private readonly told: Told;
  private readonly rebake: Bake;
  private bakes = 0;
  private end: 'practice only, tagged' | 'scrap' | undefined;

  /** `limit`: the longest time in open air, in hours. `rebake`: what makes them dry again. */
  constructor(limit: number, told: Told = onRunningClock, rebake: Bake = ovenRules.rebake) {
    this.clock = new ExposureClock(limit);
    this.told = told;
    this.rebake = rebake;
  }

  /** The next row, counted from one. Throws NoAnswer for a row that cannot follow the last. */
  add(row: LogEvent, number: number): void {
    this.refuse(row, (name) => `events.${number}.${name}`);
    if (this.clock.place === 'container' && !unopened.includes(row.event))
      this.reasons.push('No opening is logged: they are taken as fresh in the first row.');
    this.advance(row.at);
    const text = this.happen(row);
    this.reasons.push(`${this.told.time(row.at)}: ${text}`);
  }

  advance(to: number): void {
    const stayEnded = this.clock.advance(to);
    if (stayEnded !== undefined)
      this.reasons.push(
        `${this.told.time(stayEnded)}: the stay in the oven ends, and they are out.`,
      );
  }

  private refuse({ event, at, temperature, hours }: LogEvent, field: (name: string) => string) {
    const { place } = this.clock;
    const over = this.clock.stayEnds ?? this.clock.time;
    if (at < over - second)
      throw new NoAnswer(
        `${this.told.time(at)} comes before the row above is over, at ${this.told.time(over)}${this.told.hint ?? ''}`,
        field('at'),
      );
    if (event === 'opened' && place !== 'container')
      throw new NoAnswer('A container is opened once, in the first row', field('event'));
    if ((event === 'in oven' || event === 'rebaked') && temperature === undefined)
      throw new NoAnswer('The oven’s temperature is missing', field('temperature'));
    if (event === 'rebaked' && hours === undefined)
      throw new NoAnswer('The hours at that temperature are missing', field('hours'));
  }

  private happen({ event, at, temperature, hours }: LogEvent): string {
    switch (event) {
      case 'opened':
        this.clock.takeOut();
        return 'container opened; the clock starts.';
      case 'wet':
        this.end = 'scrap';
        return 'wet. Wet electrodes are scrap; no oven makes them good again.';
      case 'tagged':
        this.end ??= 'practice only, tagged';
        return 'tagged for practice pads only. Nothing makes them low-hydrogen again.';
      case 'out':
        this.clock.takeOut();
        return this.clock.hoursOut > second
          ? `out, with ${durationText(this.clock.hoursOut)} on the clock.`
          : 'out; the clock starts afresh.';
      case 'in oven':
        return this.enterOven(temperature as Printed, hours === undefined ? undefined : at + hours);
      case 'rebaked':
        return this.bake(temperature as Printed, at, hours ?? 0);
    }
  }

  private enterOven({ value, system }: Printed, until: number | undefined): string {
    const hotEnough = value >= hold.least[system];
    this.clock.putInOven(hotEnough, until);
    if (!hotEnough) return `in an oven below ${both(hold.least)}, which counts as time out.`;
    if (this.clock.isOver)
      return 'in the oven, but out too long: holding them warm does not dry them.';
    return this.clock.isHolding
      ? `in the oven with ${durationText(this.clock.hoursOut)} on the clock; ${hold.hours} h at ${both(hold.least)} or more start it afresh.`
      : 'in the oven, with nothing on the clock.';
  }

  private bake({ value, system }: Printed, at: number, hours: number): string {
    const { rebake } = this;
    const rebakeText = `${both(rebake.from)} to ${both(rebake.to)}`;
    this.clock.takeOut();
    this.clock.time = at + hours;
    this.bakes++;
    if (this.end) return 'baked, which does not help any more.';
    if (value > rebake.to[system]) {
      this.end = 'scrap';
      return `baked hotter than ${rebakeText}, which harms the covering: scrap.`;
    }
    this.end = 'practice only, tagged';
    if (this.bakes > rebake.times) return 'baked again. Once is all that the code allows.';
    if (value < rebake.from[system] || hours < rebake.hours - second)
      return `baked, but not at ${rebakeText} for at least ${rebake.hours} h, so nobody knows that they are dry. It counts as the one rebake.`;
    this.end = undefined;
    this.clock.startAfresh(at + hours);
    return `rebaked until ${this.told.time(at + hours)}; the clock starts afresh. There is no second rebake.`;
  }

  get state(): (typeof exposureStates)[number] {
    if (this.end) return this.end;
    if (this.clock.place === 'container') return 'sealed';
    if (this.clock.isOver)
      return this.bakes < this.rebake.times ? 'out too long' : 'practice only, tagged';
    if (this.clock.isHolding) return 'in the oven, holding';
    return this.clock.isReady ? 'in the oven, ready' : 'out, within its time';
  }

  get mayRebake(): boolean {
    return !this.end && this.clock.place !== 'container' && this.bakes < this.rebake.times;
  }
}
