import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import { hatch } from '../Sketch/hatch.ts';
import Label, { Stated } from '../Sketch/Label.tsx';
import Sketch, { round } from '../Sketch/Sketch.tsx';

const [left, width, tall, step] = [8, 304, 22, 52];
/** More would be a wall of bars; the table has them all. */
const mostRows = 10;

/** Bars from the rack with the pieces to cut from them; bars that are alike stand once. */
export default function CutBars({ given, results }: DrawingProps) {
  const { stockLength, kerf, trim } = given as Record<'stockLength' | 'kerf' | 'trim', number>;
  const rows = results.cuts as Pattern[];
  const all = rows.flatMap(({ pieces }) => pieces.map(({ length }) => length));
  const lengths = [...new Set(all)].sort((a, b) => b - a);
  const mark = (length: number) => markOf(lengths.indexOf(length));
  const shown = rows.slice(0, mostRows);
  const x = (inches: number) => round(left + (width * inches) / stockLength);
  const box = (from: number, to: number, y: number) =>
    `M${x(from)} ${y}H${x(to)}V${y + tall}H${x(from)}Z`;
  const lining = (from: number, to: number, y: number) =>
    x(to) - x(from) < 1
      ? ''
      : hatch(
          [
            [x(from), y],
            [x(to), y],
            [x(to), y + tall],
            [x(from), y + tall],
          ],
          6,
        );
  return (
    <Sketch
      height={shown.length * step}
      name="Bars with the pieces to cut from them"
      caption={
        <>
          Lengths to scale.{' '}
          {lengths.map((length, index) => (
            <>
              {index > 0 && ', '}
              {markOf(index)}
              {'\u00a0'}
              <Stated as="span" value={length} unit="in" />
            </>
          ))}
          . Hatched: trimmed off and left over.
          {rows.length > mostRows && ' The other bars are in the table.'}
        </>
      }
    >
      {shown.map(({ bars, pieces }, row) => {
        const y = row * step + 20;
        const runs = runsOf(pieces, trim, kerf);
        const end = Math.min(stockLength, (runs.at(-1)?.to ?? trim) + kerf);
        return (
          <g key={row}>
            <Label x={left} y={y - 6} anchor="start" bold>
              {titled(
                firstOf(rows, row) + (bars === 1 ? '' : ` and ${bars - 1} like it`),
                pieces.map(({ length, count }) => `${count} ${mark(length)}`).join(', '),
              )}
            </Label>
            {end < stockLength && (
              <Label x={left + width} y={y - 6} anchor="end">
                over <Stated value={stockLength - end} unit="in" />
              </Label>
            )}
            <Waste d={lining(0, trim, y)} />
            <Waste d={lining(end, stockLength, y)} />
            <path
              d={runs
                .flatMap(({ from, to, length, count }) =>
                  width * length < 3 * stockLength
                    ? box(from, to, y)
                    : Array.from({ length: count }, (_, piece) => {
                        const start = from + piece * (length + kerf);
                        return box(start, start + length, y);
                      }),
                )
                .join('')}
              class="weld-metal"
              stroke="currentColor"
              stroke-width="1"
            />
            <path d={box(0, stockLength, y)} fill="none" stroke="currentColor" stroke-width="1.6" />
            {runs.map(({ from, to, length, count }) => {
              const each = (width * length) / stockLength >= 13;
              const words = `${count} × ${mark(length)}`;
              if (each)
                return Array.from({ length: count }, (_, piece) => (
                  <Label
                    key={`${from} ${piece}`}
                    x={x(from + piece * (length + kerf) + length / 2)}
                    y={y + 15.5}
                  >
                    {mark(length)}
                  </Label>
                ));
              return (
                x(to) - x(from) > 7.5 * words.length && (
                  <Label key={from} x={x((from + to) / 2)} y={y + 15.5}>
                    {words}
                  </Label>
                )
              );
            })}
          </g>
        );
      })}
    </Sketch>
  );
}

const Waste = ({ d }: { d: string }) => <path d={d} stroke="currentColor" stroke-width="0.8" />;

/** The pieces stand beside the bar's name where there is room. */
const titled = (bar: string, pieces: string): string =>
  bar.length + pieces.length < 26 ? `${bar}: ${pieces}` : bar;

/** A, B … Z, A2, B2 … */
const markOf = (index: number): string =>
  String.fromCharCode(65 + (index % 26)) + (index < 26 ? '' : String(1 + Math.floor(index / 26)));

/** Bars are counted on from pattern to pattern. */
const firstOf = (rows: readonly Pattern[], row: number): string =>
  `Bar ${rows.slice(0, row).reduce((sum, { bars }) => sum + bars, 1)}`;

/** Pieces of one length, side by side: where they begin and end on the bar. */
function runsOf(pieces: Pattern['pieces'], trim: number, kerf: number) {
  let from = trim;
  return pieces.map((run) => {
    const next = from + run.count * (run.length + kerf);
    const placed = { ...run, from, to: next - kerf };
    from = next;
    return placed;
  });
}

/** Bars that are cut alike. */
interface Pattern {
  bars: number;
  pieces: readonly { length: number; count: number }[];
}
