import { expect, it } from 'vitest';
import type { LessonEntry } from '../../content/course.ts';
import { glossary } from '../../content/glossary.ts';

const lesson = (id: string, terms: Record<string, string>, body: string) =>
  ({ id, body, data: { introduces: { terms } } }) as unknown as LessonEntry;

const entries = glossary([
  lesson('one', { 'weld pool': 'A lake.', arc: 'A light.' }, 'The <Term is="arc" /> again.'),
  lesson(
    'two',
    { crater: 'A hole.' },
    'Fill the <Term is="weld pool">puddle</Term>, the <Term is="crater" />.',
  ),
  lesson('three', {}, 'The <Term\n  is="weld pool" /> sags.'),
]);

it('sorts by the alphabet, whatever the lesson', () => {
  expect(entries.map(({ term }) => term)).toEqual(['arc', 'crater', 'weld pool']);
});

it('names the lesson that defines a term, and the others that use it', () => {
  const [, , pool] = entries;
  expect(pool?.taughtIn.id).toBe('one');
  expect(pool?.alsoIn.map(({ id }) => id)).toEqual(['two', 'three']);
});
