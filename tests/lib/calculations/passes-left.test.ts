import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import passesLeft from '../../../lib/calculations/passes-left.ts';

const depth = fc.double({ min: 1 / 32, max: 2, noNaN: true });
const layerThickness = fc.double({ min: 1 / 32, max: 0.2, noNaN: true });

describe('passes-left', () => {
  it('leaves the cover between 1/32 and 1/16 in, by layers no thicker than they are laid', () => {
    fc.assert(
      fc.property(depth, layerThickness, (left, layer) => {
        const found = passesLeft.compute({ depth: left, layerThickness: layer });
        expect(found.leftForCover).toBeGreaterThanOrEqual((1 / 32) * (1 - 1e-6));
        expect(found.leftForCover).toBeLessThanOrEqual((1 / 16) * (1 + 1e-6));
        const laid = found.fillLayers * (found.evenThickness ?? 0);
        expect(laid + found.leftForCover).toBeCloseTo(left, 9);
        expect(found.evenThickness ?? 0).toBeLessThanOrEqual(layer * (1 + 1e-9));
      }),
    );
  });

  it('takes no layer more than it must', () => {
    fc.assert(
      fc.property(depth, layerThickness, (left, layer) => {
        const { fillLayers } = passesLeft.compute({ depth: left, layerThickness: layer });
        if (fillLayers > 0) expect(left - (fillLayers - 1) * layer).toBeGreaterThan(1 / 16);
      }),
    );
  });

  it('counts no layer more where they come out even', () => {
    for (let layers = 1; layers <= 20; layers++)
      expect(
        passesLeft.compute({ depth: layers * 0.1 + 1 / 16, layerThickness: 0.1 }).fillLayers,
      ).toBe(layers);
  });

  it('says what comes next, and cautions where the groove is full or the layer thin', () => {
    const cautions = (left: number, layer: number) =>
      passesLeft
        .compute({ depth: left, layerThickness: layer })
        .because.filter(({ kind }) => kind === 'caution').length;
    expect(passesLeft.compute({ depth: 0.25, layerThickness: 0.1 }).next).toBe('fill layer');
    expect(cautions(0.25, 0.1)).toBe(0);
    expect(passesLeft.compute({ depth: 0.03, layerThickness: 0.1 })).toMatchObject({
      next: 'too full',
      fillLayers: 0,
      leftForCover: 0.03,
    });
    expect(cautions(0.03, 0.1)).toBe(1);
    expect(cautions(0.07, 0.1)).toBe(1);
    expect(cautions(0.05, 0.1)).toBe(0);
    // 1/16 in to fill in a layer of 1/8 in is half a layer, and no less.
    expect(passesLeft.compute({ depth: 3 / 32, layerThickness: 1 / 8 }).next).toBe('fill layer');
    expect(passesLeft.compute({ depth: 0.0937, layerThickness: 1 / 8 }).next).toBe(
      'thin fill layer',
    );
  });
});
