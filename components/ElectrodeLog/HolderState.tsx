import type { Counted, NotCounted } from '../../lib/electrode-log/holder-at.ts';
import { whenWords } from '../../lib/electrode-log/when-text.ts';
import { durationText } from '../../lib/text/clock-text.ts';
import CitationNote from '../Reasons/CitationNote.tsx';

interface Props {
  found: Counted | NotCounted;
  zone: string;
  /** The day that is spoken of: its times stand without it. */
  day: string;
}

/** The state in bold, what to do, and what may still be done until when. */
export default function HolderState({ found, zone, day }: Props) {
  if (!found.counted)
    return (
      <p class="log-state">
        <b>
          {found.row === undefined
            ? begun(found.marked ?? 'not counted')
            : `Not known: row ${found.row + 1}`}
        </b>
        {found.why}.
      </p>
    );
  const { state, next, warning, hoursOut, hoursLeft, limit, row, cite } = found;
  return (
    <>
      <p class={warning ? `log-state log-${warning}` : 'log-state'}>
        <b>{begun(state)}</b>
        {next}
      </p>
      <p>{mayStill(found, whenWords(found.backBy ?? found.readyFrom ?? 0, zone, day))}</p>
      <p class="quiet">
        {state === 'scrap' || state.startsWith('practice')
          ? ''
          : `Clock ${hoursOut > 48 ? 'more than 48 h' : durationText(hoursOut)} of ${durationText(limit)}, ${durationText(hoursLeft)} left. `}
        {row}: at most {durationText(limit)}. <CitationNote {...cite} />
      </p>
    </>
  );
}

const begun = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What may still be done, and until when or from when; `when` is that time. */
function mayStill({ state, mayRebake }: Counted, when: string): string {
  const rebake = mayRebake ? 'One rebake is left.' : 'No rebake is left.';
  switch (state) {
    case 'out, within its time':
      return `May still, until ${when}: weld, or go back to the oven, where a whole hold starts the clock afresh. ${rebake}`;
    case 'in the oven, holding':
      return `May be issued from ${when} with a fresh clock. ${rebake}`;
    case 'in the oven, ready':
      return `May be issued at any time. ${rebake}`;
    case 'out too long':
      return 'May still be rebaked, once, or used for marked practice pads.';
    case 'practice only, tagged':
      return 'May be used for practice pads, and nothing else.';
    case 'sealed':
      return 'May be opened and issued.';
    default:
      return '';
  }
}
