import type { DrawnSection } from '../../lib/section/drawn-section.ts';
import type { Missing } from '../../lib/section/placed-plane.ts';
import type { System } from '../../lib/units.ts';
import AnnotatedPicture, { type Annotated } from './AnnotatedPicture.tsx';
import type { Worked } from './bench-state.ts';
import Judged, { judging } from './Judged.tsx';
import { type Found, kinds } from './kinds.ts';
import type { Picture } from './picture.ts';
import Readings from './Readings.tsx';
import { Basis, Edge } from './ReportFields.tsx';
import SaveButtons from './SaveButtons.tsx';

interface Props {
  worked: Worked;
  system: System;
  measured: Found | Missing;
  /** As it is shown, squared up or not, with what is drawn over it there. */
  picture: Picture;
  drawn: DrawnSection | undefined;
  bar: Annotated['bar'];
  passes: number;
  onChange(change: Partial<Worked>): void;
}

/** What the marks say: readings, verdicts, and the ways to keep them. It is what goes on paper. */
export default function Report(props: Props) {
  const { worked, system, measured, picture, drawn, bar, passes, onChange } = props;
  const found = 'readings' in measured ? measured : undefined;
  const { sample } = picture;
  const drawing: Annotated | undefined =
    found && drawn
      ? { picture, address: picture.address, drawn, readings: found.readings, bar, system }
      : undefined;
  return (
    <>
      <h3>Readings</h3>
      {'missing' in measured && <p class="section-missing">{measured.missing}</p>}
      {drawing && (
        <figure class="print-only">
          <AnnotatedPicture {...drawing} />
        </figure>
      )}
      {found && (
        <>
          <Readings
            readings={found.readings}
            passes={passes}
            system={system}
            trueSizes={sample === worked.weld ? kinds[sample].sample.truth : undefined}
          />
          <Basis worked={worked} system={system} />
        </>
      )}
      <Edge edge={worked.edge} onEdge={(edge) => onChange({ edge })} />
      <Judged worked={worked} system={system} found={found} onChange={onChange} />
      {drawing && found && (
        <SaveButtons
          picture={picture}
          drawing={drawing}
          passes={passes}
          items={() => found.items(judging(worked, system))}
        />
      )}
    </>
  );
}
