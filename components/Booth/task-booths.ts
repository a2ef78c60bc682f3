import { type Booth, tidyText } from '../../lib/booth/booth-link.ts';
import { readBoothNumber } from '../../lib/booth/booth-number.ts';
import { readPlaces } from '../../lib/booth/booth-places.ts';
import type { BoothWordInLink } from '../../lib/booth/booth-quantities.ts';
import type { System } from '../../lib/units.ts';
import type { Task } from './desk-address.ts';

export interface TaskRead {
  /** One for each booth; one without a number where none was typed. */
  booths: Booth[];
  /** By word of the link, and `places`. */
  problems: Partial<Record<BoothWordInLink | 'places', string>>;
}

/** What was typed, as booths: a number that cannot be read is told and left out. */
export function taskBooths(task: Task, system: System): TaskRead {
  const numbers: Booth['numbers'] = {};
  const problems: TaskRead['problems'] = {};
  for (const [word, text] of Object.entries(task.typed) as [BoothWordInLink, string][]) {
    if (text.trim() === '') continue;
    const read = readBoothNumber(word, text, system);
    if (read.ok) numbers[word] = read.text;
    else problems[word] = read.problem;
  }
  const { places, problems: misplaced } = readPlaces(task.places);
  if (misplaced.length > 0) problems.places = misplaced.join('. ');
  const [kind, slug] = task.pick.split('/');
  const [group, note] = [tidyText('group', task.group), tidyText('note', task.note)];
  const booth: Booth = {
    numbers,
    ...(kind === 'exercise' && slug && { exercise: slug }),
    ...(group && { group }),
    ...(note && { note }),
    ...(task.units && { units: task.units }),
  };
  return {
    booths: places.length === 0 ? [booth] : places.map((place) => ({ ...booth, place })),
    problems,
  };
}
