import type { Seen } from '../../lib/section/section-item.ts';
import type { MacroCode } from '../../lib/tables/macro-limits.ts';
import type { System } from '../../lib/units.ts';
import { kindOf, type Worked } from './bench-state.ts';
import Choice from './Choice.tsx';
import type { Found, Judging } from './kinds.ts';
import LengthBox from './LengthBox.tsx';
import { readLength } from './lengths.ts';
import Verdicts from './Verdicts.tsx';

interface Props {
  worked: Worked;
  system: System;
  found: Found | undefined;
  onChange(change: Partial<Worked>): void;
}

type Looked = Worked['cracks'];
const looks = (['not looked', 'none seen', 'seen'] as const).map((one) => [one, one] as const);

/** By which drawing, code and eye the weld is judged. */
export function judging(worked: Worked, system: System): Judging {
  const size = readLength('size', worked.lengths.size);
  const seen = (one: Looked): Seen => (one === 'not looked' ? undefined : one);
  return {
    code: codeOf(worked),
    system,
    size: size && 'typed' in size ? size.typed : undefined,
    cracks: seen(worked.cracks),
    unfused: seen(worked.unfused),
  };
}

/** The chosen code where it looks at this kind of weld; else the first that does. */
const codeOf = (worked: Worked): MacroCode => {
  const { codes } = kindOf(worked);
  return codes.find((one) => one === worked.code) ?? (codes[0] as MacroCode);
};

export default function Judged({ worked, system, found, onChange }: Props) {
  const { sizeHint, codes, aside } = kindOf(worked);
  return (
    <>
      <h3>Against the drawing and the code</h3>
      <div class="section-lengths">
        <LengthBox
          name="size"
          entry={worked.lengths.size}
          system={system}
          hint={sizeHint}
          onEntry={(size) => onChange({ lengths: { ...worked.lengths, size } })}
        />
        <Choice
          id="section-code"
          label="Code"
          value={codeOf(worked)}
          choices={codes.map((one) => [one, one] as const)}
          onChoice={(code) => onChange({ code })}
        />
        <Choice<Looked>
          id="section-cracks"
          label="Cracks"
          value={worked.cracks}
          choices={looks}
          onChoice={(cracks) => onChange({ cracks })}
        />
        <Choice<Looked>
          id="section-unfused"
          label="Places not fused"
          value={worked.unfused}
          choices={looks}
          onChoice={(unfused) => onChange({ unfused })}
        />
      </div>
      {found ? (
        <Verdicts items={found.items(judging(worked, system))} system={system} />
      ) : (
        <p class="quiet">The verdicts stand here once the first marks and the scale are set.</p>
      )}
      {aside && <p class="quiet">{aside}</p>}
    </>
  );
}
