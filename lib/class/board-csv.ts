/** The learners of a board as a table, out and in. */
import { type Cell, readCsv, writeCsv } from '../csv.ts';
import { type ClassBoard, newLearner } from '../files/class-board.ts';
import { readDay } from '../text/day-text.ts';
import { quoted } from '../text/quoted.ts';
import type { BoardExercise, Standing } from './standing.ts';

/** Columns that come in again; the others are computed. */
const columns = ['learner', 'at', 'caught up min', 'tested', 'last welded'] as const;

/**
 * A row for each learner, with what the board has worked out beside what was typed. Days are
 * written `2026-03-02`.
 */
export function boardCsv(standings: readonly Standing[]): string {
  return writeCsv(
    [...columns, 'gate', 'next', 'waiting', 'repeats', 'to catch up min', 'good until'],
    standings.map(({ learner, next, waiting, repeats, catchUp, alive }): Cell[] => [
      learner.learner,
      learner.at,
      learner.caughtUp,
      learner.tested,
      learner.lastWelded,
      learner.gate ?? '',
      next?.slug,
      waiting.length,
      repeats,
      catchUp,
      alive?.until,
    ]),
  );
}

/**
 * Learners from a table with those columns: known ones are changed, new ones added, nobody is taken
 * off. A row with a slip is left out and told.
 */
export function readBoardCsv(
  board: ClassBoard,
  exercises: readonly BoardExercise[],
  text: string,
): { board: ClassBoard; read: number; problems: string[] } {
  const table = readCsv(text, columns, ['gate']);
  if (!table.ok) return { board, read: 0, problems: [table.problem] };
  const learners = new Map(board.learners.map((it) => [it.learner, it]));
  const problems: string[] = [];
  let read = 0;
  for (const [at, row] of table.rows.entries()) {
    const name = row.learner.slice(0, 200);
    const slip = (what: string) => problems.push(`Row ${at + 1}: ${what}`);
    const tested = dayOf(row.tested);
    const lastWelded = dayOf(row['last welded']);
    const gate = row.gate === undefined ? undefined : dayOf(row.gate);
    const caughtUp = Number(row['caught up min'].replace(',', '.'));
    if (name === '') slip('no learner is named');
    else if (row.at !== '' && !exercises.some(({ slug }) => slug === row.at))
      slip(`there is no exercise ${quoted(row.at, 40)}`);
    else if ('problem' in tested) slip(`day of the test ${tested.problem}`);
    else if ('problem' in lastWelded) slip(`day of the last weld ${lastWelded.problem}`);
    else if (gate && 'problem' in gate) slip(`day of the safety gate ${gate.problem}`);
    else if (!(caughtUp >= 0 && caughtUp <= 100_000))
      slip(`${quoted(row['caught up min'], 40)} is no number of minutes`);
    else {
      read += 1;
      const known = learners.get(name) ?? newLearner(name);
      learners.set(name, {
        ...known,
        at: row.at,
        caughtUp,
        tested: tested.day,
        lastWelded: lastWelded.day,
        ...(gate && { gate: gate.day }),
      });
    }
  }
  return { board: { ...board, learners: [...learners.values()] }, read, problems };
}

const dayOf = (text: string): { day: string } | { problem: string } =>
  text === '' ? { day: '' } : readDay(text);
