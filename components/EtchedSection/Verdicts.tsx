import type { SectionItem, SectionVerdict } from '../../lib/section/section-item.ts';
import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';
import CitationNote from '../Reasons/CitationNote.tsx';

const signs: Readonly<Record<SectionVerdict, string>> = {
  pass: '✓ ',
  fail: '✕ ',
  'too close to tell': '? ',
  'not judged': '',
  'does not apply': '',
};

/** Item by item: what is asked, what was read, and where the limit comes from. */
export default function Verdicts({
  items,
  system,
}: {
  items: readonly SectionItem[];
  system: System;
}) {
  return (
    <ul class="columns section-verdicts">
      {items.map(({ item, verdict, reading, limit, cite }) => (
        <li key={item}>
          <p>
            <strong>{item}</strong>
          </p>
          <p>
            <b>Verdict</b>{' '}
            <span class="verdict">
              <span aria-hidden="true">{signs[verdict]}</span>
              {verdict}
            </span>
            {reading !== '–' && `: ${speak(reading, system)}`}
          </p>
          <p>
            <b>Limit</b> {speak(limit, system)}. <CitationNote {...cite} />
          </p>
        </li>
      ))}
    </ul>
  );
}
