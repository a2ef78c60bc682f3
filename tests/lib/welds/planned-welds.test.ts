/** Plans of fillets and grooves at the very bounds of what they take, and the small sums under them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { signedArea } from '../../../lib/geometry/outline.ts';
import { depositedVolume } from '../../../lib/welds/electrode-deposit.ts';
import { passAreaOf, saidArea } from '../../../lib/welds/pass-area.ts';
import { passesFor } from '../../../lib/welds/passes-for.ts';
import { pipeSize, poundsPerFoot } from '../../../lib/welds/pipe-size.ts';
import { plannedFillet } from '../../../lib/welds/planned-fillet.ts';
import { plannedGroove } from '../../../lib/welds/planned-groove.ts';
import { arcEfficiency, heatGiven } from '../../../lib/welds/run-out.ts';
import { positionRow, rowHolds, rowText } from '../../../lib/welds/weld-position.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('passes', () => {
  it('are as many as the area takes, rounded up, but for the last digits of arithmetic', () => {
    expect([
      passesFor(0, 1),
      passesFor(1, 1),
      passesFor(1 + 1e-10, 1),
      passesFor(1.001, 1),
    ]).toEqual([1, 1, 1, 2]);
    expect([passesFor(3 + 9e-10, 1), passesFor(3 + 1.1e-9, 1)]).toEqual([3, 4]);
  });
  it('are as large as the electrode leaves along its run-out, or as they are given', () => {
    const electrode = {
      diameter: 0.125,
      electrodeLength: 14,
      stub: 2,
      coatingFraction: 0.3,
      recovery: 0.7,
    };
    // 0.7 over 0.7: a core of π/4 in² sixty-fourths, 12 in long, along 6 in.
    expect(passAreaOf({ ...electrode, runOut: 6 })).toBeCloseTo((Math.PI / 4 / 64) * 2, 12);
    expect(depositedVolume({ ...electrode, recovery: 0.35 })).toBeCloseTo(
      (Math.PI / 4 / 64) * 6,
      12,
    );
    expect(passAreaOf({ ...electrode, runOut: 6, passArea: 0.03 })).toBe(0.03);
    expect(passAreaOf({ ...electrode, stub: 13.9, runOut: 6 })).toBeGreaterThan(0);
    for (const stub of [14, 15])
      expect(() => passAreaOf({ ...electrode, stub, runOut: 6 })).toThrow('nothing was melted');
    expect(saidArea(0.0245437)).toBe('{0.0245 in2}');
  });
  it('by ruler and stub give F d² L of heat, four fifths of what the arc does', () => {
    expect(heatGiven({ factor: 0.05, coreDiameter: 3, consumedLength: 300 })).toBeCloseTo(135, 12);
    expect(arcEfficiency).toBe(0.8);
  });
});

describe('a pipe', () => {
  it('weighs 10.68 (D − t) t pounds a foot (ASME B36.10M): NPS 6 schedule 40, 18.97', () => {
    expect(poundsPerFoot(6.625, 0.28)).toBeCloseTo(18.97, 2);
    expect(pipeSize('6', '40')).toEqual({
      outside: { us: 6.625, metric: 168.3 },
      wall: { us: 0.28, metric: 7.11 },
    });
  });
  it('of a schedule that is not printed is refused, and told which there are', () => {
    expect(() => pipeSize('1/2', '120')).toThrow(
      /^NPS 1\/2 has no schedule 120 in ASME B36\.10M, .*; there are .*40, .*160/,
    );
  });
});

describe('the position of a weld', () => {
  it('is one row for any angle, its limits included within the last bits', () => {
    const row = positionRow('groove', 0, 180);
    expect(row.position).toBe('flat');
    const [, most] = row.inclination;
    expect([rowHolds(row, most, 180), rowHolds(row, most + 5e-10, 180)]).toEqual([true, true]);
    expect([rowHolds(row, most + 1e-6, 180), rowHolds(row, -1e-6, 180)]).toEqual([false, false]);
    const [[from, to]] = row.rotation as [readonly [number, number]];
    for (const rotation of [from, to, from - 5e-10, to + 5e-10])
      expect(rowHolds(row, 0, rotation)).toBe(true);
    for (const rotation of [from - 1e-6, to + 1e-6]) expect(rowHolds(row, 0, rotation)).toBe(false);
    expect(rowText(row)).toBe(
      `Area ${row.area}, flat: axis {0 deg} to {15 deg} from level, face {150 deg} to {210 deg}.`,
    );
    expect(rowText(positionRow('groove', 0, 90))).toMatch(
      /, horizontal: axis .* face \{80 deg\} to \{150 deg\} or \{210 deg\} to \{280 deg\}\.$/,
    );
    for (let inclination = 0; inclination <= 90; inclination += 3)
      for (let rotation = 0; rotation <= 360; rotation += 7)
        for (const weld of ['groove', 'fillet'] as const)
          expect(
            positionRow(weld, inclination, rotation),
            `${inclination} ${rotation}`,
          ).toBeDefined();
  });
});

describe('a planned fillet', () => {
  const given = (size: number) => ({ size, given: true });
  const usual = {
    convexity: 0,
    position: 'horizontal',
    largestRoot: 5 / 16,
    thickestFill: 3 / 16,
  } as const;
  it('holds a triangle and a bulge of two thirds of its box', () => {
    fc.assert(
      fc.property(number(0.1, 0.6), number(0, 0.06), (leg, convexity) => {
        const found = plannedFillet({ ...usual, leg, convexity }, given(0.05));
        const area = leg ** 2 / 2 + (2 / 3) * Math.hypot(leg, leg) * convexity;
        expect(found.jointArea).toBeCloseTo(area, 12);
        expect(found.byArea).toBe(passesFor(area, 0.05));
        const drawn = found.map.passes.reduce((sum, { outline }) => sum + signedArea(outline), 0);
        // Chords of the faces lose up to a thousandth of their crowns.
        expect(drawn / 25.4 ** 2 / area).toBeCloseTo(1, 2);
        expect(found.passes.at(-1)?.lowerLeg).toBeCloseTo(leg * 25.4, 9);
        expect(found.beads.reduce((a, b) => a + b, 0)).toBe(found.passes.length);
      }),
      { numRuns: 30 },
    );
  });
  it('takes more passes than its area where one would be thicker than its position allows', () => {
    // One pass of 1/4 in: the root limit bears it; a root of 1/8 in asks for four, leg over √4.
    expect(plannedFillet({ ...usual, leg: 0.25 }, given(1)).passes).toHaveLength(1);
    expect(plannedFillet({ ...usual, leg: 0.25, largestRoot: 0.25 }, given(1)).passes).toHaveLength(
      1,
    );
    const four = plannedFillet({ ...usual, leg: 0.25, largestRoot: 0.125 }, given(1));
    expect([four.byArea, four.passes.length]).toEqual([1, 4]);
    // Three passes in layers 1 + 2: the second is 1 − 1/√3 of the depth, leg over √2.
    const thickness = (leg: number, crown = 0) =>
      (leg * Math.SQRT1_2 + crown) * (1 - Math.sqrt(1 / 3));
    const asked = (thickestFill: number, convexity = 0) =>
      plannedFillet({ ...usual, leg: 0.5, largestRoot: 0.3, convexity, thickestFill }, given(1));
    expect(asked(thickness(0.5) + 1e-9).passes).toHaveLength(3);
    expect(asked(thickness(0.5) - 1e-6).passes.length).toBeGreaterThan(3);
    expect(asked(thickness(0.5, 0.05) + 1e-9, 0.05).passes).toHaveLength(3);
    expect(asked(thickness(0.5, 0.05) - 1e-6, 0.05).passes.length).toBeGreaterThan(3);
  });
  it('runs to three hundred passes, and says at more what to look at', () => {
    const of = (passes: number, isGiven = true) =>
      plannedFillet(
        { ...usual, leg: 2, largestRoot: 9, thickestFill: 9 },
        {
          size: 2 / passes + 1e-12,
          given: isGiven,
        },
      );
    expect(of(300).passes).toHaveLength(300);
    const refused = (given: boolean) => {
      try {
        of(301, given);
      } catch (thrown) {
        return thrown;
      }
      return undefined;
    };
    expect(refused(true)).toMatchObject({
      message: 'This takes more than 300 passes; look at the leg and at the area of a pass again',
      field: 'passArea',
    });
    expect(refused(false)).toMatchObject({ field: 'leg' });
  });
});

describe('a planned groove', () => {
  const groove = {
    thickness: 0.5,
    rootOpening: 0.25,
    includedAngle: 45,
    rootFace: 0,
    capHeight: 0.0625,
  };
  const usual = { rootPassThickness: 0.125, fillPassThickness: 0.125 };
  const plan = (
    part: Partial<typeof groove> = {},
    passes: Partial<typeof usual> = {},
    { size = 0.05, given = true, backing = 'strip' as 'strip' | 'open root' } = {},
  ) =>
    plannedGroove(
      { ...groove, ...part },
      backing,
      'flat',
      { ...usual, ...passes },
      { size, given },
    );
  const refused = (...asked: Parameters<typeof plan>) => {
    try {
      plan(...asked);
    } catch (thrown) {
      return thrown as { field: string; message: string };
    }
    return undefined;
  };
  it('is opened by at least a hundredth of an inch at its face', () => {
    const narrow = (rootOpening: number) =>
      refused({ rootOpening, includedAngle: 0, capHeight: 0 })?.message;
    expect(narrow(0.0099)).toBe('There is no groove to fill: open the root or bevel the edges');
    expect(narrow(0.0101)).toBeUndefined();
  });
  it('bears a root face as thick as its plate, and a cap half as high as its face is wide', () => {
    expect(refused({ rootFace: 0.5 })).toBeUndefined();
    expect(refused({ rootFace: 0.51 })).toMatchObject({ field: 'rootFace' });
    expect(refused({ includedAngle: 0, capHeight: 0.125 })).toBeUndefined();
    expect(refused({ includedAngle: 0, capHeight: 0.126 })).toMatchObject({ field: 'capHeight' });
  });
  it('has heights from root to surface in inches, passes in millimeters, and says when it was held to a limit', () => {
    const found = plan();
    expect(found.heights).toHaveLength(4);
    expect(found.heights[0]).toBeCloseTo(0.125, 12);
    expect(found.heights.at(-1)).toBeCloseTo(0.5, 12);
    expect(found.clipped).toBe(false);
    const area =
      0.25 * 0.5 + 0.25 * Math.tan(Math.PI / 8) + (2 / 3) * (0.25 + Math.tan(Math.PI / 8)) * 0.0625;
    expect(found.jointArea).toBeCloseTo(area, 12);
    const drawn = found.map.passes.reduce((sum, { outline }) => sum + signedArea(outline), 0);
    expect(drawn / 25.4 ** 2 / area).toBeCloseTo(1, 3);
    expect(found.beads.reduce((a, b) => a + b, 0)).toBe(passesFor(area, 0.05));
    // Flat: root 3/8 in or 10 mm, fill 3/16 in or 5 mm, whichever is more (AWS D1.1 prequalified limits).
    const [root, fill] = [10 / 25.4, 5 / 25.4];
    expect(plan({}, { rootPassThickness: root }).clipped).toBe(false);
    expect(plan({}, { rootPassThickness: root + 1e-6 }).clipped).toBe(true);
    expect(plan({}, { fillPassThickness: fill }).clipped).toBe(false);
    expect(plan({}, { fillPassThickness: fill + 1e-6 }).clipped).toBe(true);
    expect(plan({ thickness: 1 }, { rootPassThickness: 0.45 }).heights[0]).toBeCloseTo(root, 12);
  });
  it('of closed root faces begins where they end', () => {
    expect(plan({ rootOpening: 0, rootFace: 0.25, includedAngle: 60 }).heights[0]).toBeCloseTo(
      0.375,
      12,
    );
    expect(plan({ rootOpening: 0.125, rootFace: 0.25, includedAngle: 60 }).heights[0]).toBeCloseTo(
      0.125,
      12,
    );
  });
  it('keeps a single root pass over an open root, not on a strip', () => {
    const wide = { rootOpening: 0.5, includedAngle: 20 };
    const of = (backing: 'strip' | 'open root') =>
      plan(wide, { rootPassThickness: 0.3 }, { size: 0.02, backing }).beads[0];
    expect(of('open root')).toBe(1);
    expect(of('strip')).toBeGreaterThan(1);
  });
  it('runs to three hundred passes, and says at more what to look at', () => {
    const area = plan().jointArea;
    const of = (passes: number, given = true) =>
      [{}, {}, { size: area / passes + 1e-12, given }] as const;
    expect(plan(...of(300)).passes).toHaveLength(300);
    expect(refused(...of(301))).toMatchObject({ field: 'passArea' });
    expect(refused(...of(301, false))).toMatchObject({ field: 'thickness' });
  });
});
