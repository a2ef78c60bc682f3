import type { Input } from '../../lib/calculation.ts';
import { type System, unitFor } from '../../lib/units.ts';
import Both from '../Units/Both.tsx';
import { unitWords } from '../Units/unit-words.ts';

/** What a field asks for, with the unit in words. Drawn at build only. */
export default function FieldLabel({ input }: { input: Input }) {
  const unit = 'unit' in input ? input.unit : 'printed' in input ? input.printed.us : undefined;
  const words = (system: System) => (unit ? unitWords[unitFor(unit, system)] : '');
  return (
    <>
      {input.label}
      {words('us') !== '' && (
        <small>
          , in <Both us={words('us')} metric={words('metric')} />
        </small>
      )}
    </>
  );
}
