interface Exercise {
  joint: readonly string[];
  coupon: readonly { section?: string | undefined; length: string }[];
}

/** The plate of an exercise on single beads, which no calculation draws: its length and width. */
export function plateForBeads({
  joint,
  coupon,
}: Exercise): { length: string; width: string } | undefined {
  const [piece, ...others] = coupon;
  if (joint.length !== 1 || joint[0] !== 'bead' || !piece || others.length > 0) return undefined;
  const width = piece.section?.split(/\s+x\s+/)[1];
  return width ? { length: piece.length, width } : undefined;
}
