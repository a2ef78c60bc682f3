import type { CutLayout, Cuts, Strip } from '../../lib/test-sheet/cut-layout.ts';
import { hatch } from '../Sketch/hatch.ts';
import Label from '../Sketch/Label.tsx';
import Sketch, { round, sheetWidth } from '../Sketch/Sketch.tsx';

/** How the trade marks that it did not look it up. */
const known = { read: 'read', memory: 'from memory', practice: 'practice', derived: 'worked out' };

const across = 2;
const cell = sheetWidth / across;
const row = 118;

/** The coupons seen as the saw sees them: a plate from its cap side, a pipe from its end. */
export default function CutDrawing({ cuts, code }: { cuts: Cuts; code: string }) {
  const { layouts, notes, cite } = cuts;
  const plates = layouts.some(({ on }) => on === 'plate');
  const bends = layouts.flatMap((one) =>
    one.on === 'plate'
      ? one.strips.flatMap(({ specimen }) => specimen?.kind ?? [])
      : one.places.map(({ specimen }) => specimen.kind),
  );
  const caption = (
    <>
      <b>
        {code}, {known[cite.known]}: {cite.at}.
      </b>{' '}
      {plates &&
        (bends.includes('fillet break')
          ? 'Seen along the weld from above; the hatched end is thrown away. '
          : 'Plate seen from the cap side; hatched ends are thrown away. ')}
      {bends.includes('face bend') && 'Face bend: the cap is stretched. Root bend: the root is. '}
      {bends.includes('side bend') && 'Side bend: a slice laid on its side. '}
      {bends.includes('fillet break') && 'Dot: stop and restart. '}
      {notes.join(' ')} The figure of the contract’s edition decides.
    </>
  );
  if (layouts.length === 0) return notes.length > 0 ? <p class="test-cuts">{caption}</p> : null;
  return (
    <figure class="test-cuts">
      <Sketch
        height={row * Math.ceil(layouts.length / across)}
        name={`Where the specimens are cut: ${layouts.map(inWords).join('; ')}`}
        caption={caption}
      >
        {layouts.map((one, i) => (
          <g
            key={one.test}
            transform={`translate(${layouts.length === 1 ? cell / 2 : (i % across) * cell} ${Math.floor(i / across) * row})`}
          >
            <Label x={cell / 2} y={15} bold>
              {one.test}
            </Label>
            {one.on === 'plate' ? <Plate strips={one.strips} /> : <Ring places={one.places} />}
          </g>
        ))}
      </Sketch>
    </figure>
  );
}

const short = (kind: string) => kind.replace(/^fillet /, '').replace(/ bend$|-etch$/, '');

function inWords(one: CutLayout): string {
  if (one.on === 'plate')
    return `${one.test} plate, ${one.strips.map(({ specimen }) => specimen?.kind ?? 'thrown away').join(', ')}`;
  const clock = (hour: number) => `${Math.floor(hour)}:30`;
  return `${one.test} pipe, ${one.places.map(({ specimen, hour }) => `${specimen.kind} at ${clock(hour)}`).join(', ')}`;
}

const [left, top, right, bottom] = [6, 24, cell - 6, 108];

function Plate({ strips }: { strips: readonly Strip[] }) {
  const end = 20;
  const kept = strips.filter(({ specimen }) => specimen);
  const fixed = end * (strips.length - kept.length);
  const broad = kept.some(({ restart }) => restart);
  const shares = kept.map(({ restart }) => (broad && restart ? 2 : 1));
  const unit = (right - left - fixed) / shares.reduce((sum, one) => sum + one, 0);
  let at = left;
  const placed = strips.map((strip) => {
    const share = shares[kept.indexOf(strip)];
    const width = share === undefined ? end : share * unit;
    at += width;
    return { ...strip, from: round(at - width), to: round(at) };
  });
  const middle = (top + bottom) / 2;
  return (
    <>
      <rect
        class="weld-metal"
        x={left}
        y={middle - 8}
        width={right - left}
        height={16}
        stroke="currentColor"
        stroke-width="0.8"
      />
      {placed.map(({ specimen, from, to, restart }) => (
        <g key={from}>
          {!specimen && (
            <path
              d={hatch(
                [
                  [from, top],
                  [to, top],
                  [to, bottom],
                  [from, bottom],
                ],
                7,
              )}
              stroke="currentColor"
              stroke-width="0.6"
            />
          )}
          {from > left && (
            <path
              d={`M${from} ${top - 5}V${bottom + 5}`}
              stroke="currentColor"
              stroke-width="1"
              stroke-dasharray="6 3"
            />
          )}
          {specimen && (
            <Label x={round((from + to) / 2)} y={middle - 17}>
              {short(specimen.kind)}
            </Label>
          )}
          {specimen && /[2-9]$/.test(specimen.id) && (
            <Label x={round((from + to) / 2)} y={middle + 27}>
              {specimen.id.slice(-1)}
            </Label>
          )}
          {restart && (
            <circle cx={round((from + to) / 2)} cy={middle} r="3.5" fill="currentColor" />
          )}
        </g>
      ))}
      <rect
        x={left}
        y={top}
        width={right - left}
        height={bottom - top}
        fill="none"
        stroke="currentColor"
        stroke-width="1.4"
      />
    </>
  );
}

function Ring({ places }: { places: readonly { specimen: { kind: string }; hour: number }[] }) {
  const [x, y, outer, inner] = [cell / 2, 70, 34, 24];
  const at = (hour: number, radius: number) => {
    const turn = (hour * Math.PI) / 6;
    return [round(x + radius * Math.sin(turn)), round(y - radius * Math.cos(turn))] as const;
  };
  const half = 0.55;
  return (
    <>
      {[outer, inner].map((r) => (
        <circle cx={x} cy={y} r={r} fill="none" stroke="currentColor" stroke-width="1.2" />
      ))}
      <path d={`M${x} ${y - outer - 9}v9`} stroke="currentColor" stroke-width="2" />
      <Label x={x} y={y - outer - 12} small>
        top
      </Label>
      {places.map(({ specimen, hour }) => {
        const [from, to] = [hour - half, hour + half];
        const [labelX, labelY] = at(hour, outer + 7);
        return (
          <g key={hour}>
            <path
              class="weld-metal"
              d={`M${at(from, inner).join(' ')}A${inner} ${inner} 0 0 1 ${at(to, inner).join(' ')}L${at(to, outer).join(' ')}A${outer} ${outer} 0 0 0 ${at(from, outer).join(' ')}Z`}
              stroke="currentColor"
              stroke-width="1.2"
            />
            <Label x={labelX} y={labelY + 4} anchor={hour < 6 ? 'start' : 'end'}>
              {short(specimen.kind)}
            </Label>
          </g>
        );
      })}
    </>
  );
}
