import { describe, expect, it } from 'vitest';
import type { ClassNeeds } from '../../../lib/class/class-needs.ts';
import { rodMass } from '../../../lib/class/rod-mass.ts';
import { verdict } from '../../../lib/class/verdict.ts';

const of = (asked: number, there: number, hours = 0, capacity = 0) =>
  verdict({
    demand: { each: asked },
    supply: { each: there },
    preparation: { hours, capacity },
  } as unknown as ClassNeeds);

describe('the verdict on a plan', () => {
  it.each([
    [41, 40, true, /^Too full: 1 h a learner too many/],
    [40.5, 40, true, /^Too full: 30 min/],
    [40, 40, false, /^Full: 0 min a learner is left/],
    // A twentieth of 40 h are 2 h.
    [38.5, 40, false, /^Full: 1 h 30 min/],
    [38, 40, false, /^2 h a learner is left/],
    [20, 40, false, /^20 h a learner is left/],
  ])('%s h asked of %s h: overfull %s', (asked, there, overfull, booths) => {
    const found = of(asked, there);
    expect(found.overfull).toBe(overfull);
    expect(found.booths).toMatch(booths);
  });

  it.each([
    [12, 10, /^Too much: 2 h more beveling/],
    [10, 10, /^0 min is left at the bench/],
    [7.5, 10, /^2 h 30 min is left/],
  ])('%s h of beveling in %s h', (hours, capacity, bench) => {
    expect(of(0, 1, hours, capacity).bench).toMatch(bench);
  });
});

describe('rodMass', () => {
  // π/4 · (1/8 in)² · 14 in · 0.2836 lb/in³ = 0.04872 lb of core; the coating is 0.30 of an E7018
  // and 0.12 of a cellulose electrode (from memory).
  it.each([
    ['E7018', 0.0696],
    ['E6010', 0.05537],
    ['E6011', 0.05537],
    ['E6013', 0.0696],
  ])('weighs an %s of 1/8 in', (classification, pounds) => {
    expect(rodMass(classification, 1 / 8)).toBeCloseTo(pounds, 4);
    expect(rodMass(classification, 1 / 8, 7)).toBeCloseTo(pounds / 2, 4);
    expect(rodMass(classification, 1 / 4)).toBeCloseTo(4 * pounds, 3);
  });
});
