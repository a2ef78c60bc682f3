/** An electrode as two outlines: its covering, and the core wire from arc to stub. */
import { round } from './Sketch.tsx';

/** From the tip at `x`, `y` on the sheet, leaning to `degrees` counterclockwise from the right. */
export function electrode(x: number, y: number, degrees: number, length: number) {
  const turn = (degrees * Math.PI) / 180;
  const at = (along: number, across: number) =>
    `${round(x + along * Math.cos(turn) - across * Math.sin(turn))} ${round(
      y - along * Math.sin(turn) - across * Math.cos(turn),
    )}`;
  return {
    covering: `M${at(3, 4)}L${at(0.75 * length, 4)}L${at(0.75 * length, -4)}L${at(3, -4)}Z`,
    core: `M${at(6, 0)}L${at(length, 0)}`,
  };
}
