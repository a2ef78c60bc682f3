/**
 * Brings each calculator to life a little before it comes into view. The form's code and the
 * calculation come side by side; the list of all calculations stays out of the form's file.
 */
const seen = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      seen.unobserve(target);
      start(target as HTMLElement);
    }
  },
  { rootMargin: '400px' },
);

async function start(box: HTMLElement): Promise<void> {
  const [{ live }, calculation] = await Promise.all([
    import('./live.ts'),
    import('../../lib/calculations.ts').then(({ loadCalculation }) =>
      loadCalculation(box.dataset.calculator ?? ''),
    ),
  ]);
  live(box, calculation);
}

for (const box of document.querySelectorAll<HTMLElement>('[data-calculator]')) seen.observe(box);
