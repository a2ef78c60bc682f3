import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Dimension from '../Sketch/Dimension.tsx';
import Label, { Size, Stated } from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

const [left, right, top, bottom] = [62, 306, 22, 152];
/** The lower picture: seconds over plate thickness. */
const [upper, floor] = [206, 286];
const hottest = 1200;

/** How the metal beside the weld cools, and how the plate's thickness sets the time it takes. */
export default function CoolingCurve({ given, results }: DrawingProps) {
  const start = given.startTemperature as number;
  const thickness = given.thickness as number;
  const { time, transitionThickness } = results as Record<'time' | 'transitionThickness', number>;
  const thin = results.regime === 'thin plate';
  // t = K/(T − T₀) in thick plate and K/(T − T₀)² in thin plate; the time between gives K.
  const power = thin ? 2 : 1;
  const share = (degrees: number) => (degrees - start) ** -power;
  const constant = time / (share(500) - share(800));
  const at = (degrees: number) => constant * share(degrees);
  const longest = 1.35 * at(500);
  const coolest = start + (constant / longest) ** (1 / power);
  const x = (seconds: number) => round(left + ((right - left) * seconds) / longest);
  const y = (degrees: number) =>
    round(bottom - ((bottom - top) * (degrees - 300)) / (hottest - 300));
  const least = Math.max(300, coolest);
  const curve = (from: number, to: number) =>
    Array.from({ length: 25 }, (_, step) => {
      const degrees = from + ((to - from) * step) / 24;
      return `${x(at(degrees))} ${y(degrees)}`;
    }).join('L');
  const widest = 1.25 * Math.max(thickness, 1.6 * transitionThickness);
  const thickTime = thin ? time * (thickness / transitionThickness) ** 2 : time;
  const most = Math.max(4 * thickTime, 1.1 * time);
  const seconds = (mm: number) => thickTime * Math.max(1, (transitionThickness / mm) ** 2);
  const d = (mm: number) => round(left + ((right - left) * mm) / widest);
  const t = (of: number) => round(floor - ((floor - upper) * Math.min(of, most)) / most);
  const first = Math.min(transitionThickness / 2, thickness);
  return (
    <Sketch
      height={332}
      name="Temperature beside the weld over time, and cooling time over plate thickness"
      caption={
        <>
          Above: the metal beside the weld takes <Size as="span" value={time} unit="s" digits={2} />{' '}
          from <Size as="span" value={800} unit="degC" /> down to{' '}
          <Size as="span" value={500} unit="degC" />, both dashed. Below: the time by the plate’s
          thickness. Up to <Size as="span" value={transitionThickness} unit="mm" digits={2} /> a
          thicker plate cools faster, from there on it makes no difference; yours, the dot, cools as
          a {results.regime as string}.
        </>
      }
    >
      <path
        d={`M${curve(800, 500)}L${x(at(500))} ${bottom}L${x(at(800))} ${bottom}Z`}
        class="weld-metal"
      />
      <path
        d={`M${left} ${y(800)}H${x(at(800))}V${bottom}M${left} ${y(500)}H${x(at(500))}V${bottom}`}
        fill="none"
        stroke="currentColor"
        stroke-dasharray="4 3"
      />
      <path d={`M${curve(hottest, least)}`} fill="none" stroke="currentColor" stroke-width="2.4" />
      <path
        d={`M${left} ${top - 8}V${bottom}H${right}M${left} ${upper - 8}V${floor}H${right}`}
        fill="none"
        stroke="currentColor"
      />
      <Label x={left - 6} y={y(800) + 4.5} anchor="end">
        <Size value={800} unit="degC" />
      </Label>
      <Label x={left - 6} y={y(500) + 4.5} anchor="end">
        <Size value={500} unit="degC" />
      </Label>
      <Dimension from={[x(at(500)), bottom]} to={[x(at(800)), bottom]} off={10}>
        <Size value={time} unit="s" digits={2} />
      </Dimension>
      <path
        d={`M${d(first)} ${t(seconds(first))}L${Array.from({ length: 17 }, (_, step) => {
          const mm = first + ((transitionThickness - first) * step) / 16;
          return `${d(mm)} ${t(seconds(mm))}`;
        }).join('L')}H${right}`}
        fill="none"
        stroke="currentColor"
        stroke-width="2.4"
      />
      <path
        d={`M${d(transitionThickness)} ${floor}V${upper - 4}`}
        stroke="currentColor"
        stroke-dasharray="4 3"
      />
      <Label x={d(transitionThickness) - 6} y={upper + 2} anchor="end">
        thin
      </Label>
      <Label x={d(transitionThickness) + 6} y={upper + 2} anchor="start">
        thick
      </Label>
      <Label x={d(transitionThickness)} y={floor + 17}>
        <Size value={transitionThickness} unit="mm" digits={2} />
      </Label>
      <circle cx={d(thickness)} cy={t(seconds(thickness))} r="5" fill="currentColor" />
      <Label x={d(thickness)} y={floor + 34} bold anchor={d(thickness) > 250 ? 'end' : 'middle'}>
        <Stated value={thickness} unit="mm" />
      </Label>
      <Label x={left - 6} y={t(seconds(thickness)) + 4.5} anchor="end" bold>
        <Size value={time} unit="s" digits={2} />
      </Label>
    </Sketch>
  );
}
