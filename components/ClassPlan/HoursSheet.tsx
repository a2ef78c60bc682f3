import type { ClassNeeds } from '../../lib/class/class-needs.ts';
import { verdict } from '../../lib/class/verdict.ts';
import { durationText, wallClock } from '../../lib/text/clock-text.ts';

/** Demand printed against supply: booths, bench, and when the last arc goes out. */
export default function HoursSheet({ needs }: { needs: ClassNeeds }) {
  const { supply, demand, preparation, grading } = needs;
  const evenings = supply.weeks.reduce((sum, count) => sum + count, 0);
  const said = verdict(needs);
  const noArc = supply.arcHours <= 0;
  return (
    <dl class="plan-figures">
      <div class={said.overfull ? 'plan-over' : undefined}>
        <dt>Booth hours of one learner</dt>
        <dd>
          {durationText(demand.each)} asked, {durationText(supply.each)} there
        </dd>
        <dd class="plan-said">{said.booths}</dd>
      </div>
      <div>
        <dt>Arcs in an evening</dt>
        <dd>
          {noArc
            ? 'none'
            : `${wallClock(supply.firstArc)} to ${wallClock(supply.lastArc)}, ${durationText(supply.arcHours)}`}
        </dd>
        <dd class="plan-said">
          {noArc && 'These times leave nothing between the first arc and the last. '}
          The last arc goes out before the fire watch, and somebody stays for it.
          {supply.lostToWatch > 0 &&
            ` The lock-up takes ${durationText(supply.lostToWatch)} of arcs from every evening.`}
        </dd>
      </div>
      <div class={preparation.hours > preparation.capacity + 1e-9 ? 'plan-over' : undefined}>
        <dt>Beveling at the bench</dt>
        <dd>
          {durationText(preparation.hours)} asked, {durationText(preparation.capacity)} there
        </dd>
        <dd class="plan-said">
          {said.bench} {preparation.grooves} groove coupons and {preparation.joints} pipe joints.{' '}
          {supply.waiting > 0
            ? `Learners without a booth have ${durationText(supply.waiting)}; exercises beside the booths take ${durationText(preparation.sideHours)} of them.`
            : `Every learner has a booth, so nobody is free to bevel while others weld.`}
          {preparation.sideHours > supply.waiting &&
            ' They ask for more than that: some of it comes off the booth hours.'}
        </dd>
      </div>
      {grading.graded > 0 && (
        <div>
          <dt>Grading</dt>
          <dd>
            {durationText(grading.from)} to {durationText(grading.to)} in the term,{' '}
            {durationText(grading.from / evenings)} to {durationText(grading.to / evenings)} an
            evening
          </dd>
          <dd class="plan-said">
            Five to eight minutes a coupon, for {grading.graded} coupons: the last of each learner
            and exercise, and its repeats. Learners judge the other{' '}
            {grading.attempts - grading.graded} themselves first.
          </dd>
        </div>
      )}
    </dl>
  );
}
