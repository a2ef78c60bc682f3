import type { Answered } from '../../lib/answer.ts';
import type { Reason } from '../../lib/calculation.ts';
import CitationNote from './CitationNote.tsx';
import Said from './Said.tsx';

/** Why the answer is what it is: rules and rows used, rows passed over, cautions. */
export default function Reasons({ by }: { by: { us: Answered; metric: Answered } }) {
  const lists = {
    us: by.us.ok ? by.us.because : [],
    metric: by.metric.ok ? by.metric.because : [],
  };
  if (lists.us.length + lists.metric.length === 0) return null;
  if (JSON.stringify(lists.us) === JSON.stringify(lists.metric)) return <List reasons={lists.us} />;
  return (
    <>
      <List reasons={lists.us} only="us" />
      <List reasons={lists.metric} only="metric" />
    </>
  );
}

function List({ reasons, only }: { reasons: readonly Reason[]; only?: 'us' | 'metric' }) {
  return (
    <ul class={only ? `reasons ${only}` : 'reasons'}>
      {reasons.map(({ text, kind = 'rule', cite }) => (
        <li key={text} class={`reason-${kind}`}>
          <Said text={text} /> {cite && <CitationNote {...cite} />}
        </li>
      ))}
    </ul>
  );
}
