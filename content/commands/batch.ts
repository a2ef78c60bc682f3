/**
 * Many calculations at once: a JSON array of requests in, a JSON array of replies out, each at its
 * request's place. Numbers have full precision.
 */
import { answer } from '../../lib/answer.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { reported } from '../../lib/text/reported.ts';
import { speak } from '../../lib/text/say.ts';
import { asListed } from '../../lib/typed/as-listed.ts';
import { isUnit } from '../../lib/units.ts';
import { systemTyped } from './system-typed.ts';

interface Failure {
  field: string;
  text: string;
}

class Refused extends Error {
  readonly failure: Failure;
  constructor(field: string, text: string) {
    super(text);
    this.failure = { field, text };
  }
}

export async function batchReply(
  json: string,
  ids: readonly string[],
): Promise<{ text: string; failed: boolean }> {
  const requests = parse(json);
  if (!Array.isArray(requests)) {
    const error = { field: '', text: 'Standard input needs a JSON array of requests' };
    return { text: JSON.stringify([{ id: null, error }]), failed: true };
  }
  const replies = await Promise.all(requests.map((request) => reply(request, ids)));
  return {
    text: JSON.stringify(replies, null, 2),
    failed: replies.some((one) => 'error' in one),
  };
}

async function reply(request: unknown, ids: readonly string[]): Promise<object> {
  const {
    id,
    inputs = {},
    in: wishes = {},
  } = (isRecord(request) ? request : {}) as {
    id?: unknown;
    inputs?: unknown;
    in?: unknown;
  };
  try {
    if (typeof id !== 'string' || !ids.includes(id))
      throw new Refused('id', `there is no calculation “${String(id).slice(0, 40)}”`);
    if (!isRecord(inputs)) throw new Refused('inputs', 'inputs needs an object');
    if (!isRecord(wishes)) throw new Refused('in', 'in needs an object');
    return { id, ...(await outputsOf(id, inputs, wishes)) };
  } catch (thrown) {
    if (thrown instanceof Refused) return { id: id ?? null, error: thrown.failure };
    throw thrown;
  }
}

async function outputsOf(
  id: string,
  given: Record<string, unknown>,
  wishes: Record<string, unknown>,
) {
  const calculation = await loadCalculation(id);
  const inputs = asListed(calculation.inputs, given);
  const answered = answer(calculation, inputs);
  if (!answered.ok) {
    const problem = answered.problems[0] as Failure;
    throw new Refused(problem.field, speak(problem.text, 'us'));
  }
  const system = systemTyped(answered.given, inputs);
  for (const name of Object.keys(wishes))
    if (!Object.hasOwn(calculation.outputs, name))
      throw new Refused(
        `in.${name}`,
        `${name} is not an output; there are ${Object.keys(calculation.outputs).join(', ')}`,
      );
  const outputs = Object.fromEntries(
    Object.entries(calculation.outputs).map(([name, output]) => {
      const unit = wishes[name];
      if (unit === undefined)
        return [
          name,
          reported(output, answered.results[name], 'printed' in output ? { system } : {}),
        ];
      if (typeof unit !== 'string' || !isUnit(unit))
        throw new Refused(`in.${name}`, `${name} has no unit “${unit}”`);
      try {
        return [name, reported(output, answered.results[name], { unit })];
      } catch (thrown) {
        throw new Refused(`in.${name}`, (thrown as Error).message);
      }
    }),
  );
  return { outputs, notes: answered.because.map(({ text }) => speak(text, system)) };
}

function parse(json: string): unknown {
  try {
    return JSON.parse(json);
  } catch {
    return undefined;
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
