import { fadeRow } from '../WorkedExample/fade-row.ts';

/** Shows the buttons of a worked example, or the one that starts a round of practice. */
export function buttons(box: HTMLElement): void {
  if (box.dataset.practice === undefined) {
    fadeRow(box);
    return;
  }
  const button = box.querySelector('button');
  if (!button) return;
  button.hidden = false;
  button.onclick = async () => (await import('../Practice/practice-live.ts')).practice(box);
}
