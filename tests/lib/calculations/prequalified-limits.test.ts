import { describe, expect, it } from 'vitest';
import prequalifiedLimits from '../../../lib/calculations/prequalified-limits.ts';
import { positions } from '../../../lib/tables/prequalified-limits-d1.1.ts';

const limits = (
  position: (typeof positions)[number],
  electrodeKind: 'low-hydrogen' | 'not low-hydrogen',
) => prequalifiedLimits.compute({ position, electrodeKind });

describe('prequalified-limits', () => {
  it.each(positions)(
    'holds low-hydrogen electrodes to the note in no position but two: %s',
    (position) => {
      const { because: _, ...low } = limits(position, 'low-hydrogen');
      const { because: __, ...other } = limits(position, 'not low-hydrogen');
      const held = position === 'vertical' || position === 'overhead';
      if (!held) expect(low).toEqual(other);
      else
        for (const name of ['filletDiameter', 'grooveDiameter', 'rootPassDiameter'] as const) {
          expect(low[name]).toEqual({ us: 5 / 32, metric: 4 });
          expect(other[name]).toEqual({ us: 3 / 16, metric: 4.8 });
        }
      expect(low.singlePassFillet).toEqual(other.singlePassFillet);
    },
  );

  /** The table once more, typed from its columns: inches and millimeters, F, H, V, OH. */
  it('holds every printed pair, to the last digit', () => {
    const column = (
      name:
        | 'filletDiameter'
        | 'grooveDiameter'
        | 'rootPassThickness'
        | 'fillPassThickness'
        | 'singlePassFillet',
    ) =>
      positions.map((position) => {
        const { us, metric } = limits(position, 'not low-hydrogen')[name];
        return `${us * 16}/16 ${metric}`;
      });
    expect(column('filletDiameter')).toEqual(['5/16 8', '4/16 6.4', '3/16 4.8', '3/16 4.8']);
    expect(column('grooveDiameter')).toEqual(['4/16 6.4', '3/16 4.8', '3/16 4.8', '3/16 4.8']);
    expect(column('rootPassThickness')).toEqual(['6/16 10', '5/16 8', '8/16 12', '5/16 8']);
    expect(column('fillPassThickness')).toEqual(['3/16 5', '3/16 5', '3/16 5', '3/16 5']);
    expect(column('singlePassFillet')).toEqual(['6/16 10', '5/16 8', '8/16 12', '5/16 8']);
  });

  it('says whether the note was used or passed over', () => {
    const kinds = (...of: Parameters<typeof limits>) =>
      limits(...of).because.map(({ kind }) => kind);
    expect(kinds('flat', 'low-hydrogen')).toEqual(['row', 'passed']);
    expect(kinds('vertical', 'not low-hydrogen')).toEqual(['row', 'passed']);
    expect(kinds('overhead', 'low-hydrogen')).toEqual(['row', 'rule']);
  });
});
