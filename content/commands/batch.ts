/**
 * Many calculations at once: a JSON array of requests in, a JSON array of replies out, each at its
 * request's place. Numbers have full precision.
 */
import { answer } from '../../lib/answer.ts';
import type { Calculation, Output } from '../../lib/calculation.ts';
import { loadCalculation } from '../../lib/calculations.ts';
import { reported } from '../../lib/text/reported.ts';
import { speak } from '../../lib/text/say.ts';
import { asListed } from '../../lib/typed/as-listed.ts';
import { isUnit, sameKind, type Unit, unitOf } from '../../lib/units.ts';
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
    in: wished,
  } = (isRecord(request) ? request : {}) as {
    id?: unknown;
    inputs?: unknown;
    in?: unknown;
  };
  const wishes = wished ?? {};
  try {
    if (id === undefined) throw new Refused('id', 'a request needs an object with an id');
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
  const system = systemTyped(calculation, inputs);
  if (!answered.ok) {
    const problem = answered.problems[0] as Failure;
    throw new Refused(problem.field, speak(problem.text, system));
  }
  const units = unitsWished(calculation, wishes);
  const outputs = Object.fromEntries(
    Object.entries<Output>(calculation.outputs).map(([name, output]) => {
      const unit = units.get(name);
      const wish = unit ? { unit } : 'printed' in output ? { system } : {};
      return [name, reported(output, answered.results[name], wish)];
    }),
  );
  return { outputs, notes: answered.because.map(({ text }) => speak(text, system)) };
}

/** The units asked for under `in`, by output. A unit that an output cannot have is refused. */
function unitsWished(calculation: Calculation, wishes: Record<string, unknown>): Map<string, Unit> {
  const outputs: Record<string, Output> = calculation.outputs;
  const units = new Map<string, Unit>();
  for (const [name, unit] of Object.entries(wishes)) {
    const refuse = (text: string) => new Refused(`in.${name}`, text);
    const output = Object.hasOwn(outputs, name) ? outputs[name] : undefined;
    if (!output)
      throw refuse(`${name} is not an output; there are ${Object.keys(outputs).join(', ')}`);
    const own =
      'unit' in output ? output.unit : 'printed' in output ? output.printed.us : undefined;
    if (!own) throw refuse(`${name} is no quantity, so it has no unit`);
    if (typeof unit !== 'string' || !isUnit(unit)) throw refuse(`${name} has no unit “${unit}”`);
    if (!sameKind(own, unit))
      throw refuse(`${name} is in units of ${unitOf(own).kind}, which ${unit} is not`);
    units.set(name, unit);
  }
  return units;
}

function parse(json: string): unknown {
  try {
    return JSON.parse(json.replace(/^\ufeff/, ''));
  } catch {
    return undefined;
  }
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
