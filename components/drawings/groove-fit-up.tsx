import type { PassMap } from '../../lib/geometry/pass-map.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { boundsOf } from '../Sketch/bounds.ts';
import { clipped, ownEdges } from '../Sketch/clipped.ts';
import Label from '../Sketch/Label.tsx';
import Metal from '../Sketch/Metal.tsx';
import Sketch from '../Sketch/Sketch.tsx';
import { type Bounds, beside } from '../Sketch/scale.ts';
import Weld from '../Sketch/Weld.tsx';

/** One joint at both ends of its tolerance, side by side and at one scale. */
export default function GrooveFitUp({ results }: DrawingProps) {
  const maps = [results.narrowest as PassMap, results.widest as PassMap];
  const passes = [results.narrowestPasses as number, results.widestPasses as number];
  const windows = maps.map(around);
  const scales = beside(windows, { top: 12, bottom: 44 }, 200);
  return (
    <Sketch
      height={scales.height}
      name="Section of the groove at the narrowest and at the widest opening that is allowed"
      caption={
        <>
          To scale, both at one. At the narrowest and steepest {passes[0]} passes fill it, at the
          widest and most open {passes[1]}.
        </>
      }
    >
      {maps.map((map, index) => {
        const scale = scales.of[index] as (typeof scales.of)[number];
        const window = windows[index] as Bounds;
        return (
          <g key={index}>
            {map.base.map(({ part, outline: whole }, at) => {
              const outline = clipped(whole, window);
              return (
                outline.length > 0 && (
                  <Metal
                    key={`${part} ${at}`}
                    {...{ scale, outline, edges: ownEdges(outline, window) }}
                  />
                )
              );
            })}
            {map.passes.map(({ number, outline, area }) => {
              const room = Math.sqrt(area) * scale.factor;
              return (
                <Weld
                  key={number}
                  scale={scale}
                  outline={outline}
                  {...(room > 13 && { number, small: room < 24 })}
                />
              );
            })}
            <Label x={scale.x((window.left + window.right) / 2)} y={scales.height - 26} bold>
              {index === 0 ? 'narrowest' : 'widest'}
            </Label>
            <Label x={scale.x((window.left + window.right) / 2)} y={scales.height - 8}>
              {passes[index]} passes
            </Label>
          </g>
        );
      })}
    </Sketch>
  );
}

/** The weld, a little plate on each side, and the strip. In millimeters. */
function around({ passes, base }: PassMap): Bounds {
  const weld = boundsOf(passes.flatMap(({ outline }) => outline));
  const metal = boundsOf(base.flatMap(({ outline }) => outline));
  const more = Math.max(0.15 * Math.max(weld.right - weld.left, weld.top - weld.bottom), 3);
  return {
    left: Math.max(weld.left - more, metal.left),
    right: Math.min(weld.right + more, metal.right),
    bottom: Math.max(weld.bottom - 7, metal.bottom),
    top: Math.min(weld.top + 7, Math.max(metal.top, weld.top)),
  };
}
