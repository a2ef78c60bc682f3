import Label from '../Sketch/Label.tsx';
import Sketch from '../Sketch/Sketch.tsx';

/** Where two straps are cut from a plate, and which side of each is stretched in the press. */
export default function BendStraps() {
  return (
    <Sketch
      height={234}
      name="Two straps in the welded plate, and both bent"
      caption={
        <>
          Not to scale. Straps lie across the weld, clear of both ends. Shaded is the weld. Grind
          along the arrows.
        </>
      }
    >
      <path d="M10 10H150V210H10Z" fill="none" stroke="currentColor" stroke-width="1.6" />
      <path d="M68 10H92V210H68Z" class="weld-metal" stroke="currentColor" stroke-width="1" />
      {['face', 'root'].map((name, at) => {
        const y = 52 + 70 * at;
        return (
          <g key={name}>
            <path
              d={`M10 ${y}H150V${y + 44}H10Z`}
              fill="none"
              stroke="currentColor"
              stroke-width="1.6"
              stroke-dasharray="5 4"
            />
            <path
              d={`M22 ${y + 34}H138M28 ${y + 30}l-6 4l6 4M132 ${y + 30}l6 4l-6 4`}
              fill="none"
              stroke="currentColor"
              stroke-width="1"
            />
            <Label x={36} y={y + 20} bold>
              {name}
            </Label>
          </g>
        );
      })}
      <Label x={80} y={228}>
        from above
      </Label>
      <Bent y={8} wide={38} narrow={12} name="face bend" says="cover outside" />
      <Bent y={122} wide={20} narrow={24} name="root bend" says="root outside" />
    </Sketch>
  );
}

/** A strap bent to a U, and its weld at the bottom: as wide as said outside and inside the curve. */
function Bent(of: { y: number; wide: number; narrow: number; name: string; says: string }) {
  const { y, wide, narrow, name, says } = of;
  const x = 206;
  return (
    <>
      <path
        d={`M${x - 38} ${y}V${y + 26}A38 38 0 0 0 ${x + 38} ${y + 26}V${y}H${x + 20}V${y + 26}A20 20 0 0 1 ${x - 20} ${y + 26}V${y}Z`}
        fill="none"
        stroke="currentColor"
        stroke-width="1.6"
      />
      <path
        d={`M${x - wide / 2} ${y + 61}Q${x} ${y + 67} ${x + wide / 2} ${y + 61}L${x + narrow / 2} ${y + 45}Q${x} ${y + 47} ${x - narrow / 2} ${y + 45}Z`}
        class="weld-metal"
        stroke="currentColor"
        stroke-width="1"
      />
      <Label x={x} y={y + 84} bold>
        {name}
      </Label>
      <Label x={x} y={y + 102}>
        {says}
      </Label>
    </>
  );
}
