import type { PassMap } from '../../lib/geometry/pass-map.ts';
import { Size } from './Label.tsx';
import Metal from './Metal.tsx';
import Sketch from './Sketch.tsx';
import { fitted } from './scale.ts';
import Weld from './Weld.tsx';

interface Props {
  map: PassMap;
  name: string;
  /** Section area of the whole weld, in square inches. */
  area: number;
}

/** A joint in section with every pass in its place, numbered in the order they are run. */
export default function PassSection({ map, name, area }: Props) {
  const { minX, maxX, minY, maxY } = boundsOf(map);
  const scale = fitted({ left: minX, right: maxX, bottom: minY, top: maxY }, {}, 260);
  const layers = Math.max(...map.passes.map(({ layer }) => layer));
  return (
    <Sketch
      height={scale.height}
      name={name}
      caption={
        <>
          To scale. {count(map.passes.length, 'pass', 'passes')} in{' '}
          {count(layers, 'layer', 'layers')}, numbered in the order they are run. Section of the
          whole weld <Size as="span" value={area} unit="in2" />.
        </>
      }
    >
      {map.base.map(({ part, outline }, index) => (
        <Metal key={`${part} ${index}`} scale={scale} outline={outline} />
      ))}
      {map.passes.map(({ number, outline }) => (
        <Weld key={number} scale={scale} outline={outline} number={number} />
      ))}
    </Sketch>
  );
}

const count = (number: number, one: string, many: string) =>
  `${number} ${number === 1 ? one : many}`;

function boundsOf(map: PassMap) {
  const points = [...map.base, ...map.passes].flatMap(({ outline }) => outline);
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return {
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}
