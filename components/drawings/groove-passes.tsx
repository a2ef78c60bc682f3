import type { PassMap } from '../../lib/geometry/pass-map.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import PassSection from '../Sketch/PassSection.tsx';

/** The passes of a groove weld in section. */
export default function GroovePasses({ results }: DrawingProps) {
  return (
    <PassSection
      map={results.map as PassMap}
      name="Section of a groove weld with numbered passes"
      area={results.jointArea as number}
    />
  );
}
