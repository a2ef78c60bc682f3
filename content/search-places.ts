/** Everything that a search may lead to: sections of lessons, words, faults, calculators and the rest. */
import { render } from 'astro:content';
import { calculationIds } from '../components/Calculator/calculation-ids.ts';
import { loadKnown } from '../components/Calculator/load-known.ts';
import { faultSigns } from '../components/Faults/fault-signs.ts';
import { allPages } from '../components/Page/menu.ts';
import { to } from '../components/Page/to.ts';
import type { Place } from '../components/Search/index-options.ts';
import { sourceAnchor } from '../components/SourceList/source-anchor.ts';
import { termId } from '../components/Term/term-id.ts';
import { type SourceId, sourceOf, sources } from '../lib/sources.ts';
import { speak } from '../lib/text/say.ts';
import { exercisesInOrder, type LessonEntry, lessonsInOrder } from './course.ts';
import { glossary } from './glossary.ts';
import { plainText } from './plain-text.ts';

type Told = Omit<Place, 'id'>;
const say = (text: string) => speak(text, 'us');

/** All places, numbered. */
export async function searchPlaces(): Promise<Place[]> {
  const lessons = await lessonsInOrder();
  const told: Told[] = [
    ...allPages.flatMap(({ items }) => items.map(pagePlace)),
    ...(await Promise.all(lessons.map(lessonPlaces))).flat(),
    ...glossary(lessons).map(({ term, definition }) => ({
      kind: 'word',
      title: term,
      heading: '',
      path: `/glossary/#${termId(term)}`,
      // Also found when it is written as one word.
      text: `${say(definition)} ${term.replaceAll(' ', '')}`,
    })),
    ...lessons.flatMap(({ data }) => data.faults.map(faultPlace)),
    ...(await Promise.all(calculationIds.map(calculatorPlace))),
    ...(await exercisesInOrder()).map(({ id, data }) => ({
      kind: 'exercise',
      title: data.title,
      heading: '',
      path: `/exercises/${id}/`,
      text: [say(data.summary), data.procedure?.position, ...data.position, ...data.joint].join(
        ' ',
      ),
    })),
    ...(Object.keys(sources) as SourceId[]).map(sourcePlace),
  ];
  return told.map((place, id) => ({ id, ...place, path: to(place.path) }));
}

const pagePlace = ({ path, name }: { path: string; name: string }): Told => ({
  kind: 'page',
  title: name,
  heading: '',
  path,
  text: '',
});

/** One place for the lesson itself, and one for each heading with what stands below it. */
async function lessonPlaces(lesson: LessonEntry): Promise<Told[]> {
  const { title, summary } = lesson.data;
  const path = `/lessons/${lesson.id}/`;
  const { headings } = await render(lesson);
  const parts = (lesson.body ?? '').split(/^#{2,4} .*$/m).slice(1);
  if (parts.length !== headings.length)
    throw new Error(
      `${path}: ${headings.length} headings, but ${parts.length} parts of text below them`,
    );
  const skills = Object.values(lesson.data.introduces.skills).join('. ');
  const position = lesson.data.position.join(' ');
  return [
    {
      kind: 'lesson',
      title,
      heading: '',
      path,
      text: `${say(summary)} ${position} ${say(skills)}`,
    },
    ...headings.map(({ slug, text }, index) => ({
      kind: 'lesson',
      title,
      heading: text,
      path: `${path}#${slug}`,
      text: plainText(parts[index] ?? ''),
    })),
  ];
}

const faultPlace = ({ see, sign, cause, change }: LessonEntry['data']['faults'][number]): Told => ({
  kind: 'fault',
  title: say(see),
  heading: faultSigns[sign],
  path: `/faults/#${sign}`,
  text: `${sign} ${say(cause)} ${say(change)}`,
});

async function calculatorPlace(id: string): Promise<Told> {
  const { title, summary, inputs } = await loadKnown(id, '/search/');
  const labels = Object.values<{ label: string }>(inputs).map(({ label }) => label);
  return {
    kind: 'calculator',
    title,
    heading: '',
    path: `/calculators/${id}/`,
    text: [id.replaceAll('-', ' '), say(summary), ...labels].join(' '),
  };
}

function sourcePlace(id: SourceId): Told {
  const { title, publisher, is } = sourceOf(id);
  return {
    kind: 'source',
    title,
    heading: publisher,
    path: `/sources/#${sourceAnchor(id)}`,
    text: is,
  };
}
