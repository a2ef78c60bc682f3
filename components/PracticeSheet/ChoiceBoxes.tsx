interface Item {
  id: string;
  title: string;
}
interface Props {
  title: string;
  groups: readonly { title: string; items: readonly Item[] }[];
  chosen: readonly string[];
  onChange(chosen: string[]): void;
}

/** Boxes to tick, folded; what is ticked is counted in the fold's title. */
export default function ChoiceBoxes({ title, groups, chosen, onChange }: Props) {
  const toggle = (id: string) =>
    onChange(chosen.includes(id) ? chosen.filter((it) => it !== id) : [...chosen, id]);
  return (
    <details class="practice-choices">
      <summary>
        {title}: {chosen.length === 0 ? 'none' : `${chosen.length} chosen`}
      </summary>
      {groups.map((group) => (
        <fieldset key={group.title}>
          <legend>{group.title || title}</legend>
          {group.items.map(({ id, title: name }) => (
            <label key={id}>
              <input type="checkbox" checked={chosen.includes(id)} onChange={() => toggle(id)} />
              <span>{name}</span>
            </label>
          ))}
        </fieldset>
      ))}
    </details>
  );
}
