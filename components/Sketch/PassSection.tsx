import { Component } from 'preact';
import type { PassMap } from '../../lib/geometry/pass-map.ts';
import Handle from '../Drawing/Handle.tsx';
import { boundsOf } from './bounds.ts';
import { clipped, ownEdges } from './clipped.ts';
import { Size } from './Label.tsx';
import Metal from './Metal.tsx';
import Sketch from './Sketch.tsx';
import { type Bounds, fitted } from './scale.ts';
import Weld from './Weld.tsx';

interface Props {
  map: PassMap;
  name: string;
  /** Section area of the whole weld, in square inches. */
  area: number;
}

/**
 * A joint in section with every pass in its place, numbered in the order they are run. In a live
 * form a handle runs them one at a time; those still to come stay as outlines.
 */
export default class PassSection extends Component<Props, { upTo?: number }> {
  override state: { upTo?: number } = {};

  override render({ map, name, area }: Props, { upTo }: { upTo?: number }) {
    const all = map.passes.length;
    const shown = Math.min(upTo ?? all, all);
    const window = around(map);
    const scale = fitted(window, {}, 260);
    const layers = Math.max(...map.passes.map(({ layer }) => layer));
    const last = map.passes[shown - 1];
    return (
      <Sketch
        height={scale.height}
        name={name}
        handles={
          all > 1 && (
            <Handle
              label="Passes run"
              min={1}
              max={all}
              step={1}
              value={shown}
              says={`${shown} of ${all}, layer ${last?.layer}`}
              onMove={(value) => this.setState({ upTo: value })}
            />
          )
        }
        caption={
          <>
            To scale; the plates go on. {count(all, 'pass', 'passes')} in{' '}
            {count(layers, 'layer', 'layers')}, numbered in the order they are run. Section of the
            whole weld <Size as="span" value={area} unit="in2" />.
          </>
        }
      >
        {map.base.map(({ part, outline: whole }, index) => {
          const outline = clipped(whole, window);
          const edges = ownEdges(outline, window);
          return (
            outline.length > 0 && <Metal key={`${part} ${index}`} {...{ scale, outline, edges }} />
          );
        })}
        {map.passes.map(({ number, outline, area: own }) => {
          const room = Math.sqrt(own) * scale.factor;
          return (
            <Weld
              key={number}
              scale={scale}
              outline={outline}
              ghost={number > shown}
              {...((room > 13 || number === upTo) && { number, small: room < 24 })}
            />
          );
        })}
      </Sketch>
    );
  }
}

const count = (number: number, one: string, many: string) =>
  `${number} ${number === 1 ? one : many}`;

/** In millimeters: a backing strip is shown with its far side. */
const thickestStrip = 8;

/** The weld and as much metal round it as shows what it joins. */
function around({ passes, base }: PassMap): Bounds {
  const weld = boundsOf(passes.flatMap(({ outline }) => outline));
  const metal = boundsOf(base.flatMap(({ outline }) => outline));
  const size = Math.max(weld.right - weld.left, weld.top - weld.bottom);
  const more = Math.max(0.55 * size, thickestStrip);
  return {
    left: Math.max(weld.left - more, Math.min(metal.left, weld.left)),
    right: Math.min(weld.right + more, Math.max(metal.right, weld.right)),
    bottom: Math.max(weld.bottom - more, Math.min(metal.bottom, weld.bottom)),
    top: Math.min(weld.top + more, Math.max(metal.top, weld.top)),
  };
}
