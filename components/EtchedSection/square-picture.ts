import type { Homography } from '../../lib/geometry/homography.ts';
import { type SquaredFrame, squaredFrame } from '../../lib/section/squared-picture.ts';
import { warpedPixels } from '../../lib/section/warped-pixels.ts';
import type { Picture } from './picture.ts';

export interface Squared {
  picture: Picture;
  frame: SquaredFrame;
}

/** Longest side of the redrawn picture: what a phone warps within a second. */
const longest = 1800;

/**
 * The picture as if taken straight from above. Undefined where the browser gives no canvas, or the
 * corners no picture.
 * @param map from the picture to millimeters
 */
export async function squarePicture(
  picture: Picture,
  map: Homography,
  rectangle: { width: number; height: number },
): Promise<Squared | undefined> {
  const frame = squaredFrame(map, picture, rectangle, longest);
  const sheet = frame && canvasOf(picture.width, picture.height);
  if (!frame || !sheet) return undefined;
  const image = new Image();
  image.src = picture.address;
  await image.decode();
  sheet.drawImage(image, 0, 0, picture.width, picture.height);
  const source = sheet.getImageData(0, 0, picture.width, picture.height);
  const pixels = warpedPixels(source, frame.view, frame);
  const target = canvasOf(frame.width, frame.height);
  if (!target) return undefined;
  const made = target.createImageData(frame.width, frame.height);
  made.data.set(pixels.data);
  target.putImageData(made, 0, 0);
  const blob = await new Promise<Blob | null>((done) =>
    target.canvas.toBlob(
      done,
      picture.blob.type === 'image/png' ? 'image/png' : 'image/jpeg',
      0.92,
    ),
  );
  // Gives a phone its memory back.
  for (const one of [sheet, target]) one.canvas.width = one.canvas.height = 0;
  if (!blob) return undefined;
  const { width, height } = frame;
  return {
    picture: { ...picture, width, height, blob, address: URL.createObjectURL(blob) },
    frame,
  };
}

function canvasOf(width: number, height: number): CanvasRenderingContext2D | null {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [width, height];
  return canvas.getContext('2d', { willReadFrequently: true });
}
