import { fadeRow } from '../WorkedExample/fade-row.ts';

/** At the end of a lesson, the button that marks it as read. */
const onward = document.querySelector('.onward');
if (onward && document.querySelector('.head .place'))
  new IntersectionObserver(async ([entry], watch) => {
    if (!entry?.isIntersecting) return;
    watch.disconnect();
    (await import('../Record/mark-read.ts')).markRead(onward);
  }).observe(onward);

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
