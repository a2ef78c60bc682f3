import { answer } from '../answer.ts';
import type { Input, Procedure } from '../calculation.ts';
import type { System } from '../units.ts';

export type FieldRead = { value: number | string } | { problem: string };

/** One field through the same edge as every calculation; a bare number stands in the reader's unit. */
export function readField(input: Input, text: string, system: System = 'us'): FieldRead {
  const one: Procedure = {
    kind: 'procedure',
    title: '',
    summary: '',
    cite: [],
    inputs: { field: input },
    outputs: {},
    compute: () => ({ because: [] }),
  };
  const answered = answer(one, { field: text }, system);
  if (!answered.ok) return { problem: answered.problems.map(({ text }) => text).join('. ') };
  return { value: answered.values.field as number | string };
}
