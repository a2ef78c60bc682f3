import type { BoothRead } from '../../lib/booth/booth-link.ts';
import { shownBoothNumber } from '../../lib/booth/booth-number.ts';
import { type BoothWordInLink, boothQuantity } from '../../lib/booth/booth-quantities.ts';
import Said from '../Reasons/Said.tsx';
import Both from '../Units/Both.tsx';

/** A block of the page that follows the booth's numbers. */
export interface Place {
  kind: 'example' | 'calculator';
  title: string;
  /** Of its heading. */
  id: string;
  /** It stays as it is. */
  kept?: boolean;
}

interface Props {
  read: BoothRead;
  /** This page without the booth's numbers. */
  standard: string;
  /** Undefined while the examples are still being worked. */
  places: readonly Place[] | undefined;
}

/** Whose numbers the page now shows, where they are used, and the way back. */
export default function BoothBanner({ read: { booth, problems }, standard, places }: Props) {
  const { place, group, note, numbers } = booth;
  const words = Object.entries(numbers) as [BoothWordInLink, string][];
  const whose = [place && `Booth ${place}`, group && `group ${group}`].filter(Boolean).join(', ');
  return (
    <aside class="plate wide" aria-label="Numbers of a booth" ref={drawn}>
      <p class="screen-only">
        <b>Before the phone:</b> electrode out of the holder, hot side marked, hood and glasses on,
        out behind the curtain.
      </p>
      <p>
        <b>{whose === '' ? 'Numbers of your booth' : `Numbers of ${lower(whose)}`}</b>
        {words.length === 0 && ': the link sets none, so the standard ones stand.'}
      </p>
      {words.length > 0 && (
        <p>
          {words.map(([word, text], index) => (
            <span key={word}>
              {index > 0 && ' · '}
              {boothQuantity(word).label}{' '}
              <b>
                <Both {...shownBoothNumber(word, text)} />
              </b>
            </span>
          ))}
        </p>
      )}
      {note && <p>From your instructor: {note}</p>}
      {problems.map((problem) => (
        <p key={problem} class="problem">
          <Said text={problem} />. The rest of the link was taken over.
        </p>
      ))}
      {words.length > 0 && <Where places={places} />}
      <p class="quiet">
        The sentences of the text, its tables and its figures keep the standard numbers, and so do
        practice problems. The label on the electrode box and your instructor rule over a link.
      </p>
      <p class="screen-only">
        <a href={standard}>Back to the standard numbers</a>
      </p>
    </aside>
  );
}

function Where({ places }: { places: readonly Place[] | undefined }) {
  if (!places) return <p role="status">Working the examples again …</p>;
  const used = places.filter(({ kept }) => !kept);
  const kept = places.filter((place) => place.kept);
  return (
    <p role="status">
      {used.length === 0
        ? 'No example or calculator of this page asks for them.'
        : list('Used in', used)}{' '}
      {used.length > 0 && kept.length > 0 && list('Standard as before:', kept)}
    </p>
  );
}

const list = (before: string, places: readonly Place[]) => (
  <>
    {before}{' '}
    {places.map(({ kind, title, id }, index) => (
      <span key={id}>
        {index > 0 && ', '}
        the {kind} <a href={`#${id}`}>{title}</a>
      </span>
    ))}
    .
  </>
);

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/** Set here and not in the style sheet, which every lesson carries and hardly any needs this for. */
function drawn(box: HTMLElement | null): void {
  if (!box) return;
  for (const [name, value] of Object.entries({
    display: 'block',
    padding: '0.8em 1em 0',
    'border-inline-start-width': '10px',
    'border-inline-start-color': 'var(--accent)',
  }))
    box.style.setProperty(name, value);
}
