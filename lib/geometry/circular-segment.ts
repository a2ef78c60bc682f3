/**
 * Area between a chord and its arc, in the square of their unit. The rise is how far the arc's
 * middle stands off the chord; a negative rise gives a negative area. Very flat arcs are taken as
 * parabolas, to which they come as close as numbers can tell, since their circle is too large to
 * compute with.
 */
export function circularSegment(chord: number, rise: number): number {
  if (Math.abs(rise) < flat * chord) return (2 / 3) * chord * rise;
  const radius = rise / 2 + chord ** 2 / (8 * rise);
  const sector = radius ** 2 * 2 * Math.atan((2 * rise) / chord);
  return sector - (chord / 2) * (radius - rise);
}

const flat = 0.0001;
