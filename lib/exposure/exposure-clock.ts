/**
 * How long low-hydrogen electrodes have been in open air. Only a whole hold in a hot enough oven
 * sets the clock back; a shorter return does not even stop it. AWS D1.1 2015 clause 5.3.2.2.
 */
import { ovenRules } from '../tables/exposure-d1.1.ts';

/** A second, in hours: clock times such as 18:20 are no exact numbers. */
export const second = 1 / 3600;
const wholeHold = ovenRules.hold.hours - second;

/**
 * Starts in a sealed container at hour 0. Times are hours on the log’s clock and never run back.
 */
export class ExposureClock {
  /** Longest time in open air, in hours. */
  readonly limit: number;
  /** Hours on the log's clock. */
  time = 0;
  place: 'container' | 'air' | 'oven' = 'container';
  /** When the present stay in the oven ends, if that is known. */
  stayEnds: number | undefined;
  /** Hours out, the present stay in the oven not counted. */
  private before = 0;
  /** Hours in the present stay in a hot enough oven. */
  private held = 0;
  private hotEnough = false;

  constructor(limit: number) {
    this.limit = limit;
  }

  /** Lets time pass. Returns the hour at which a stay in the oven ended on the way. */
  advance(to: number): number | undefined {
    const { stayEnds } = this;
    if (stayEnds === undefined || to <= stayEnds + second) {
      this.pass(to);
      return undefined;
    }
    this.pass(stayEnds);
    this.takeOut();
    this.pass(to);
    return stayEnds;
  }

  private pass(to: number): void {
    const hours = Math.max(0, to - this.time);
    this.time = Math.max(this.time, to);
    if (this.place === 'oven' && this.hotEnough) this.held += hours;
    else if (this.place !== 'container') this.before += hours;
  }

  takeOut(): void {
    this.endStay();
    this.place = 'air';
  }

  putInOven(hotEnough: boolean, until: number | undefined): void {
    if (!(this.hotEnough && hotEnough)) this.endStay();
    this.place = 'oven';
    this.hotEnough = hotEnough;
    this.stayEnds = until;
  }

  /** Out of a bake that made them dry again. */
  startAfresh(at: number): void {
    this.takeOut();
    this.before = 0;
    this.time = at;
  }

  private endStay(): void {
    if (this.before > second && !this.isOver)
      this.before = this.held >= wholeHold ? 0 : this.before + this.held;
    this.held = 0;
    this.hotEnough = false;
    this.stayEnds = undefined;
  }

  /** Out for longer than allowed; no hold mends that. */
  get isOver(): boolean {
    return this.before > this.limit + second;
  }
  get isHolding(): boolean {
    return this.hotEnough && this.before > second && this.held < wholeHold;
  }
  get isReady(): boolean {
    return this.hotEnough && !this.isHolding && !this.isOver;
  }
  /** What the clock shows if they come out now. */
  get hoursOut(): number {
    if (this.isOver) return this.before;
    return this.isReady ? 0 : this.before + this.held;
  }
  get holdEnds(): number {
    return this.time + ovenRules.hold.hours - this.held;
  }
}
