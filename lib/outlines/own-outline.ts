/** A reviewer's own outline, read from a table, mapped to lessons, and written back. */
import { readCsv, writeCsv } from '../csv.ts';

export interface OwnTopic {
  /** The reviewer's own number or sign; may be empty. */
  code: string;
  topic: string;
  /** Lessons that serve it, by id. */
  lessons: readonly string[];
}

export type OutlineRead =
  | { ok: true; topics: OwnTopic[]; notes: string[] }
  | { ok: false; problem: string };

const most = 500;

/**
 * Reads the columns topic, code and lessons; the last two may be missing. A lesson that the course
 * does not have is left out and named in a note.
 * @param known ids of the lessons
 */
export function readOwnOutline(text: string, known: readonly string[]): OutlineRead {
  const read = readCsv(text, ['topic'], ['code', 'lessons']);
  if (!read.ok) return read;
  if (read.rows.length === 0)
    return { ok: false, problem: 'This table has a first line and no topics below it' };
  if (read.rows.length > most)
    return {
      ok: false,
      problem: `This table has ${read.rows.length} topics; the page takes ${most}`,
    };
  const notes: string[] = [];
  const topics = read.rows.flatMap(({ topic, code = '', lessons = '' }, index): OwnTopic[] => {
    if (topic === '') {
      notes.push(`Row ${index + 2} has no topic and was left out`);
      return [];
    }
    const named = lessons.split(/[;,]/).map((one) => one.trim());
    const wanted = [...new Set(named.filter(Boolean))];
    const strange = wanted.filter((one) => !known.includes(one));
    if (strange.length > 0)
      notes.push(`Row ${index + 2} names no lesson of this course: ${strange.join(', ')}`);
    return [{ code, topic, lessons: wanted.filter((one) => known.includes(one)) }];
  });
  if (topics.length === 0) return { ok: false, problem: 'No row of this table has a topic' };
  return { ok: true, topics, notes };
}

/** What `readOwnOutline` reads again. */
export const ownOutlineAsCsv = (topics: readonly OwnTopic[]): string =>
  writeCsv(
    ['code', 'topic', 'lessons'],
    topics.map(({ code, topic, lessons }) => [code, topic, lessons.join('; ')]),
  );

export interface Compared {
  served: number;
  open: OwnTopic[];
  /** Lessons that no topic asks for, by id. */
  spare: string[];
}

/** @param lessons ids of all lessons of the course */
export const compareOutline = (
  topics: readonly OwnTopic[],
  lessons: readonly string[],
): Compared => ({
  served: topics.filter((one) => one.lessons.length > 0).length,
  open: topics.filter((one) => one.lessons.length === 0),
  spare: lessons.filter((id) => !topics.some((one) => one.lessons.includes(id))),
});
