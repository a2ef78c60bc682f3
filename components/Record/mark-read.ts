import { withLessonRead } from '../../lib/record/record-changes.ts';
import { today } from '../Shelf/today.ts';
import { keep, recordShelf } from './keep.ts';

/** A quiet button below the links to other lessons: it writes into the record on this device. */
export function markRead(onward: Element): void {
  const lesson = location.pathname.split('/').filter(Boolean).at(-1) ?? '';
  const line = document.createElement('p');
  line.className = 'screen-only';
  line.setAttribute('role', 'status');
  // It stands in the room below the last line, so that nothing is pushed down.
  line.style.setProperty('margin', '0.25rem 0 -3rem');
  onward.after(line);
  if (
    recordShelf()
      .take()
      .data.lessonsRead.some((it) => it.lesson === lesson)
  ) {
    line.append('In your record as read. ', toRecord());
    return;
  }
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'I have read this lesson';
  button.onclick = () => {
    const trouble = keep((record) => withLessonRead(record, lesson, today()));
    if (trouble) line.append(` ${trouble}.`);
    else line.replaceChildren('Put in your record as read. ', toRecord());
  };
  line.append(button);
}

function toRecord(): HTMLAnchorElement {
  const link = document.createElement('a');
  link.href = new URL('../../record/', location.href).href;
  link.textContent = 'Your record';
  return link;
}
