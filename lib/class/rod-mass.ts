import { steelDensity } from '../tables/steel-density.ts';

/** Coating as a share of the whole electrode, where it is not the 0.30 of E7018; from memory. */
const coatings: Readonly<Record<string, number>> = {
  E6010: 0.12,
  E6011: 0.12,
};
const usualLength = 14;

/**
 * Pounds that one whole electrode weighs: core wire of `diameter`, {14 in} long, over what the
 * coating leaves for it. Inches.
 */
export function rodMass(classification: string, diameter: number, length = usualLength): number {
  const core = (Math.PI / 4) * diameter ** 2 * length * steelDensity;
  return core / (1 - (coatings[classification] ?? 0.3));
}
