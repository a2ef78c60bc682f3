import type { ComponentChildren } from 'preact';
import Arc from './Arc.tsx';
import Dimension from './Dimension.tsx';
import { Size, Stated } from './Label.tsx';
import Metal from './Metal.tsx';
import Sketch from './Sketch.tsx';
import { fitted, type Point } from './scale.ts';
import Weld from './Weld.tsx';

interface Props {
  /** In inches. */
  thickness: number;
  rootOpening: number;
  rootFace: number;
  capHeight: number;
  faceWidth: number;
  /** Bevels on both edges, or on the left one alone. */
  both: boolean;
  /** The angle to show: of the whole groove, or of the left bevel from square. */
  angle: { of: 'groove' | 'bevel'; degrees: number };
  name: string;
  caption: ComponentChildren;
}

const inch = 25.4;

/** A groove in section: root opening, root face, bevels, and the cap over the surface. */
export default function GrooveSection(props: Props) {
  const { both, angle, name, caption } = props;
  const mm = (inches: number) => inches * inch;
  const [thickness, opening] = [mm(props.thickness), mm(props.rootOpening)];
  const [face, cap, width] = [mm(props.rootFace), mm(props.capHeight), mm(props.faceWidth)];
  const [left, right] = [-opening / 2, opening / 2];
  /** How far a beveled edge leans back; a single bevel leaves the right edge square. */
  const bevel = both ? (width - opening) / 2 : width - opening;
  const [leftTop, rightTop] = [left - bevel, both ? right + bevel : right];
  const plate = Math.max(0.4 * thickness, 0.15 * width);
  const ends = { left: leftTop - plate, right: rightTop + plate };
  const hasFace = face > 0.01 * thickness && face < thickness;
  const scale = fitted(
    { ...ends, bottom: 0, top: thickness + cap },
    { left: 78, right: hasFace ? 78 : 14, top: 34, bottom: 34 },
    180,
  );
  const at = (x: number, y: number) => [scale.x(x), scale.y(y)] as const;
  const edge = (foot: number, top: number, end: number): Point[] => [
    [end, 0],
    [foot, 0],
    [foot, face],
    [top, thickness],
    [end, thickness],
  ];
  const crown = Array.from({ length: 13 }, (_, step): Point => {
    const share = step / 12;
    return [rightTop - width * share, thickness + 4 * cap * share * (1 - share)];
  });
  /** The angle is drawn where its two lines meet: below the root, or at the foot of the bevel. */
  const slope = bevel / (thickness - face || 1);
  const drop = angle.of === 'bevel' ? 0 : opening / (both ? 2 * slope : slope);
  const vertex: Point = [angle.of === 'bevel' ? left : both ? 0 : right, face - drop];
  const lean = (Math.atan(slope) * 180) / Math.PI;
  const reach = (drop + (angle.of === 'bevel' ? 0.5 : 0.66) * (thickness - face)) * scale.factor;
  const open = angle.degrees > 10 && angle.degrees * reach > 900;
  return (
    <Sketch height={scale.height} name={name} caption={caption}>
      <Metal scale={scale} outline={edge(left, leftTop, ends.left)} />
      <Metal scale={scale} outline={edge(right, rightTop, ends.right).reverse()} />
      <Weld
        scale={scale}
        outline={[[left, face], [left, 0], [right, 0], [right, face], ...crown]}
      />
      <path
        d={`M${at(leftTop, thickness).join(' ')}H${scale.x(rightTop)}${
          open && angle.of === 'bevel' ? `M${at(left, face).join(' ')}V${scale.y(thickness)}` : ''
        }${hasFace ? `M${at(right, face).join(' ')}H${scale.x(ends.right) + 10}` : ''}`}
        stroke="currentColor"
        stroke-width="0.8"
        stroke-dasharray="3 3"
      />
      {open && (
        <Arc
          x={scale.x(vertex[0])}
          y={scale.y(vertex[1])}
          radius={Math.round(reach)}
          from={both && angle.of === 'groove' ? 90 - lean : 90}
          to={90 + lean}
          off={angle.of === 'bevel' ? 9 : -11}
        >
          <Size value={angle.degrees} unit="deg" />
        </Arc>
      )}
      <Dimension from={at(leftTop, thickness + cap)} to={at(rightTop, thickness + cap)} off={12}>
        <Size value={props.faceWidth} unit="in" />
      </Dimension>
      {opening > 0 && (
        <Dimension from={at(right, 0)} to={at(left, 0)} off={12}>
          <Stated value={props.rootOpening} unit="in" />
        </Dimension>
      )}
      <Dimension from={at(ends.left, 0)} to={at(ends.left, thickness)} off={10}>
        <Stated value={props.thickness} unit="in" />
      </Dimension>
      {hasFace && (
        <Dimension from={at(ends.right, face)} to={at(ends.right, 0)} off={10}>
          <Stated value={props.rootFace} unit="in" />
        </Dimension>
      )}
    </Sketch>
  );
}
