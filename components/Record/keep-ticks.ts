import { withTicks } from '../../lib/record/record-changes.ts';
import { today } from '../Shelf/today.ts';
import { keep, recordShelf } from './keep.ts';

/** Puts back what was ticked in a self-check, and keeps each change; says where that is not possible. */
export function keepTicks(box: HTMLElement): void {
  const exercise = location.pathname.split('/').filter(Boolean).at(-1) ?? '';
  const boxes = [...box.querySelectorAll<HTMLInputElement>('input')];
  const kept = recordShelf()
    .take()
    .data.selfChecks.find((it) => it.exercise === exercise);
  for (const place of kept?.ticked ?? []) if (boxes[place]) boxes[place].checked = true;
  const said = document.createElement('p');
  said.className = 'screen-only';
  said.setAttribute('role', 'status');
  box.append(said);
  box.addEventListener('change', () => {
    const ticked = boxes.flatMap((one, place) => (one.checked ? [place] : []));
    const trouble = keep((record) => withTicks(record, exercise, ticked, today()));
    said.textContent = trouble
      ? `${trouble}. The ticks stand on this page until you leave it.`
      : '';
  });
}
