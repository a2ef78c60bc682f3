/**
 * The weld metal that one covered electrode leaves.
 */
export interface Electrode {
  /** Of the core wire. Lengths in one unit. */
  diameter: number;
  electrodeLength: number;
  stub: number;
  /** Coating mass per whole electrode mass; the coating is taken as full length. */
  coatingFraction: number;
  /** Deposited mass per mass of electrode melted, stub not counted. */
  recovery: number;
}

/**
 * Volume left by one electrode, in the cube of the unit of its lengths. Core and weld metal are
 * the same steel, so its density drops out.
 */
export function depositedVolume(electrode: Electrode): number {
  const { diameter, electrodeLength, stub, coatingFraction, recovery } = electrode;
  const melted = (Math.PI / 4) * diameter ** 2 * (electrodeLength - stub);
  return (recovery / (1 - coatingFraction)) * melted;
}
