/** Bead, in sixteenths of an inch: six wide, each over half of the last, so one begins every three. */
const width = 6;
const height = 2;
const pitch = 3;
const beads = 15;
const scale = 16;

/**
 * The mark of the course: a layer of beads in section, each a parabola over half of the one before,
 * on a rule in sixteenths. The later bead lies on the earlier one.
 */
export default function BeadRow() {
  const length = pitch * (beads - 1) + width;
  const crown = (start: number) => {
    const x = start * scale;
    const w = width * scale;
    return `M${x} 0q${w / 2} ${-2 * height * scale} ${w} 0z`;
  };
  const ticks = Array.from({ length: length + 1 }, (_, i) => {
    const long = i % 16 === 0 ? 26 : i % 8 === 0 ? 20 : i % 4 === 0 ? 15 : i % 2 === 0 ? 11 : 7;
    return `M${i * scale} 0v${long}`;
  }).join('');
  const top = -height * scale - 4;
  return (
    <svg
      class="bead-row"
      viewBox={`-2 ${top} ${length * scale + 4} ${30 - top}`}
      aria-hidden="true"
    >
      <g>
        {Array.from({ length: beads }, (_, i) => (
          <path key={i} d={crown(i * pitch)} />
        ))}
      </g>
      <path d={`M0 0h${length * scale}${ticks}`} />
    </svg>
  );
}
