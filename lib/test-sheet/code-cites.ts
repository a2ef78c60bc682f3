/** Where the rules of one code stand, for the foot of its column. */
import type { Citation, Reason } from '../calculation.ts';
import { sourceName } from '../text/source-name.ts';
import type { SheetCode } from './sheet-rules.ts';

const tidy = (text: string) => text.replace(/\.$/, '');
const known = { read: 'read', memory: 'from memory', practice: 'practice', derived: 'worked out' };

/** Each once. Of its own source: some reasons name the other code to say where the two part. */
export function codeCites(code: SheetCode, because: readonly Pick<Reason, 'cite'>[]): string[] {
  const own = code === 'AWS D1.1' ? 'aws-d1.1' : 'asme-ix';
  const texts = because.flatMap(({ cite }) => (cite?.source === own ? [citeText(cite)] : []));
  return [...new Set(texts)].map(tidy);
}

const citeText = ({ source, at, known: how }: Citation): string =>
  `${sourceName(source)}${at ? `, ${at}` : ''} (${known[how]})`;
