import type { System } from '../../lib/units.ts';
import type { Worked } from './bench-state.ts';
import Choice from './Choice.tsx';
import LengthBox from './LengthBox.tsx';
import type { LengthEntry, LengthName } from './lengths.ts';

interface Props {
  worked: Worked;
  system: System;
  onScaleBy(by: Worked['by']): void;
  onLength(name: LengthName, entry: LengthEntry): void;
}

/** What in the picture has a known length, and how long it is. */
export default function ScaleFields({ worked: { by, lengths }, system, ...props }: Props) {
  const names: readonly LengthName[] =
    by === 'distance' ? ['length', 'lengthError'] : ['width', 'height', 'lengthError'];
  return (
    <>
      <Choice
        id="section-scale-by"
        label="What gives the scale"
        value={by}
        choices={[
          ['distance', 'Two points of known distance'],
          ['rectangle', 'Four corners of a rectangle: squares up a tilted picture'],
        ]}
        onChoice={props.onScaleBy}
      />
      <div class="section-lengths">
        {names.map((name) => (
          <LengthBox
            key={name}
            name={name}
            entry={lengths[name]}
            system={system}
            onEntry={(entry) => props.onLength(name, entry)}
          />
        ))}
      </div>
    </>
  );
}
