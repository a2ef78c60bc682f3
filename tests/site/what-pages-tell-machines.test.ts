/** schema.org on the start page and on each lesson, beside the front matter it must repeat. */
import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../content/read-curriculum.ts';
import { introducedIn } from '../../lib/curriculum/ask.ts';
import { speak } from '../../lib/text/say.ts';
import { site } from './built-site.ts';

const course = await readCurriculum();
const introduced = introducedIn(course);
const say = (text: string) => speak(text, 'us');

function saidOn(path: string): Record<string, unknown>[] {
  const page = site.pages.find((one) => one.path === site.base + path);
  const scripts = page?.document.querySelectorAll('script[type="application/ld+json"]') ?? [];
  return scripts.map(({ textContent }) => JSON.parse(textContent));
}

it('the start page is a Course that teaches one thing a unit', () => {
  const [said, ...more] = saidOn('');
  expect(more).toEqual([]);
  expect(said).toMatchObject({ '@type': 'Course', name: 'Sixteenths', inLanguage: 'en-US' });
  expect(said?.teaches).toHaveLength(course.units.length);
});

describe.each(course.lessons)('$slug', ({ slug, title, skills, needs }) => {
  it('is a LearningResource with what it teaches and what it asks for', () => {
    expect(saidOn(`lessons/${slug}/`)).toEqual([
      {
        '@context': 'https://schema.org',
        '@type': 'LearningResource',
        name: title,
        teaches: Object.values(skills).map(say),
        competencyRequired: needs.map((skill) => say(introduced.get(skill)?.skills[skill] ?? '')),
      },
    ]);
  });
});
