import { type Counted, logClock } from '../../lib/electrode-log/holder-at.ts';
import { recentTrace } from '../../lib/electrode-log/recent-trace.ts';
import { clockWords } from '../../lib/electrode-log/when-text.ts';
import { exposureTrace } from '../../lib/exposure/exposure-trace.ts';
import { type Holder, instantOf } from '../../lib/files/electrode-log.ts';
import ExposureLine from '../drawings/electrode-exposure.tsx';

interface Props {
  holder: Holder;
  found: Counted;
  at: number;
  zone: string;
}

/** As much of a log as can be read when it is drawn, in hours. */
const shown = 24;

/** The last day of a holder's log as a line: hours on the clock over the time on the wall. */
export default function TimeLine({ holder, found, at, zone }: Props) {
  const rows = holder.rows.filter((row) => instantOf(row.at) <= at);
  if (rows.length === 0) return null;
  const clock = logClock(rows, zone, at);
  const from = clock.hours(at) - shown;
  // Where nothing happened for a day but that the clock ran on, there is nothing to see.
  if (found.state === 'out too long' && clock.events.every((event) => event.at < from)) return null;
  const first = clock.events.findIndex((event) => event.at >= from);
  const whole = exposureTrace(found.limit, clock.events, clock.hours(at));
  return (
    <figure class="drawing">
      <ExposureLine
        given={{ events: first < 0 ? [] : clock.events.slice(first) }}
        results={{ trace: from > 0 ? recentTrace(whole, from) : whole, state: found.state }}
        firstRow={Math.max(0, first)}
        tell={(hours) => clockWords(clock.instant(hours), zone)}
      />
    </figure>
  );
}
