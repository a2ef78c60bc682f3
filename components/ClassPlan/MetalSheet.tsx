import type { ClassNeeds } from '../../lib/class/class-needs.ts';
import PlanTable from './PlanTable.tsx';
import Size from './Size.tsx';

/** Where the metal goes, and what using it again saves: scrap is the budget. */
export default function MetalSheet({ needs: { parts, saved } }: { needs: ClassNeeds }) {
  const share = (part: number) =>
    parts.bought > 0 ? `${Math.round((100 * part) / parts.bought)} %` : '–';
  const line = (name: string, part: number) => [
    name,
    <Size value={part} unit="lb" digits={4} />,
    share(part),
  ];
  return (
    <>
      <PlanTable
        caption="Of the metal bought"
        columns={['Part', 'Weight|', 'Share|']}
        rows={[
          line('Coupons', parts.coupons),
          line('Spare pieces', parts.sparePieces),
          line('Faced off rings', parts.facing),
          line('Saw cuts', parts.cuts),
          line('Trimmed ends', parts.trim),
          line('Short ends left', parts.rest),
          line('Bought', parts.bought),
        ]}
      />
      <PlanTable
        caption="Not bought, because coupons are used again"
        columns={['How', 'Weight|']}
        rows={[
          ['Pads welded on both sides', <Size value={saved.sides} unit="lb" digits={4} />],
          ['Rings cut out and beveled again', <Size value={saved.rings} unit="lb" digits={4} />],
          [
            'All passes of a fillet in one tee, not a tee for each',
            <Size value={saved.passes} unit="lb" digits={4} />,
          ],
        ]}
      />
    </>
  );
}
