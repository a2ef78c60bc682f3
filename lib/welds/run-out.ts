/**
 * Heat input from ruler and stub alone: E = F d² L / run-out, in kJ/mm, with lengths in mm and F in
 * kJ/mm³ (EN 1011-2 and BS 5135, from memory). The standard does not say in what we remember of it
 * whether arc efficiency is inside. It must be: a 1/8 in E7018 that burns 12 in off in 65 s at
 * 125 A and 22 V leaves 0.94 kJ/mm of arc energy along 7.5 in, four fifths of that is 0.75, and the
 * formula gives 0.76.
 */
export interface BurnedElectrode {
  /** kJ/mm³, see `tables/run-out-factors.ts`. */
  factor: number;
  coreDiameter: number;
  /** Length of core wire burned off. */
  consumedLength: number;
}

/** Heat that the burned length gives the metal, in kJ. */
export const heatGiven = ({ factor, coreDiameter, consumedLength }: BurnedElectrode): number =>
  factor * coreDiameter ** 2 * consumedLength;

/** Thermal efficiency of shielded metal arc welding (ISO/TR 17671-1). */
export const arcEfficiency = 0.8;
