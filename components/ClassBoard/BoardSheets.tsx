import type { ComponentChildren } from 'preact';
import type { BoardExercise, Standing } from '../../lib/class/standing.ts';
import { boothRule, suggestBooths } from '../../lib/class/suggest-booths.ts';
import type { BoardBooth, ClassBoard } from '../../lib/files/class-board.ts';
import { durationText } from '../../lib/text/clock-text.ts';
import PlanTable from '../ClassPlan/PlanTable.tsx';
import Size from '../ClassPlan/Size.tsx';

interface Props {
  board: ClassBoard;
  standings: readonly Standing[];
  exercises: readonly BoardExercise[];
  /** The day the six months are counted from. */
  today: string;
  actions?: ComponentChildren;
}

/** The board read out: tonight, where everybody is, and what must not be forgotten. */
export default function BoardSheets({ board, standings, exercises, today, actions }: Props) {
  const evening = suggestBooths(standings, board.booths);
  const titles = new Map(exercises.map(({ slug, title }) => [slug, title]));
  const waiting = standings.flatMap(({ learner, waiting: coupons }) =>
    coupons.map((coupon) => ({ learner, coupon })),
  );
  const ready = standings.filter(({ readyFor }) => readyFor);
  const behind = standings.filter(({ catchUp }) => catchUp > 0);
  const ungated = standings.filter(({ mayStrike }) => !mayStrike);
  const tested = standings.filter(({ alive }) => alive);
  return (
    <>
      <section class="board-sheet" aria-labelledby="board-tonight">
        <h2 id="board-tonight">Booths tonight</h2>
        {actions}
        <p class="quiet">{boothRule}</p>
        {evening.booths.length > 0 ? (
          <PlanTable
            caption="A suggestion; you decide"
            columns={['Booth', 'Learner', 'Exercise', 'Machine']}
            rows={evening.booths.map(({ booth, standing }) => [
              booth.booth,
              standing.learner.learner,
              standing.next?.title,
              <>
                {booth.machine} up to <Size value={booth.largest} unit="in" digits={2} />
                {machineText(booth)}
              </>,
            ])}
          />
        ) : (
          <p>Nobody is to weld tonight.</p>
        )}
        {evening.beside.length > 0 && (
          <PlanTable
            caption="Beside the booths: saw, grind, gauge, etch, fit up"
            columns={['Learner', 'Exercise', 'Why']}
            rows={evening.beside.map(({ standing, why }) => [
              standing.learner.learner,
              standing.next?.title ?? '–',
              why,
            ])}
          />
        )}
        {evening.free.length > 0 && (
          <p>Free: booth {evening.free.map(({ booth }) => booth).join(', ')}.</p>
        )}
      </section>
      <section class="board-sheet" aria-labelledby="board-where">
        <h2 id="board-where">Where everybody is</h2>
        {standings.length === 0 ? (
          <p>No learner is on the board yet.</p>
        ) : (
          <PlanTable
            caption="Learners"
            columns={['Learner', 'Exercise', 'Repeats|', 'Waiting|', 'To catch up']}
            rows={standings.map(({ learner, next, repeats, waiting: coupons, catchUp }) => [
              learner.learner,
              next?.title ?? 'all passed',
              repeats,
              coupons.length,
              catchUp > 0 ? durationText(catchUp / 60) : '–',
            ])}
          />
        )}
      </section>
      <section class="board-sheet" aria-labelledby="board-mind">
        <h2 id="board-mind">Not to forget</h2>
        {ungated.length > 0 && (
          <p>
            <b>No arc before the safety gate is signed:</b>{' '}
            {ungated.map(({ learner }) => learner.learner).join(', ')}.
          </p>
        )}
        {waiting.length > 0 ? (
          <PlanTable
            caption={`${waiting.length} to grade, ${5 * waiting.length} to ${8 * waiting.length} minutes`}
            columns={['Learner', 'Exercise', 'Handed in']}
            rows={waiting.map(({ learner, coupon }) => [
              learner.learner,
              titles.get(coupon.exercise) ?? coupon.exercise,
              coupon.on,
            ])}
          />
        ) : (
          <p>Nothing waits for a grade.</p>
        )}
        {behind.length > 0 && (
          <PlanTable
            caption="Away, and not caught up"
            columns={['Learner', 'Days', 'To catch up']}
            rows={behind.map(({ learner, catchUp }) => [
              learner.learner,
              learner.absences.map(({ on }) => on).join(', '),
              durationText(catchUp / 60),
            ])}
          />
        )}
        {ready.length > 0 && (
          <PlanTable
            caption="Ready for a test"
            columns={['Learner', 'Test']}
            rows={ready.map(({ learner, readyFor }) => [learner.learner, readyFor?.title])}
          />
        )}
        {tested.length > 0 && (
          <PlanTable
            caption={`Six months, by ${board.code}, on ${today}`}
            columns={['Learner', 'Good until', 'Days|', 'What it means']}
            rows={tested
              .toSorted((a, b) => (a.alive?.daysLeft ?? 0) - (b.alive?.daysLeft ?? 0))
              .map(({ learner, alive }) => [
                learner.learner,
                alive?.until,
                alive?.daysLeft,
                lifeText(alive?.daysLeft ?? 0, alive?.late),
              ])}
          />
        )}
        <p class="quiet">
          Whether somebody may test, and whether a qualification lives, is decided by the code, the
          procedure and the person who signs. This board is a reminder.
        </p>
      </section>
    </>
  );
}

function machineText({ most, current, setBy, offset }: BoardBooth): string {
  const parts = [
    most !== undefined && `at most ${most} A`,
    current,
    setBy && `set by ${setBy}`,
    offset !== undefined && `meter less dial ${offset > 0 ? '+' : ''}${offset} A`.replace('-', '−'),
  ].filter(Boolean);
  return parts.length > 0 ? `, ${parts.join(', ')}` : '';
}

function lifeText(daysLeft: number, late: string | undefined): string {
  if (late) return `ended; the weld of ${late} came too late and revives nothing`;
  if (daysLeft < 0) return 'ended';
  if (daysLeft <= 45) return 'runs out soon: have a weld seen and signed';
  return 'alive';
}
