/** How a problem is put together from a scene: values drawn, sentences filled, what fits nothing refused. */
import { describe, expect, it } from 'vitest';
import { loadCalculation } from '../../../lib/calculations.ts';
import { loadPracticed } from '../../../lib/practice/load-practiced.ts';
import { makeProblem, type Practiced } from '../../../lib/practice/problem.ts';
import type { Scene } from '../../../lib/practice/scene.ts';
import { canBePracticed, loadScenes, practiced } from '../../../lib/practice/scenes.ts';

const calculation = await loadCalculation('fillet-throat');
const legs: Scene = {
  told: ['Legs of {legA} and {legB}.', 'One leg is {legB}, the other {legA}.'],
  asked: { throat: ['How deep is it?', 'What is the throat?'], area: 'How large is it?' },
  values: {
    legA: { us: ['1/4 in', '3/8 in'], metric: ['6 mm', '10 mm'] },
    legB: ['8 mm', { typed: '5 mm', said: 'five of them' }],
  },
};
const one: Practiced = { id: 'legs', calculation, scenes: [legs] };
const many = (practice: Practiced, system: 'us' | 'metric' = 'us') =>
  Array.from({ length: 80 }, (_, set) => makeProblem(practice, set, 0, system));

describe('makeProblem', () => {
  it('draws every value, telling and question of its scene, and nothing else', () => {
    const us = many(one);
    expect(new Set(us.map(({ typed }) => typed.legA))).toEqual(new Set(['1/4 in', '3/8 in']));
    expect(new Set(us.map(({ typed }) => typed.legB))).toEqual(new Set(['8 mm', '5 mm']));
    expect(new Set(us.map(({ want }) => want))).toEqual(new Set(['throat', 'area']));
    expect(new Set(us.map(({ text }) => text.slice(text.lastIndexOf('. ') + 2)))).toEqual(
      new Set(['How deep is it?', 'What is the throat?', 'How large is it?']),
    );
    expect(new Set(us.map(({ text }) => text.startsWith('Legs')))).toEqual(new Set([true, false]));
    const metric = many(one, 'metric').map(({ typed }) => typed.legA);
    expect(new Set(metric)).toEqual(new Set(['6 mm', '10 mm']));
  });

  it('says what it typed: a value in braces, or in the words of the scene', () => {
    for (const { text, typed, want, output, found } of many(one)) {
      const legB = typed.legB === '5 mm' ? 'five of them' : '{8 mm}';
      const [first, second] = text.startsWith('Legs')
        ? [`{${typed.legA}}`, legB]
        : [legB, `{${typed.legA}}`];
      expect(text).toMatch(text.startsWith('Legs') ? /^Legs of / : /^One leg is /);
      expect(text).toContain(
        `${first}${text.startsWith('Legs') ? ' and ' : ', the other '}${second}.`,
      );
      expect(output).toBe(calculation.outputs[want as 'throat']);
      const inch = { '1/4 in': 0.25, '3/8 in': 0.375 }[String(typed.legA)] ?? Number.NaN;
      const other = Number.parseFloat(String(typed.legB)) / 25.4;
      // The height of a right triangle on its longest side, and its area.
      const right = { throat: (inch * other) / Math.hypot(inch, other), area: (inch * other) / 2 };
      expect(found.results[want]).toBeCloseTo(right[want as 'throat'], 9);
    }
  });

  it('draws again until the calculation has an answer, and gives up where none can be had', () => {
    const rare = { ...legs, values: { legA: ['none', '1/4 in'], legB: ['1/4 in'] } };
    for (const { typed } of many({ ...one, scenes: [rare] })) expect(typed.legA).toBe('1/4 in');
    const never = { ...legs, values: { legA: ['none'], legB: ['1/4 in'] } };
    expect(() => makeProblem({ ...one, scenes: [never] }, 3, 4, 'us')).toThrow(
      'no problem can be made for legs, set 3, number 4',
    );
  });

  it('asks for no measure of nothing, but for a count of none', async () => {
    const shares = await loadCalculation('pipe-position-shares');
    const pipe: Scene = {
      told: ['A pipe at {pipeInclination}.'],
      asked: { vertical: 'How much is vertical?' },
      values: { pipeInclination: ['90 deg', '0 deg'] },
    };
    const drawn = many({ id: 'pipe', calculation: shares, scenes: [pipe] });
    expect(new Set(drawn.map(({ typed }) => typed.pipeInclination))).toEqual(new Set(['0 deg']));
  });

  it('is another problem in another set and in another place', () => {
    const texts = (place: number) =>
      many(one)
        .map(({ text }) => text)
        .concat(makeProblem(one, 1, place, 'us').text);
    expect(texts(0)).toEqual(texts(0));
    expect(
      new Set(Array.from({ length: 40 }, (_, place) => texts(place).at(-1))).size,
    ).toBeGreaterThan(5);
  });
});

describe('loadScenes', () => {
  it('hands each scene the shop’s lists for what it names, under its own values', async () => {
    const { scenes, id } = await loadPracticed('travel-speed');
    expect(id).toBe('travel-speed');
    expect(canBePracticed('travel-speed')).toBe(true);
    for (const { told, values } of scenes)
      for (const name of told.flatMap((text) => text.match(/(?<=\{)[a-z]\w*(?=\})/gi) ?? []))
        expect(values).toHaveProperty([name]);
    for (const { values } of scenes) expect(values).not.toHaveProperty('clockAngle');
  });

  it('has none of what is not practiced', async () => {
    expect(canBePracticed('no-such-thing')).toBe(false);
    expect(new Set(practiced).size).toBe(practiced.length);
    await expect(loadScenes('no-such-thing')).rejects.toThrow(RangeError);
  });
});
