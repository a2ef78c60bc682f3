import { describe, expect, it } from 'vitest';
import { readExercises } from '../../../content/read-exercises.ts';
import filterShade from '../../../lib/calculations/filter-shade.ts';

const gate = readExercises().find(({ slug }) => slug === 'safety-gate');
const questions = gate?.questions ?? [];
const key = questions.map(({ ask, answer }) => `${ask} ${answer}`).join('\n');

describe('the questions before the first arc', () => {
  it.each([
    ['rays', /arc eye/i],
    ['fume', /plume/],
    ['shock', /tingle.*machine off/is],
    ['rescue without touching', /don't touch the person/i],
    ['closed spaces', /don't go in/i],
    ['fire watch', /full hour.*half an hour/is],
    ['coated metal', /galvanized/],
    ['chlorinated cleaner', /phosgene/],
    ['hot metal', /looks like cold/],
    ['the ways to help', /emergency stop.*extinguisher.*eyewash.*data sheets/is],
    ['what is told in private', /pacemaker.*sensitive to light/is],
  ])('ask about %s', (_, words) => {
    expect(key).toMatch(words);
  });

  it('have a key for each, and no two alike', () => {
    expect(questions.length).toBeGreaterThan(12);
    expect(new Set(questions.map(({ ask }) => ask)).size).toBe(questions.length);
  });

  it('give the two shades that the library gives for that electrode and current', () => {
    const shades = filterShade.compute({ diameter: 1 / 8, current: 125 });
    const asked = questions.find(({ ask }) => /shade/.test(ask))?.answer;
    expect(asked).toContain(`Start with ${shades.startShade}`);
    expect(asked).toContain(`Never below ${shades.minimumShade}`);
  });
});
