/** Which part of a picture is seen, and how large. Pure; lengths on the screen are CSS pixels. */
import type { Point } from '../../lib/geometry/outline.ts';

export interface Size {
  width: number;
  height: number;
}

export interface View {
  /** The point of the picture that stands in the middle. */
  middle: Point;
  /** CSS pixels for a pixel of the picture. */
  zoom: number;
}

const closest = 12;

export const wholePicture = (picture: Size, box: Size): View => ({
  middle: [picture.width / 2, picture.height / 2],
  zoom: Math.min(box.width / picture.width, box.height / picture.height),
});

/** The picture never leaves the box altogether, and is never smaller than whole. */
export function kept({ middle, zoom }: View, picture: Size, box: Size): View {
  const whole = wholePicture(picture, box).zoom;
  return {
    middle: [
      Math.max(0, Math.min(picture.width, middle[0])),
      Math.max(0, Math.min(picture.height, middle[1])),
    ],
    zoom: Math.max(whole, Math.min(Math.max(closest, 2 * whole), zoom)),
  };
}

/** Where a place in the box, from its left upper corner, lies in the picture. */
export const pictureAt = ({ middle, zoom }: View, box: Size, [x, y]: Point): Point => [
  middle[0] + (x - box.width / 2) / zoom,
  middle[1] + (y - box.height / 2) / zoom,
];

/** The view that shows `point` of the picture at the place `at` of the box. */
export const showing = (point: Point, at: Point, zoom: number, box: Size): View => ({
  middle: [point[0] - (at[0] - box.width / 2) / zoom, point[1] - (at[1] - box.height / 2) / zoom],
  zoom,
});

/** Larger or smaller around a place of the box that stands still. */
export const zoomed = (view: View, box: Size, at: Point, factor: number): View =>
  showing(pictureAt(view, box, at), at, view.zoom * factor, box);

export function viewBox({ middle, zoom }: View, box: Size): string {
  const [width, height] = [box.width / zoom, box.height / zoom];
  return `${middle[0] - width / 2} ${middle[1] - height / 2} ${width} ${height}`;
}
