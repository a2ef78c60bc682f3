import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCurriculum } from '../../../content/read-curriculum.ts';
import {
  type Arrow,
  arrows,
  trunks,
  withoutDetours,
} from '../../../lib/curriculum/sequence-graph.ts';
import { bead, groove, sound, withChanges } from './sound-course.ts';

/** Who can be reached from whom, by multiplying out: Warshall, written down once more. */
function reachable(all: readonly Arrow[], size: number): boolean[][] {
  const to = Array.from({ length: size }, () => Array<boolean>(size).fill(false));
  for (const arrow of all) (to[arrow.from] as boolean[])[arrow.to] = true;
  for (let k = 0; k < size; k++)
    for (const row of to) if (row[k]) for (let j = 0; j < size; j++) if (to[k]?.[j]) row[j] = true;
  return to;
}

const graphs = fc.integer({ min: 2, max: 12 }).chain((size) =>
  fc
    .uniqueArray(
      fc
        .tuple(fc.nat(size - 1), fc.nat(size - 1))
        .filter(([from, to]) => from < to)
        .map(([from, to]) => ({ from, to })),
      { selector: ({ from, to }) => `${from}-${to}` },
    )
    .map((all) => ({ size, all })),
);

describe('arrows', () => {
  it('lead from the lesson that introduces a skill to those that need it', () => {
    expect(arrows(sound)).toEqual([
      { from: 0, to: 1 },
      { from: 1, to: 2 },
    ]);
  });
});

describe('arrows of a small course', () => {
  it('lead forward only, once for each pair, and from lessons that there are', () => {
    const course = withChanges([
      {
        ...bead,
        skills: { 'do-bead': 'Do', look: 'Look' },
        needs: ['do-gate', 'do-groove', 'fly'],
      },
      { ...groove, needs: ['look', 'do-bead', 'do-groove', 'do-gate'] },
    ]);
    expect(arrows(course)).toEqual([
      { from: 0, to: 1 },
      { from: 0, to: 2 },
      { from: 1, to: 2 },
    ]);
  });
});

describe('trunks of a small graph', () => {
  it('put the short ones next to the list, and one behind the other into one lane', () => {
    const all = [
      { from: 0, to: 5 },
      { from: 0, to: 2 },
      { from: 1, to: 3 },
      { from: 3, to: 4 },
      { from: 2, to: 4 },
    ];
    expect(trunks(all)).toEqual([
      { from: 0, to: [2, 5], lane: 2 },
      { from: 1, to: [3], lane: 0 },
      { from: 2, to: [4], lane: 1 },
      { from: 3, to: [4], lane: 0 },
    ]);
  });
});

describe('withoutDetours', () => {
  it('leaves out an arrow that a longer way shows', () => {
    const all = [
      { from: 0, to: 1 },
      { from: 0, to: 2 },
      { from: 1, to: 2 },
    ];
    expect(withoutDetours(all)).toEqual([all[0], all[2]]);
  });

  it('reaches the same lessons as before', () => {
    fc.assert(
      fc.property(graphs, ({ size, all }) => {
        expect(reachable(withoutDetours(all), size)).toEqual(reachable(all, size));
      }),
    );
  });

  it('keeps no arrow that could be spared', () => {
    fc.assert(
      fc.property(graphs, ({ size, all }) => {
        const kept = withoutDetours(all);
        for (const arrow of kept) {
          const rest = kept.filter((one) => one !== arrow);
          expect(reachable(rest, size)[arrow.from]?.[arrow.to]).toBe(false);
        }
      }),
    );
  });
});

describe('trunks', () => {
  it('draw every arrow once', () => {
    fc.assert(
      fc.property(graphs, ({ all }) => {
        const drawn = trunks(all).flatMap(({ from, to }) => to.map((one) => `${from}-${one}`));
        expect(drawn.sort()).toEqual(all.map(({ from, to }) => `${from}-${to}`).sort());
      }),
    );
  });

  it('never overlap in one lane', () => {
    fc.assert(
      fc.property(graphs, ({ all }) => {
        const list = trunks(all);
        for (const a of list)
          for (const b of list)
            if (a !== b && a.lane === b.lane)
              expect(Math.max(...a.to) <= b.from || Math.max(...b.to) <= a.from).toBe(true);
      }),
    );
  });
});

it('the course fits beside its list on a phone: few lanes', async () => {
  const list = trunks(withoutDetours(arrows(await readCurriculum())));
  expect(Math.max(...list.map(({ lane }) => lane)) + 1).toBeLessThanOrEqual(8);
});
