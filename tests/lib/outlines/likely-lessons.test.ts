import { expect, it } from 'vitest';
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
