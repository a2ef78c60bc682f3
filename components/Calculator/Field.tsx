import type { Problem, TypedValue } from '../../lib/answer.ts';
import type { Input } from '../../lib/calculation.ts';
import type { System } from '../../lib/units.ts';
import ChoiceField from '../QuantityField/ChoiceField.tsx';
import QuantityField from '../QuantityField/QuantityField.tsx';
import type { Entry } from './entries.ts';
import type { ListParts } from './list-parts.ts';

export interface FieldProps {
  id: string;
  input: Input;
  /** Undefined while the reader has not touched the field. */
  entry: Entry | undefined;
  given: TypedValue | undefined;
  system: System;
  problems: readonly Problem[];
  /** HTML of the label and the help, made at build. */
  texts: { label: string; help: string } | undefined;
  onEntry(entry: Entry): void;
  lists: ListParts | undefined;
}

export default function Field(props: FieldProps) {
  const { input } = props;
  if ('list' in input)
    return props.lists ? <props.lists.RowsField {...props} input={input} /> : null;
  if ('choices' in input) return <ChoiceField {...props} input={input} />;
  return <QuantityField {...props} input={input} />;
}
