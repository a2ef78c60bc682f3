/**
 * Brings calculators, worked examples and practice to life a little before they come into view. The
 * form's code and the calculation come side by side; the list of all calculations stays out of the
 * form's file.
 */
const seen = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      seen.unobserve(target);
      start(target as HTMLElement).catch(() =>
        target.append('This did not load. Reload the page.'),
      );
    }
  },
  { rootMargin: '400px' },
);

async function start(box: HTMLElement): Promise<void> {
  const id = box.dataset.calculator;
  if (!id) return (await import('./buttons.ts')).buttons(box);
  const calculations = import('../../lib/calculations.ts');
  const { live } = await import('../Calculator/live.ts');
  live(box, await (await calculations).loadCalculation(id));
}

for (const box of document.querySelectorAll('[data-calculator],.worked-example,[data-practice]'))
  seen.observe(box);
if (/\bbooth\./.test(location.search)) import('../Booth/follow-booth.ts');

export {};
