import type { ComponentChildren } from 'preact';

interface Props {
  /** Height of the drawing on a sheet 320 wide; all strokes and letters are sized for that. */
  height: number;
  /** What it is, without quantities: it cannot follow the reader's units. */
  name: string;
  children: ComponentChildren;
  /** What moves it, in a live form. */
  handles?: ComponentChildren;
  /** The same numbers in words, under the drawing. */
  caption: ComponentChildren;
}

/** Width of every sheet, in its own units: one unit is a CSS pixel on the narrowest phone. */
export const sheetWidth = 320;

/** The sheet of every drawing: line work in the ink of the page, named, with its numbers in words. */
export default function Sketch({ height, name, children, handles, caption }: Props) {
  return (
    <>
      <svg
        class="sketch"
        viewBox={`0 0 ${sheetWidth} ${round(height)}`}
        role="img"
        aria-label={name}
      >
        {children}
      </svg>
      {handles}
      <figcaption>{caption}</figcaption>
    </>
  );
}

/** One decimal: a tenth of a pixel is finer than any screen shows. */
export const round = (value: number): number => Math.round(value * 10) / 10;
