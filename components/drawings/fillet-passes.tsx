import type { PassMap } from '../../lib/geometry/pass-map.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import PassSection from '../Sketch/PassSection.tsx';

/** The passes of a fillet weld in section. */
export default function FilletPasses({ results }: DrawingProps) {
  return (
    <PassSection
      map={results.map as PassMap}
      name="Section of a fillet weld with numbered passes"
      area={results.jointArea as number}
    />
  );
}
