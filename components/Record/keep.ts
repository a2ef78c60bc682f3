import { emptyRecord, type LearnerRecord, learnerRecord } from '../../lib/files/learner-record.ts';
import { Shelf } from '../Shelf/shelf.ts';

/** Where the learner's record lies in this browser. */
export const recordShelf = () => new Shelf(learnerRecord, emptyRecord);

/** Takes the record, changes it and puts it back; a sentence when that was not possible. */
export function keep(change: (record: LearnerRecord) => LearnerRecord): string | undefined {
  const shelf = recordShelf();
  const { data, problem } = shelf.take();
  return problem ?? shelf.put(change(data));
}
