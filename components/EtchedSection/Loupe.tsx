import type { Point } from '../../lib/geometry/outline.ts';
import type { Picture } from './picture.ts';
import { type Size, type View, wholePicture } from './view-window.ts';

interface Props {
  picture: Picture;
  at: Point;
  view: View;
  box: Size;
}

/** What lies under the finger, three times as large, in the corner where the finger is not. */
export default function Loupe({ picture, at, view, box }: Props) {
  const least = 3 * wholePicture(picture, box).zoom;
  const across = 128 / Math.max(least, Math.min(24, 3 * view.zoom));
  const [x, y] = at;
  const left = (x - view.middle[0]) * view.zoom > 0;
  return (
    <svg
      class={left ? 'section-loupe left' : 'section-loupe'}
      viewBox={`${x - across / 2} ${y - across / 2} ${across} ${across}`}
      aria-hidden="true"
    >
      <image href={picture.address} width={picture.width} height={picture.height} />
      <g transform={`translate(${x} ${y}) scale(${across / 128})`}>
        <path class="section-under" d={cross} />
        <path class="section-over" d={cross} />
      </g>
    </svg>
  );
}
const cross = 'M-40 0h34M40 0h-34M0-40v34M0 40v-34';
