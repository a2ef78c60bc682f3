import type { Point } from '../../lib/geometry/outline.ts';
import type { MarkName, Placed } from '../../lib/section/section-marks.ts';
import type { Step } from './steps.ts';

/** One mark: its kind, and its place among those of its kind. */
export interface MarkId {
  name: MarkName;
  at: number;
}

interface Props {
  placed: Placed;
  /** The kinds of marks that are shown. */
  steps: readonly Step[];
  /** The kind that is being set; the others are drawn smaller. */
  current: MarkName;
  /** Pixels of the picture for a CSS pixel: handles are as large on the screen at every zoom. */
  unit: number;
  /** The mark under the finger, which is drawn where the finger is. */
  held: { mark: MarkId | undefined; at: Point } | undefined;
  onKey(event: KeyboardEvent, mark: MarkId): void;
  onFocus(mark: MarkId | undefined): void;
}

/** Each mark as a thing of its own, to be held, reached by Tab, named and nudged. */
export default function MarkHandles({ placed, steps, current, unit, held, onKey, onFocus }: Props) {
  return (
    <g>
      {steps.flatMap(({ name, mark, title }) =>
        placed[name].map((point, at) => {
          const isHeld = held?.mark?.name === name && held.mark.at === at;
          const [x, y] = isHeld ? held.at : point;
          const many = placed[name].length > 1;
          return (
            <g
              key={`${name}-${at}`}
              class={`section-mark ${name}`}
              role="button"
              tabindex={0}
              data-mark={`${name}-${at}`}
              aria-label={`${many ? `${mark}, ${at + 1} of ${placed[name].length}` : title}. ${Math.round(x)} across, ${Math.round(y)} down`}
              aria-describedby="section-mark-keys"
              transform={`translate(${x} ${y}) scale(${unit})`}
              onKeyDown={(event) => onKey(event, { name, at })}
              onFocus={() => onFocus({ name, at })}
              onBlur={() => onFocus(undefined)}
            >
              <Handle small={name !== current && !isHeld} />
            </g>
          );
        }),
      )}
      {held && !held.mark && (
        <g class="section-mark" transform={`translate(${held.at[0]} ${held.at[1]}) scale(${unit})`}>
          <Handle />
        </g>
      )}
    </g>
  );
}

/** A ring with an open middle, so that what is marked stays in sight; dark under light. */
const Handle = ({ small = false }) => (
  <>
    <circle class="section-reach" r="22" />
    <g transform={small ? 'scale(.55)' : undefined}>
      <path class="section-under" d={ring} />
      <path class="section-over" d={ring} />
    </g>
  </>
);
const ring = 'M-8 0a8 8 0 1 0 16 0a8 8 0 1 0-16 0M-13 0h9M13 0h-9M0-13v9M0 13v-9';
