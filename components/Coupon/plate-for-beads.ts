interface Exercise {
  joint: readonly string[];
  coupon: readonly {
    section?: string | undefined;
    length: string;
    lines?: number | undefined;
  }[];
}

/** The plate of an exercise on single beads, which no calculation draws: its sizes and its lines. */
export function plateForBeads({
  joint,
  coupon,
}: Exercise): { length: string; width: string; lines: number } | undefined {
  const [piece, ...others] = coupon;
  if (joint.length !== 1 || joint[0] !== 'bead' || !piece || others.length > 0) return undefined;
  const width = piece.section?.split(/\s+x\s+/)[1];
  return width && piece.lines ? { length: piece.length, width, lines: piece.lines } : undefined;
}
