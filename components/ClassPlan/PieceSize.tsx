import { speak } from '../../lib/text/say.ts';
import type { System } from '../../lib/units.ts';
import Both from '../Units/Both.tsx';
import { sizeText } from './Size.tsx';

interface Props {
  /** "flat bar {3/8 in} × {3 in}" */
  section: string;
  /** Inches. */
  length: number;
}

/** A cut piece with its unit written once: flat bar 3/8 × 3 × 8 in. Its figures stay on one line. */
export default function PieceSize({ section, length }: Props) {
  const text = (system: System) =>
    `${speak(section, system)} × ${sizeText(length, 'in', system)}`
      .replaceAll(/\s(in|mm)(?= ×)/g, '')
      .replaceAll(/(?<=\d) × (?=\d)/g, '\u00a0×\u00a0');
  return <Both us={text('us')} metric={text('metric')} />;
}
