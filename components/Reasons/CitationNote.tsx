import type { Citation } from '../../lib/calculation.ts';
import { sourceName } from '../../lib/text/source-name.ts';
import Known from '../Known/Known.tsx';
import { to } from '../Page/to.ts';
import { sourceAnchor } from '../SourceList/source-anchor.ts';

/** Source, place and known-mark, in one short line that leads to the list of sources. */
export default function CitationNote({ source, at, known }: Citation) {
  if (source === 'common-practice') return <Known known={known} />;
  return (
    <span class="citation">
      <a href={`${to('/')}sources/#${sourceAnchor(source)}`}>{sourceName(source)}</a>
      {at ? `, ${at} ` : ' '}
      <Known known={known} />
    </span>
  );
}
