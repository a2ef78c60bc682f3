import type { ComponentType } from 'preact';
import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import { answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import type { System } from '../../lib/units.ts';
import DrawnBoth, { type DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Reasons from '../Reasons/Reasons.tsx';
import AddressNote from './AddressNote.tsx';
import { addressOf, readAddress, writeAddress } from './address.ts';
import { currentSystem, fillLines, takeOverTyped } from './already-there.ts';
import CopyLink from './CopyLink.tsx';
import { type Entries, type Entry, typedFor } from './entries.ts';
import Field from './Field.tsx';
import Results from './Results.tsx';

export interface Props {
  /** Prefix of field ids and of the address: the calculation's id, unless a page has two. */
  name: string;
  calculation: Calculation;
  /** What the page gives; the rest opens with the example. */
  given: Typed;
  /** MathML by output, made at build. Hydration keeps what is there. */
  lines?: Record<string, string>;
  Drawing?: ComponentType<DrawingProps> | undefined;
}

/**
 * The form of a calculation. It hydrates with exactly what was rendered at build; what the address
 * holds and what was typed meanwhile is taken over right after.
 */
export default function CalculatorForm({ name, calculation, given, lines, Drawing }: Props) {
  const inputs: Record<string, Input> = calculation.inputs;
  const [entries, setEntries] = useState<Entries>({});
  const [system, setSystem] = useState<System>('us');
  const [strays, setStrays] = useState<string[]>([]);
  const form = useRef<HTMLFormElement>(null);

  const by = useMemo(
    () => ({
      us: answer(calculation, typedFor(inputs, entries, given, 'us')),
      metric: answer(calculation, typedFor(inputs, entries, given, 'metric')),
    }),
    [entries],
  );
  const current = by[system];
  const problems = current.ok ? [] : current.problems;

  useLayoutEffect(() => {
    const chosen = currentSystem();
    const typed = takeOverTyped(form.current, name, inputs, chosen);
    const address = readAddress(name, inputs);
    setSystem(chosen);
    setStrays(address.strays);
    setEntries({ ...address.entries, ...typed });
    const follow = () => setSystem(currentSystem());
    addEventListener('units', follow);
    return () => removeEventListener('units', follow);
  }, []);
  useLayoutEffect(() => fillLines(form.current, calculation, by), [by]);

  const take = (next: Entries) => {
    setEntries(next);
    writeAddress(name, inputs, next);
  };
  const change = (field: string, entry: Entry | undefined) => {
    const { [field]: _, ...rest } = entries;
    take(entry === undefined ? rest : { ...rest, [field]: entry });
  };

  return (
    <form class="calculator" ref={form} noValidate onSubmit={(event) => event.preventDefault()}>
      {Object.entries(inputs).map(([field, input]) => (
        <Field
          key={field}
          id={`${name}-${field}`}
          input={input}
          entry={entries[field]}
          given={given[field]}
          system={system}
          problems={problems.filter((problem) => problem.field.split('.')[0] === field)}
          onEntry={(entry) => change(field, entry)}
        />
      ))}
      <AddressNote strays={strays} />
      <Results
        id={name}
        calculation={calculation}
        by={by}
        system={system}
        inputs={Object.keys(inputs).map((field) => `${name}-${field}`)}
      />
      {calculation.kind === 'formula' && (
        <div class="worked" hidden={!current.ok}>
          {Object.keys(calculation.outputs).map((output) => (
            <div
              key={output}
              data-line={output}
              dangerouslySetInnerHTML={{ __html: lines?.[output] ?? '' }}
            />
          ))}
        </div>
      )}
      {Drawing && <DrawnBoth Drawing={Drawing} by={by} />}
      <Reasons by={by} />
      <p class="calculator-actions">
        <CopyLink address={() => addressOf(name, inputs, entries)} />
        <button
          type="button"
          onClick={() => {
            setStrays([]);
            take({});
          }}
        >
          Back to the example
        </button>
      </p>
    </form>
  );
}
