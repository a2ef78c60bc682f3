import { fadeRow } from '../WorkedExample/fade-row.ts';

/** At the end of a lesson, the button that marks it as read. */
const onward = document.querySelector('.onward');
if (onward && document.querySelector('.head .place'))
  new IntersectionObserver(async ([entry], watch) => {
    if (!entry?.isIntersecting) return;
    watch.disconnect();
    (await import('../Record/mark-read.ts')).markRead(onward);
  }).observe(onward);

/** A link from a lesson to a calculator hands over the numbers that stand in `box`. */
function numbersGoAlong(link: HTMLAnchorElement | null, box: HTMLElement | null): void {
  if (!link || !box) return;
  link.onclick = async (event) => {
    event.preventDefault();
    try {
      await (await import('../Calculator/take-along.ts')).takeAlong(event, link, box);
    } catch {
      location.assign(link.href);
    }
  };
}

for (const form of document.querySelectorAll('.calculator-box'))
  numbersGoAlong(form.querySelector('h3 > a'), form.querySelector('[data-calculator]'));

/** Shows the buttons of a worked example, or the one that starts a round of practice. */
export function buttons(box: HTMLElement): void {
  if (box.dataset.practice === undefined) {
    fadeRow(box);
    numbersGoAlong(box.querySelector('p:last-child > a'), box);
    return;
  }
  const button = box.querySelector('button');
  if (!button) return;
  button.hidden = false;
  button.onclick = async () => (await import('../Practice/practice-live.ts')).practice(box);
}
