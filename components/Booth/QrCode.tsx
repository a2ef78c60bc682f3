import { encode } from 'uqr';

interface Props {
  text: string;
  /** What it leads to, for those who hear it. */
  name: string;
}

/**
 * A code that a phone reads: as coarse as the text allows, with the quiet zone of four modules that
 * ISO/IEC 18004 asks for. Black on white whatever the page's colors are.
 */
export default function QrCode({ text, name }: Props) {
  const { data, size } = encode(text, { ecc: 'L', boostEcc: true, border: 4 });
  return (
    <svg
      class="booth-code"
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label={name}
      shape-rendering="crispEdges"
    >
      <rect width={size} height={size} fill="#fff" />
      <path d={outline(data)} fill="#000" />
    </svg>
  );
}

/** Runs of black in each row: fewer points than a square a module. */
function outline(data: readonly (readonly boolean[])[]): string {
  let path = '';
  for (const [y, row] of data.entries())
    for (let x = 0; x < row.length; x++) {
      if (!row[x]) continue;
      let end = x;
      while (row[end + 1]) end++;
      path += `M${x} ${y}h${end - x + 1}v1h-${end - x + 1}z`;
      x = end;
    }
  return path;
}
