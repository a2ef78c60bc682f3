import { describe, expect, it } from 'vitest';
import groovePosition from '../../../lib/calculations/groove-position.ts';
import { positionRows } from '../../../lib/tables/weld-positions.ts';
import { rowHolds } from '../../../lib/welds/weld-position.ts';

/** Every whole degree and a half: inside the areas, never on a limit. */
const pairs = Array.from({ length: 90 * 360 }, (_, index) => ({
  axisInclination: (index % 90) + 0.5,
  faceRotation: Math.floor(index / 90) + 0.5,
}));

describe.each(['groove', 'fillet'] as const)('the %s figure', (weld) => {
  it('covers every pair of angles once, but for shared limits', () => {
    const rows = positionRows[weld];
    const odd = pairs.filter(
      ({ axisInclination, faceRotation }) =>
        rows.filter((row) => rowHolds(row, axisInclination, faceRotation)).length !== 1,
    );
    expect(odd).toEqual([]);
  });
  it('leaves no gap on its limits', () => {
    for (const axis of [0, 15, 80, 90])
      for (const face of [0, 80, 125, 150, 210, 235, 280, 360])
        expect(
          positionRows[weld].filter((row) => rowHolds(row, axis, face)).length,
        ).toBeGreaterThan(0);
  });
});

describe('groove-position', () => {
  it('agrees with the slopes and rotations of ISO 6947, Tables 1 and 2 (from memory)', () => {
    // ISO counts the rotation from a main position; here as the tilt of the face from up.
    const iso = {
      groove: (slope: number, tilt: number) => {
        if (slope > 80) return 'vertical'; // PF, PG: S ±10 of plumb, any rotation
        if (tilt > 100) return 'overhead'; // PE: S ±80, R ±80
        if (slope > 15) return 'vertical'; // PF, PG: S to 75 off plumb, R ±100
        return tilt < 30 ? 'flat' : 'horizontal'; // PA: R ±30; PC at 90: +60 and −10
      },
      fillet: (slope: number, tilt: number) => {
        if (slope > 80) return 'vertical'; // PF, PG
        if (tilt > 55) return 'overhead'; // PD at 135: 55 to 145; PE: ±35
        if (slope > 15) return 'vertical'; // PF, PG: R ±55
        return tilt < 30 ? 'flat' : 'horizontal'; // PA: ±30; PB at 45: 30 to 55
      },
    };
    for (const weld of ['groove', 'fillet'] as const) {
      const odd = pairs.filter(
        ({ axisInclination, faceRotation }) =>
          groovePosition.compute({ axisInclination, faceRotation, weld }).position !==
          iso[weld](axisInclination, Math.abs(faceRotation - 180)),
      );
      expect(odd).toEqual([]);
    }
  });

  it('names the neighbors on a shared limit', () => {
    const { position, because } = groovePosition.compute({
      axisInclination: 15,
      faceRotation: 150,
      weld: 'groove',
    });
    expect(position).toBe('flat');
    expect(because.filter(({ kind }) => kind === 'passed')).toHaveLength(2);
  });
});
