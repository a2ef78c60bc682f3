import { longestTexts } from '../../lib/booth/booth-link.ts';
import type { Task } from './desk-address.ts';

interface Props {
  task: Task;
  /** On the booths that were typed. */
  problem: string | undefined;
  onChange(part: Partial<Task>): void;
}

/** Whose booth it is, in which units its link opens, and what the instructor says. */
export default function PlacesForm({ task, problem, onChange }: Props) {
  return (
    <fieldset>
      <legend>
        <h2>Whose booth</h2>
      </legend>
      <div class="booth-numbers">
        <div class="field">
          <label for="booth-places">
            Booth or machine; several: <span class="quiet">7-10, 12</span>
          </label>
          <input
            id="booth-places"
            type="text"
            autocomplete="off"
            value={task.places}
            maxLength={200}
            aria-invalid={problem !== undefined}
            aria-describedby="booth-places-problem"
            onInput={(event) => onChange({ places: event.currentTarget.value })}
          />
          <p class="problem" id="booth-places-problem">
            {problem}
          </p>
        </div>
        <div class="field">
          <label for="booth-group">Group</label>
          <input
            id="booth-group"
            type="text"
            autocomplete="off"
            value={task.group}
            maxLength={longestTexts.group}
            onInput={(event) => onChange({ group: event.currentTarget.value })}
          />
        </div>
        <div class="field">
          <label for="booth-units">Units the link opens in</label>
          <select
            id="booth-units"
            value={task.units}
            onChange={(event) => onChange({ units: event.currentTarget.value as Task['units'] })}
          >
            <option value="">the reader’s own</option>
            <option value="us">inch</option>
            <option value="metric">metric</option>
          </select>
        </div>
      </div>
      <div class="field booth-wide">
        <label for="booth-note">Note to the learner</label>
        <input
          id="booth-note"
          type="text"
          autocomplete="off"
          value={task.note}
          maxLength={longestTexts.note}
          aria-describedby="booth-note-help"
          onInput={(event) => onChange({ note: event.currentTarget.value })}
        />
        <p class="field-range" id="booth-note-help">
          Up to {longestTexts.note} letters. It travels in the link, so no names. A shorter note
          makes a coarser code, which is read from farther away.
        </p>
      </div>
    </fieldset>
  );
}
