import type { ComponentType } from 'preact';
import type { SectionMetal } from '../../lib/class/metal.ts';
import type { DrawingProps } from '../Drawing/DrawnBoth.tsx';
import Said from '../Reasons/Said.tsx';
import PlanTable from './PlanTable.tsx';
import Size from './Size.tsx';

interface Props {
  metal: readonly SectionMetal[];
  /** Draws the bars, where the page can afford it. */
  Bars?: ComponentType<DrawingProps>;
}

/** What to saw from which bar, section by section. */
export default function CutSheet({ metal, Bars }: Props) {
  return (
    <>
      {metal.map(({ section, plan, stock, pieces, long }) => (
        <section class="plan-cut" key={section}>
          <h3>
            <Said text={section} />
          </h3>
          {long !== undefined && (
            <p class="problem">
              A piece of <Size value={long} unit="in" /> is longer than a trimmed length. Type
              longer stock.
            </p>
          )}
          {plan && (
            <>
              <p>
                {plan.bars} {plan.bars === 1 ? 'length' : 'lengths'} of{' '}
                <Size value={stock.length} unit="in" digits={4} />, cut of{' '}
                <Size value={stock.kerf} unit="in" />, trim of <Size value={stock.trim} unit="in" />
                .{' '}
                {plan.bars === plan.lowerBound
                  ? 'No plan needs fewer.'
                  : `No plan needs fewer than ${plan.lowerBound}.`}{' '}
                {wastePercent(plan, stock.length)} % is not in pieces.
              </p>
              {Bars && (
                <figure class="drawing">
                  <Bars
                    given={{ stockLength: stock.length, kerf: stock.kerf, trim: stock.trim }}
                    results={{ cuts: plan.patterns }}
                  />
                </figure>
              )}
              <PlanTable
                caption={`${pieces.reduce((sum, { count }) => sum + count, 0)} pieces`}
                columns={['Lengths cut alike|', 'From each', 'Left over']}
                rows={plan.patterns.map(({ bars, pieces: cut, used }) => [
                  bars,
                  cut.map(({ length, count }, at) => (
                    <>
                      {at > 0 && ', '}
                      {count} × <Size value={length} unit="in" />
                    </>
                  )),
                  <Size value={leftOver(stock, cut, used)} unit="in" />,
                ])}
              />
            </>
          )}
        </section>
      ))}
      <p class="quiet">
        Mark and measure each piece after the cut before; marking the whole bar at once loses the
        cuts.
      </p>
    </>
  );
}

const wastePercent = (plan: NonNullable<SectionMetal['plan']>, length: number): number => {
  const used = plan.patterns.reduce((sum, it) => sum + it.bars * it.used, 0);
  return Math.round(100 - (100 * used) / (plan.bars * length));
};

const leftOver = (
  { length, trim, kerf }: SectionMetal['stock'],
  cut: readonly { count: number }[],
  used: number,
): number => Math.max(0, length - trim - used - kerf * cut.reduce((sum, it) => sum + it.count, 0));
