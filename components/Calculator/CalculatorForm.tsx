import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { ComponentType } from 'preact';
import { type Answered, answer, type Typed } from '../../lib/answer.ts';
import type { Calculation, Input } from '../../lib/calculation.ts';
import { slotTexts } from '../../lib/slot-texts.ts';
import type { System } from '../../lib/units.ts';
import Reasons from '../Reasons/Reasons.tsx';
import AddressNote from './AddressNote.tsx';
import { currentSystem, fillSlots, takeOverTyped } from './already-there.ts';
import { type Entries, type Entry, typedFor } from './entries.ts';
import Field from './Field.tsx';
import Results from './Results.tsx';
import { addressOf, readAddress, writeAddress } from './address.ts';

export interface DrawingProps {
  given: Record<string, unknown>;
  results: Record<string, unknown>;
  system: System;
}

export interface Props {
  id: string;
  /** Prefix of field ids and of the address; the id unless a page has two of a kind. */
  name: string;
  calculation: Calculation;
  given: Typed;
  /** MathML for each output of a formula, made at build; hydration keeps what is there. */
  lines?: Record<string, string>;
  Drawing?: ComponentType<DrawingProps> | undefined;
}

export default function CalculatorForm({ id, name, calculation, given, lines, Drawing }: Props) {
  const { inputs } = calculation;
  const [entries, setEntries] = useState<Entries>({});
  const [system, setSystem] = useState<System>('us');
  const [strays, setStrays] = useState<string[]>([]);
  const root = useRef<HTMLFormElement>(null);

  const by = useMemo(() => {
    const us = answer(calculation, typedFor(inputs, entries, given, 'us'));
    const metric = answer(calculation, typedFor(inputs, entries, given, 'metric'));
    return { us, metric };
  }, [entries]);
  const current = by[system];
  const problems = current.ok ? [] : current.problems;

  useLayoutEffect(() => {
    const chosen = currentSystem();
    const fromAddress = readAddress(name, inputs);
    setSystem(chosen);
    setStrays(fromAddress.strays);
    setEntries({ ...fromAddress.entries, ...takeOverTyped(root.current, inputs, chosen) });
    const follow = () => setSystem(currentSystem());
    addEventListener('units', follow);
    return () => removeEventListener('units', follow);
  }, []);
  useLayoutEffect(() => fillLines(root.current, calculation, by), [by]);

  const change = (field: string, entry: Entry | undefined) => {
    const { [field]: _, ...rest } = entries;
    const next = entry === undefined ? rest : { ...rest, [field]: entry };
    setEntries(next);
    writeAddress(name, inputs, next);
  };
  const restart = () => {
    setEntries({});
    setStrays([]);
    writeAddress(name, inputs, {});
  };

  return (
    <form
      class="calculator"
      ref={root}
      noValidate
      onSubmit={(event) => event.preventDefault()}
    >
      {Object.entries<Input>(inputs).map(([field, input]) => (
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
      <Results id={name} calculation={calculation} by={by} system={system} inputs={Object.keys(inputs).map((field) => `${name}-${field}`)} />
      {calculation.kind === 'formula' && (
        <div class="worked" hidden={!current.ok}>
          {Object.keys(calculation.outputs).map((output) => (
            // biome-ignore lint/security/noDangerouslySetInnerHtml: made at build from our own formula
            <div key={output} data-line={output} dangerouslySetInnerHTML={{ __html: lines?.[output] ?? '' }} />
          ))}
        </div>
      )}
      {Drawing && current.ok && (
        <figure class="drawing">
          <Drawing given={givenNumbers(current, calculation)} results={current.results} system={system} />
        </figure>
      )}
      <Reasons by={by} />
      <p class="calculator-actions">
        <button type="button" onClick={() => copy(addressOf(id, name, inputs, entries))}>Copy link to these numbers</button>
        <button type="button" onClick={restart}>Back to the example</button>
      </p>
    </form>
  );
}
