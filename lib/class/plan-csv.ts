/** The lists of a class plan as tables for a spreadsheet, in the reader's units. */
import { type Cell, writeCsv } from '../csv.ts';
import { speak } from '../text/say.ts';
import { convert, type System, type Unit, unitFor } from '../units.ts';
import type { ClassNeeds } from './class-needs.ts';
import { costsOf } from './costs.ts';
import { boughtMass } from './metal.ts';

const inUnit = (value: number, unit: Unit, system: System): number =>
  Number(convert(value, unit, unitFor(unit, system)).toPrecision(6));
const plain = (text: string, system: System): string =>
  speak(text, system).replaceAll('\u00a0', ' ');

/** What to buy: bars, cans and discs. */
export function purchaseCsv(
  needs: ClassNeeds,
  prices: ReadonlyMap<string, number>,
  system: System,
): string {
  const mass = unitFor('lb', system);
  const { metal, rods, preparation, store } = needs;
  const cost = new Map(costsOf(needs, prices).lines.map((line) => [line.thing, line.cost]));
  const discs: [string, number][] = [
    ['Grinding disc', preparation.grindingDiscs],
    ['Flap disc', preparation.flapDiscs],
  ];
  return writeCsv(
    ['what', 'buy', 'of', 'pieces', `weight ${mass}`, 'price of one', 'cost'],
    [
      ...metal.map((it): Cell[] => [
        plain(it.section, system),
        it.plan?.bars,
        `${inUnit(it.stock.length, 'in', system)} ${unitFor('in', system)}`,
        it.pieces.reduce((sum, { count }) => sum + count, 0),
        inUnit(boughtMass(it), 'lb', system),
        prices.get(it.section),
        cost.get(it.section),
      ]),
      ...rods.map((it): Cell[] => [
        plain(it.kind, system),
        it.cans,
        'ten-pound can',
        it.pieces,
        inUnit(it.pounds, 'lb', system),
        prices.get(it.kind),
        cost.get(it.kind),
      ]),
      ...discs.map(([name, count]): Cell[] => [
        name,
        count,
        'piece',
        count,
        undefined,
        prices.get(name),
        cost.get(name),
      ]),
      ...store.tools.map(({ tool, count }): Cell[] => [tool, count, 'piece', count]),
    ],
  );
}

/** What to saw: a row for each length on each kind of bar. */
export function cutCsv({ metal }: ClassNeeds, system: System): string {
  const unit = unitFor('in', system);
  return writeCsv(
    ['section', `bar ${unit}`, 'bars cut alike', 'pieces from each', `length ${unit}`],
    metal.flatMap(({ section, stock, plan }) =>
      (plan?.patterns ?? []).flatMap(({ bars, pieces }) =>
        pieces.map(({ length, count }): Cell[] => [
          plain(section, system),
          inUnit(stock.length, 'in', system),
          bars,
          count,
          inUnit(length, 'in', system),
        ]),
      ),
    ),
  );
}

/** Who welds what when: a row for each exercise in each week; week 0 is what finds no room. */
export function weekCsv({ weeks }: ClassNeeds): string {
  return writeCsv(
    ['week', 'exercise', 'attempts', 'booth hours asked', 'booth hours there'],
    weeks.flatMap(({ number, demand, supply, attempts }) =>
      attempts.map(({ turn, count }): Cell[] => [
        number,
        turn.exercise.slug,
        count,
        Number(demand.toFixed(2)),
        Number(supply.toFixed(2)),
      ]),
    ),
  );
}
