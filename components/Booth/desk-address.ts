/** The state of the booth page in its own address, so that a whole rotation is a bookmark. */
import { type Booth, boothParameters, queryOf, readBooth } from '../../lib/booth/booth-link.ts';
import type { BoothWordInLink } from '../../lib/booth/booth-quantities.ts';

/** A task and what one booth, or several with the same numbers, use for it. */
export interface Task {
  /** `exercise/fillet-2f`, `lesson/fillet-2f`, or nothing yet. */
  pick: string;
  /** As typed: `7-10, 12`. */
  places: string;
  group: string;
  note: string;
  units: '' | 'us' | 'metric';
  /** As typed, by word of the link. */
  typed: Partial<Record<BoothWordInLink, string>>;
}

export const emptyTask: Task = {
  pick: '',
  places: '',
  group: '',
  note: '',
  units: '',
  typed: {},
};

/** More sheets at once than a class has booths. */
export const mostTasks = 30;

/** The address of the page with the task at hand and those in the rotation. */
export function deskQuery(task: Task, rotation: readonly string[]): string {
  const also = rotation.map((one): [string, string] => ['also', one]);
  return [taskQuery(task), queryOf(also)].filter(Boolean).join('&');
}

/** A task as text. Numbers stand as typed, so that half of one is not lost while it is typed. */
export function taskQuery({ pick, places, group, note, units, typed }: Task): string {
  const [kind, slug = ''] = pick.split('/');
  const booth: Booth = { numbers: typed };
  if (kind === 'exercise') booth.exercise = slug;
  if (group) booth.group = group;
  if (note) booth.note = note;
  if (units) booth.units = units;
  const pairs = boothParameters(booth);
  if (kind === 'lesson') pairs.unshift(['lesson', slug]);
  if (places) pairs.push(['booths', places]);
  return queryOf(pairs);
}

/** Reads `taskQuery`, and the link of a booth. */
export function readTask(query: string): { task: Task; problems: string[] } {
  const parameters = new URLSearchParams(query);
  const { booth, problems } = readBooth(parameters);
  const exercise = booth.exercise ?? parameters.get('exercise') ?? '';
  const lesson = parameters.get('lesson') ?? '';
  return {
    task: {
      pick: exercise ? `exercise/${exercise}` : lesson ? `lesson/${lesson}` : '',
      places: (parameters.get('booths') ?? booth.place ?? '').slice(0, 200),
      group: booth.group ?? '',
      note: booth.note ?? '',
      units: parameters.has('booth.v') ? (booth.units ?? '') : '',
      typed: booth.numbers,
    },
    problems,
  };
}

/** The tasks that an address names beside the one at hand. */
export const readRotation = (query: string): string[] =>
  new URLSearchParams(query).getAll('also').slice(0, mostTasks);
