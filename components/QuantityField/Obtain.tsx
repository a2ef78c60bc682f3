import { to } from '../Page/to.ts';
import Said from '../Reasons/Said.tsx';

/** How a reader gets a value at the booth, one tap away. */
export default function Obtain({ text, by }: { text: string; by: string | undefined }) {
  return (
    <details class="obtain">
      <summary>How to get it</summary>
      <p>
        <Said text={text} />
        {by && (
          <>
            {' '}
            <a href={to(`/calculators/${by}/`)}>Work it out</a>
          </>
        )}
      </p>
    </details>
  );
}
