/** The pixels of a picture, seen through a map that squares it up. */
import { type Homography, inverse } from '../geometry/homography.ts';
import type { Size } from './squared-picture.ts';

export interface Pixels extends Size {
  /** Red, green, blue and opacity of each pixel, line by line. */
  data: Uint8ClampedArray;
}

/** What lies beside the picture: the dark that it is shown on. */
const beside = [28, 31, 33, 255] as const;

/** The source seen through `view`, each pixel a mix of the four that it falls between. */
export function warpedPixels(source: Pixels, view: Homography, { width, height }: Size): Pixels {
  const data = new Uint8ClampedArray(4 * width * height);
  const back = inverse(view);
  const [[a, b, c], [d, e, f], [g, h, i]] = back;
  const from = source.data;
  const [lastX, lastY, line] = [source.width - 1, source.height - 1, 4 * source.width];
  let to = 0;
  for (let row = 0; row < height; row++) {
    const y = row + 0.5;
    for (let column = 0; column < width; column++, to += 4) {
      const x = column + 0.5;
      const depth = g * x + h * y + i;
      // A pixel's color stands in its middle.
      const u = (a * x + b * y + c) / depth - 0.5;
      const v = (d * x + e * y + f) / depth - 0.5;
      if (!(depth > 0 && u > -0.5 && v > -0.5 && u < lastX + 0.5 && v < lastY + 0.5)) {
        for (let part = 0; part < 4; part++) data[to + part] = beside[part] as number;
        continue;
      }
      const [left, top] = [Math.max(0, Math.floor(u)), Math.max(0, Math.floor(v))];
      const [right, bottom] = [Math.min(lastX, left + 1), Math.min(lastY, top + 1)];
      const [shareX, shareY] = [Math.max(0, u - left), Math.max(0, v - top)];
      for (let part = 0; part < 4; part++) {
        const upper =
          (from[top * line + 4 * left + part] as number) * (1 - shareX) +
          (from[top * line + 4 * right + part] as number) * shareX;
        const lower =
          (from[bottom * line + 4 * left + part] as number) * (1 - shareX) +
          (from[bottom * line + 4 * right + part] as number) * shareX;
        data[to + part] = upper * (1 - shareY) + lower * shareY;
      }
    }
  }
  return { data, width, height };
}
