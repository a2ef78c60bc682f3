/** A made-up photograph of a section: where a tilted camera and an unsteady hand put its marks. */
import type { Corners } from '../../../lib/geometry/homography.ts';
import type { Point } from '../../../lib/geometry/outline.ts';
import type { PicturePlane } from '../../../lib/section/picture-plane.ts';

/**
 * @param by what sets the scale; a picture scaled by a distance is taken straight on
 * @param size millimeters for a unit of the section as it is drawn
 */
export function photographed(random: () => number, by: PicturePlane['by'], size: number) {
  const between = (low: number, high: number) => low + (high - low) * random();
  const normal = () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
  /** A pinhole camera at 300 mm or more, its section in millimeters. */
  const photograph = (tilt: number, lean: number) => {
    const turn = between(0, 7);
    const [away, focus] = [between(300, 500), between(15_000, 25_000)];
    const mirror = random() < 0.5 ? -1 : 1;
    return ([x, y]: Point): Point => {
      const [u, v] = [
        x * Math.cos(turn) - mirror * y * Math.sin(turn),
        x * Math.sin(turn) + mirror * y * Math.cos(turn),
      ];
      const depth = away + u * Math.sin(lean) * Math.cos(tilt) + v * Math.sin(tilt);
      const across = u * Math.cos(lean) - v * Math.sin(lean) * Math.sin(tilt);
      return [1000 + (focus * across) / depth, 750 + (focus * v * Math.cos(tilt)) / depth];
    };
  };
  const camera =
    by === 'rectangle' ? photograph(between(-0.5, 0.5), between(-0.5, 0.5)) : photograph(0, 0);
  const markingError = between(0.5, 3);
  const seen = ([x, y]: Point): Point => {
    const [across, down] = camera([x * size, y * size]);
    return [across + markingError * normal(), down + markingError * normal()];
  };
  const lengthError = between(0, 0.1);
  const said = (length: number) => length + lengthError * normal();
  const at = ([x, y]: Point) => seen([x / size, y / size]);
  const [width, height] = [between(20, 40), between(15, 30)];
  const plane: PicturePlane =
    by === 'distance'
      ? { by, ends: [at([-10, -8]), at([15, -8])], length: said(25), lengthError }
      : {
          by,
          corners: [
            [-15, -12],
            [width - 15, -12],
            [width - 15, height - 12],
            [-15, height - 12],
          ].map((corner) => at(corner as unknown as Point)) as unknown as Corners,
          width: said(width),
          height: said(height),
          lengthError,
        };
  return { seen, plane, markingError, photograph };
}
