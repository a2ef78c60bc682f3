interface Props {
  /** Undefined where the site has the task no longer. */
  names: readonly { name: string | undefined; places: string }[];
  onTakeOut(place: number): void;
}

/** The tasks that are printed beside the one at hand. */
export default function RotationList({ names, onTakeOut }: Props) {
  if (names.length === 0) return null;
  return (
    <section class="screen-only" aria-labelledby="booth-rotation">
      <h2 id="booth-rotation">Rotation</h2>
      <ol class="booth-links">
        {names.map(({ name, places }, place) => (
          <li key={place}>
            {name ?? 'A task that is not on this site any more; it is left out of the sheets'}
            {places && `, booth ${places}`}{' '}
            <button type="button" onClick={() => onTakeOut(place)}>
              Take out<span class="unseen"> {name}</span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
