import type { Problem, TypedValue } from '../../lib/answer.ts';
import type { Input } from '../../lib/calculation.ts';
import type { System } from '../../lib/units.ts';
import ChoiceField from '../QuantityField/ChoiceField.tsx';
import QuantityField from '../QuantityField/QuantityField.tsx';
import RowsField from '../QuantityField/RowsField.tsx';
import type { Entry } from './entries.ts';

export interface FieldProps {
  id: string;
  input: Input;
  /** Undefined while the reader has not touched the field. */
  entry: Entry | undefined;
  given: TypedValue | undefined;
  system: System;
  problems: readonly Problem[];
  onEntry(entry: Entry | undefined): void;
}

export default function Field(props: FieldProps) {
  const { input } = props;
  if ('list' in input) return <RowsField {...props} input={input} />;
  if ('choices' in input) return <ChoiceField {...props} input={input} />;
  return <QuantityField {...props} input={input} />;
}
