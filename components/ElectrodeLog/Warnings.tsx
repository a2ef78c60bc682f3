import type { Counted, NotCounted } from '../../lib/electrode-log/holder-at.ts';
import type { Holder } from '../../lib/files/electrode-log.ts';

interface Props {
  holders: readonly Holder[];
  found: readonly (Counted | NotCounted)[];
}

/**
 * Whose time is nearly over, and whose is. It says when, not how many minutes are left: read aloud,
 * it speaks up when something changes and not every minute.
 */
export default function Warnings({ holders, found }: Props) {
  const warned = found.flatMap((one, place) =>
    one.counted && one.warning ? [{ place, name: holders[place]?.name ?? '', ...one }] : [],
  );
  return (
    <div role="status" class="log-warnings">
      {warned.map(({ place, name, warning, next }) => (
        <p key={place} class={`log-state log-${warning}`}>
          <b>
            <a href={`#log-${place + 1}`}>{name}</a>: {warning === 'soon' ? 'soon' : 'too long'}
          </b>
          {next}
        </p>
      ))}
    </div>
  );
}
