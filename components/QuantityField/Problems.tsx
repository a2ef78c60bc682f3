import type { Problem } from '../../lib/answer.ts';
import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';

/** What is wrong with a field, by the field, announced when it changes. */
export default function Problems({
  id,
  problems,
  system,
}: {
  id: string;
  problems: readonly Problem[];
  system: System;
}) {
  return (
    <p class="problem" id={id} role="status">
      {problems.map(({ text }) => `${speak(text, system)}.`).join(' ')}
    </p>
  );
}
