import type { ComponentChildren } from 'preact';
import type { ClassNeeds } from '../../lib/class/class-needs.ts';
import { costsOf } from '../../lib/class/costs.ts';
import { boughtMass } from '../../lib/class/metal.ts';
import Said from '../Reasons/Said.tsx';
import PlanTable from './PlanTable.tsx';
import Size from './Size.tsx';

interface Props {
  needs: ClassNeeds;
  prices: ReadonlyMap<string, number>;
  /** Draws the box for the price of one, where prices can be typed. */
  priceBox?: (thing: string) => ComponentChildren;
}

/** What to buy: bars, cans and discs, with what they cost where prices are known. */
export default function PurchaseSheet({ needs, prices, priceBox }: Props) {
  const { lines, total, priced } = costsOf(needs, prices);
  const cost = new Map(lines.map((line) => [line.thing, line]));
  const money = (thing: string): ComponentChildren[] => {
    const line = cost.get(thing);
    const text = line?.cost === undefined ? '' : amount(line.cost);
    if (priceBox) return [priceBox(thing), text];
    return priced ? [text] : [];
  };
  const moneyColumns = priceBox ? ['Price of one', 'Cost|'] : priced ? ['Cost|'] : [];
  const { preparation, metal, rods, store } = needs;
  return (
    <>
      {metal.length > 0 && (
        <PlanTable
          caption="Metal"
          columns={['Section', 'To buy', 'Pieces|', 'At least|', 'Weight|', ...moneyColumns]}
          rows={metal.map((it) => [
            <Said text={it.section} />,
            it.plan ? (
              <>
                {it.plan.bars} × <Size value={it.stock.length} unit="in" digits={4} />
              </>
            ) : (
              <span class="problem">
                A piece of <Size value={it.long ?? 0} unit="in" /> is longer than a trimmed length
                of <Size value={it.stock.length} unit="in" digits={4} />
              </span>
            ),
            it.pieces.reduce((sum, { count }) => sum + count, 0),
            it.plan?.lowerBound ?? '–',
            <Size value={boughtMass(it)} unit="lb" digits={4} />,
            ...money(it.section),
          ])}
        />
      )}
      {rods.length > 0 && (
        <PlanTable
          caption="Electrodes, spare included"
          columns={[
            'Kind',
            'Cans of ten pounds|',
            'Pieces|',
            'Burned|',
            'Weight|',
            ...moneyColumns,
          ]}
          rows={rods.map((it) => [
            <Said text={it.kind} />,
            it.cans,
            it.pieces,
            it.burned,
            <Size value={it.pounds} unit="lb" digits={4} />,
            ...money(it.kind),
          ])}
        />
      )}
      {preparation.grindingDiscs + preparation.flapDiscs > 0 && (
        <PlanTable
          caption="Discs"
          columns={['Disc', 'To buy|', ...moneyColumns]}
          rows={[
            ['Grinding disc', preparation.grindingDiscs, ...money('Grinding disc')],
            ['Flap disc', preparation.flapDiscs, ...money('Flap disc')],
          ]}
        />
      )}
      {store.tools.length > 0 && (
        <PlanTable
          caption="To have ready, by custom"
          columns={['Thing', 'Count|', 'Counted']}
          rows={[
            ...store.tools.map(({ tool, count, why }) => [tool, count, why]),
            ...(store.ovenPounds > 0
              ? [
                  [
                    'Holding oven',
                    <Size value={store.ovenPounds} unit="lb" digits={3} />,
                    'low-hydrogen electrodes of the fullest evening, in whole cans',
                  ],
                ]
              : []),
          ]}
        />
      )}
      {priced && (
        <p class="plan-total">
          <b>{amount(total)}</b> for what has a price
          {lines.some((line) => line.cost === undefined) &&
            `; ${lines.filter((line) => line.cost === undefined).length} lines have none`}
        </p>
      )}
      <p class="quiet">
        <Said text={remarks} />
      </p>
    </>
  );
}

const remarks =
  'At least: no cutting plan needs fewer bars. Weights are of nominal sizes; electrodes are counted {14 in} long. Discs by custom: a grinding disc for two grooves or six tees, a flap disc for eight coupons. A whole bar of more than {50 lb} takes two people, and a length of pipe a hoist.';

const amount = (value: number): string => value.toFixed(2);
