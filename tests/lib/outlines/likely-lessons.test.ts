import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import { likelyLessons } from '../../../lib/outlines/likely-lessons.ts';

const course = await readCurriculum();
const lessons = course.lessons.map(({ slug, title, skills, position, joint }) => ({
  id: slug,
  words: [title, ...position, ...joint, ...Object.values(skills)].join(' '),
}));

it.each([
  ['Storing low-hydrogen electrodes in the oven', 'low-hydrogen-electrodes'],
  ['Reading weld symbols for fillets', 'fillet-2f'],
  ['Overhead plate test', 'groove-4g'],
  ['Preheat of thick plate', 'thick-plate-and-preheat'],
])('"%s" brings up %s', (topic, lesson) => {
  expect(likelyLessons(topic, lessons)).toContain(lesson);
});

it('brings up nothing for a topic that shares no word', () => {
  expect(likelyLessons('Bookkeeping', lessons)).toEqual([]);
  expect(likelyLessons('', lessons)).toEqual([]);
});

describe('likely lessons', () => {
  const lesson = (id: string, words: string) => ({ id, words });
  const others = ['one', 'two', 'six', 'ten'].map((id) => lesson(id, `${id} saws`));

  it('are those that share a word, the rarer word first, three at most', () => {
    const some = [
      lesson('a', 'slag'),
      lesson('b', 'slag and undercut'),
      lesson('c', 'slag'),
      lesson('d', 'slag'),
      ...others,
    ];
    expect(likelyLessons('Slag, undercut', some)).toEqual(['b', 'a', 'c']);
    // The word of one lesson counts for more than two words of four.
    expect(likelyLessons('Saws, undercut', some)[0]).toBe('b');
  });

  it('see through endings, case and other signs', () => {
    const some = [lesson('a', 'Grinding, tapers; cleaned'), ...others];
    for (const topic of ['grind', 'GRINDED', 'grinds', 'taper', 'clean it', 'cleanly'])
      expect(likelyLessons(topic, some)).toEqual(['a']);
  });

  it('need more than words that stand everywhere, or that are short', () => {
    const some = [lesson('a', 'an ox by the arc'), lesson('b', 'arc'), lesson('c', 'arc')];
    expect(likelyLessons('arc', some)).toEqual([]);
    expect(likelyLessons('an ox by', [...some, ...others])).toEqual([]);
    expect(
      likelyLessons('the welding student', [lesson('a', 'the welding student'), ...others]),
    ).toEqual([]);
    expect(likelyLessons('arc', [lesson('a', 'arc'), ...others])).toEqual(['a']);
  });
});
