/** Handlers for a knob that is dragged round a center, in the units of a sheet 320 wide. */
import { sheetWidth } from '../Sketch/Sketch.tsx';

type Pointed = Omit<PointerEvent, 'currentTarget'> & { currentTarget: SVGElement };

/** Calls `turn` with clock angles, from the top, in steps of five degrees. */
export const dial = (x: number, y: number, turn: (degrees: number, knob: Element) => void) => ({
  // A finger that turns the dial must not scroll the page.
  onTouchStart: (event: Event) => event.preventDefault(),
  onPointerDown: ({ currentTarget, pointerId }: Pointed) =>
    currentTarget.setPointerCapture(pointerId),
  onPointerMove: ({ currentTarget, pointerId, clientX, clientY }: Pointed) => {
    const box = currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (!box || !currentTarget.hasPointerCapture(pointerId)) return;
    const units = sheetWidth / box.width;
    const [right, down] = [(clientX - box.left) * units - x, (clientY - box.top) * units - y];
    const degrees = (Math.atan2(right, -down) * 180) / Math.PI;
    turn((Math.round(degrees / 5) * 5 + 360) % 360, currentTarget);
  },
});
