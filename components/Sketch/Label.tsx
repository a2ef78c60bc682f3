import type { ComponentChildren } from 'preact';
import { ruleOf } from '../../lib/text/inches.ts';
import { type Printing, printQuantity, printStated } from '../../lib/text/quantity-text.ts';
import { convert, type System, type Unit, unitFor } from '../../lib/units.ts';
import Both from '../Units/Both.tsx';

interface Props {
  x: number;
  y: number;
  anchor?: 'start' | 'middle' | 'end';
  bold?: boolean;
  small?: boolean | undefined;
  /** Degrees, clockwise, about the label's own place. */
  turn?: number;
  children: ComponentChildren;
}

/** Letters on a drawing, with a rim of paper so that lines do not run through them. */
export default function Label({ x, y, anchor = 'middle', bold, small, turn, children }: Props) {
  return (
    <text
      x={small ? 0 : x}
      y={small ? 0 : y}
      text-anchor={anchor}
      class={`sketch-label${bold ? ' bold' : ''}`}
      transform={
        small ? `matrix(.7 0 0 .7 ${x} ${y})` : turn ? `rotate(${turn} ${x} ${y})` : undefined
      }
    >
      {children}
    </text>
  );
}

/** A quantity on a drawing or in its caption, in the reader's units. */
export function Size({
  value,
  unit,
  as = 'tspan',
  ...printing
}: { value: number; unit: Unit; as?: 'tspan' | 'span' } & Printing) {
  const text = (system: System) => {
    const to = unitFor(unit, system);
    return printQuantity(convert(value, unit, to), to, printing);
  };
  return <Both as={as} us={text('us')} metric={text('metric')} />;
}

/** A length as it was given: inches as the fraction that they are, if they are one. */
export function Stated({
  value,
  unit,
  as = 'tspan',
}: {
  value: number;
  unit: Unit;
  as?: 'tspan' | 'span';
}) {
  const text = (system: System) => {
    const to = unitFor(unit, system);
    const size = convert(value, unit, to);
    // Off the marks of a rule, nobody reads parts of a thousandth.
    return printStated(ruleOf(size) ? size : Math.round(size * 1000) / 1000, to);
  };
  return <Both as={as} us={text('us')} metric={text('metric')} />;
}
