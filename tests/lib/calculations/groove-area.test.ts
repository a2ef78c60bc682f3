import { Point, Polygon } from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import grooveArea from '../../../lib/calculations/groove-area.ts';

const groove = fc.record({
  thickness: fc.double({ min: 0.1, max: 3, noNaN: true }),
  rootOpening: fc.double({ min: 0.01, max: 0.6, noNaN: true }),
  includedAngle: fc.double({ min: 1, max: 75, noNaN: true }),
  face: fc.double({ min: 0, max: 0.9, noNaN: true }),
  capHeight: fc.double({ min: 0.01, max: 0.2, noNaN: true }),
});

/** Corners from the root up one side and down the other; a single bevel has one upright side. */
function drawn(
  {
    thickness,
    rootOpening,
    includedAngle,
  }: { [name: string]: number } & {
    thickness: number;
    rootOpening: number;
    includedAngle: number;
  },
  rootFace: number,
  single: boolean,
): Polygon {
  const rise = thickness - rootFace;
  const out = (degrees: number) => rise * Math.tan((degrees * Math.PI) / 180);
  const right = out(single ? includedAngle : includedAngle / 2);
  const left = single ? 0 : right;
  const corners: [number, number][] = [
    [0, 0],
    [rootOpening, 0],
    [rootOpening, rootFace],
    [rootOpening + right, thickness],
    [-left, thickness],
    [0, rootFace],
  ];
  return new Polygon(corners.map(([x, y]) => new Point(x, y)));
}

describe('groove-area', () => {
  it('has the area and the width at the top of the groove as drawn', () => {
    fc.assert(
      fc.property(groove, fc.boolean(), ({ face, ...given }, single) => {
        const rootFace = face * given.thickness;
        const found = grooveArea.compute({
          ...given,
          rootFace,
          groove: single ? 'single bevel' : 'V',
          density: 0.2836,
        });
        const outline = drawn(given, rootFace, single);
        expect(found.area).toBeCloseTo(Math.abs(outline.area()), 6);
        expect(found.faceWidth).toBeCloseTo(outline.box.width, 6);
      }),
    );
  });

  it('sets a parabola on the open face', () => {
    fc.assert(
      fc.property(groove, ({ face, ...given }) => {
        const { faceWidth, capArea } = grooveArea.compute({
          ...given,
          rootFace: face * given.thickness,
          groove: 'V',
          density: 0.2836,
        });
        let summed = 0;
        const strips = 2000;
        for (let i = 0; i < strips; i++) {
          const x = (i + 0.5) / strips - 0.5;
          summed += (given.capHeight * (1 - 4 * x * x) * faceWidth) / strips;
        }
        expect(capArea).toBeCloseTo(summed, 6);
      }),
    );
  });

  it('refuses one bevel of more than 80°, which a V may have', () => {
    const with_ = (kind: 'V' | 'single bevel', includedAngle: number) => () =>
      grooveArea.compute({
        groove: kind,
        thickness: 0.375,
        rootOpening: 0,
        includedAngle,
        rootFace: 0,
        capHeight: 0,
        density: 0.2836,
      });
    expect(with_('single bevel', 81)).toThrow('80°');
    expect(with_('single bevel', 80)).not.toThrow();
    expect(with_('V', 90)).not.toThrow();
  });
});
