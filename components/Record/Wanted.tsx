import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';

interface Props {
  sentences: readonly string[];
  system: System;
}

/** What is still wanted, one line each; nothing where nothing is. */
export default function Wanted({ sentences, system }: Props) {
  if (sentences.length === 0) return null;
  return (
    <ul class="record-wanted quiet">
      {sentences.map((text) => (
        <li key={text}>{speak(text, system)}</li>
      ))}
    </ul>
  );
}
