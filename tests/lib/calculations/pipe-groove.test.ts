import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import pipeGroove from '../../../lib/calculations/pipe-groove.ts';
import {
  type Nps,
  npsSizes,
  pipeRows,
  type Schedule,
  schedules,
} from '../../../lib/tables/pipe-b36.10.ts';

const pipes = npsSizes.flatMap((nps) =>
  schedules.flatMap((schedule) => (pipeRows[nps].walls[schedule] ? [{ nps, schedule }] : [])),
);
const joint = fc.record({
  pipe: fc.constantFrom(...pipes),
  bevelAngle: fc.double({ min: 0, max: 60, noNaN: true }),
  rootOpening: fc.double({ min: 0, max: 0.5, noNaN: true }),
  face: fc.double({ min: 0, max: 1, noNaN: true }),
  capHeight: fc.double({ min: 0, max: 0.25, noNaN: true }),
});

/** The joint in thin shells from the bore outward, each with the groove's width at its radius. */
function byShells(
  { nps, schedule }: { nps: Nps; schedule: Schedule },
  sizes: { bevelAngle: number; rootOpening: number; rootFace: number; capHeight: number },
) {
  const { bevelAngle, rootOpening, rootFace, capHeight } = sizes;
  const outer = pipeRows[nps].outside[0] / 2;
  const wall = pipeRows[nps].walls[schedule]?.[0] as number;
  const bore = outer - wall;
  const slope = Math.tan((bevelAngle * Math.PI) / 180);
  const width = (radius: number) => rootOpening + 2 * slope * Math.max(0, radius - bore - rootFace);
  const across = width(outer);
  // A parabola over the face: at a height above the pipe it is this wide.
  const capWidth = (height: number) => across * Math.sqrt(Math.max(0, 1 - height / capHeight));
  const shells = (from: number, to: number, widthAt: (radius: number) => number) => {
    const count = 4000;
    const step = (to - from) / count;
    let sum = 0;
    for (let i = 0; i < count; i++) {
      const radius = from + (i + 0.5) * step;
      sum += 2 * Math.PI * radius * widthAt(radius) * step;
    }
    return sum;
  };
  return {
    groove: shells(bore, outer, width),
    cap: capHeight > 0 ? shells(outer, outer + capHeight, (radius) => capWidth(radius - outer)) : 0,
  };
}

describe('pipe-groove', () => {
  it('has the volume of its thin shells added up', () => {
    fc.assert(
      fc.property(joint, ({ pipe, face, ...sizes }) => {
        const wall = pipeRows[pipe.nps].walls[pipe.schedule]?.[0] as number;
        const given = { ...sizes, rootFace: face * wall };
        const answer = pipeGroove.compute({ ...pipe, ...given, density: 0.2836 });
        const { groove, cap } = byShells(pipe, given);
        expect(Math.abs(answer.grooveVolume - groove)).toBeLessThan(1e-6 + 1e-5 * groove);
        expect(Math.abs(answer.capVolume - cap)).toBeLessThan(1e-6 + 1e-4 * cap);
        expect(answer.volume).toBeCloseTo(answer.grooveVolume + answer.capVolume, 12);
        expect(answer.mass).toBeCloseTo(0.2836 * answer.volume, 12);
      }),
      { numRuns: 60 },
    );
  });

  it('holds more than the section times the circle of the middle of the wall', () => {
    const answer = pipeGroove.compute({
      nps: '6',
      schedule: '80',
      bevelAngle: 37.5,
      rootOpening: 0.125,
      rootFace: 0.09375,
      capHeight: 0,
      density: 0.2836,
    });
    const shortcut = answer.area * Math.PI * (6.625 - 0.432);
    expect(answer.volume).toBeGreaterThan(shortcut);
    expect(answer.volume / shortcut).toBeLessThan(1.03);
  });

  it('turns the cap about its own center of area, two fifths of its height up', () => {
    const { capVolume, capArea } = pipeGroove.compute({
      nps: '6',
      schedule: '80',
      bevelAngle: 37.5,
      rootOpening: 0.125,
      rootFace: 0.09375,
      capHeight: 0.25,
      density: 0.2836,
    });
    expect(capVolume / (2 * Math.PI * capArea) - 6.625 / 2).toBeCloseTo(0.4 * 0.25, 9);
  });

  it('says where the standard end is another', () => {
    const said = (nps: Nps, schedule: Schedule) =>
      pipeGroove
        .compute({
          nps,
          schedule,
          bevelAngle: 37.5,
          rootOpening: 0.1,
          rootFace: 0.06,
          capHeight: 0,
          density: 0.28,
        })
        .because.map(({ text }) => text)
        .join(' ');
    expect(said('8', '160')).toContain('compound');
    expect(said('1/2', '40')).toContain('square');
    expect(said('6', '80')).not.toMatch(/compound|square/);
  });

  // ASME B16.25 para 3.1: square up to 3 mm, compound over 22 mm. NPS 8 XXS has 22.23 mm, NPS 6 XXS
  // 21.95 mm; NPS 3/4 Sch 40 2.87 mm, NPS 1 Sch 40 3.38 mm (ASME B36.10).
  it.each([
    ['8', 'XXS', 'compound'],
    ['6', 'XXS', ''],
    ['3/4', '40', 'square'],
    ['1', '40', ''],
  ] as const)('finds the standard end of NPS %s, schedule %s %s', (nps, schedule, word) => {
    const said = (bevelAngle: number) => {
      const sizes = { rootOpening: 0.1, rootFace: 0.06, capHeight: 0, density: 0.28 };
      const { because } = pipeGroove.compute({ nps, schedule, bevelAngle, ...sizes });
      return /compound|square/.exec(because.map(({ text }) => text).join(' '))?.[0] ?? '';
    };
    expect(said(0.5)).toBe(word);
    expect(said(0)).toBe(word === 'square' ? '' : word);
  });

  it('refuses a root face thicker than the wall', () => {
    expect(() =>
      pipeGroove.compute({
        nps: '2',
        schedule: '80',
        bevelAngle: 30,
        rootOpening: 0.1,
        rootFace: 0.22,
        capHeight: 0,
        density: 0.28,
      }),
    ).toThrow('root face cannot be more');
  });
});
