import type { ComponentChildren, ComponentType } from 'preact';
import type { ClassNeeds } from '../../lib/class/class-needs.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import CutSheet from './CutSheet.tsx';
import HoursSheet from './HoursSheet.tsx';
import MetalSheet from './MetalSheet.tsx';
import PurchaseSheet from './PurchaseSheet.tsx';
import WeekSheet from './WeekSheet.tsx';

/** The sheets of a plan, by their ids, which are also what is printed alone. */
export const sheets = {
  hours: 'Hours',
  purchase: 'Purchase list',
  cut: 'Cut list',
  weeks: 'Week plan',
  metal: 'Where the metal goes',
} as const;
export type SheetId = keyof typeof sheets;

interface Props {
  name: string;
  needs: ClassNeeds;
  prices: ReadonlyMap<string, number>;
  Bars?: ComponentType<DrawingProps>;
  priceBox?: (thing: string) => ComponentChildren;
  /** Buttons under a sheet's heading. */
  actions?: (id: SheetId) => ComponentChildren;
}

/** All sheets, one after the other; each is a page of its own on paper. */
export default function PlanSheets({ name, needs, prices, Bars, priceBox, actions }: Props) {
  const bodies: Record<SheetId, ComponentChildren> = {
    hours: <HoursSheet needs={needs} />,
    purchase: <PurchaseSheet needs={needs} prices={prices} {...(priceBox && { priceBox })} />,
    cut: <CutSheet metal={needs.metal} {...(Bars && { Bars })} />,
    weeks: <WeekSheet needs={needs} />,
    metal: <MetalSheet needs={needs} />,
  };
  return (
    <>
      {(Object.keys(sheets) as SheetId[]).map((id) => (
        <section class="plan-sheet" id={`plan-${id}`} aria-labelledby={`plan-${id}-title`} key={id}>
          <h2 id={`plan-${id}-title`}>
            {sheets[id]} <span class="print-only">· {name}</span>
          </h2>
          {actions?.(id)}
          {bodies[id]}
        </section>
      ))}
    </>
  );
}
