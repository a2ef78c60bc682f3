/**
 * Brings each calculator to life a little before it comes into view, gives a worked example its
 * buttons, and starts a round of practice when it is asked for. The form's code and the calculation
 * come side by side; the list of all calculations stays out of the form's file.
 */
const boxes = (name: string) => document.querySelectorAll<HTMLElement>(`[data-${name}]`);

const seen = new IntersectionObserver(
  (entries) => {
    for (const { isIntersecting, target } of entries) {
      if (!isIntersecting) continue;
      seen.unobserve(target);
      if ((target as HTMLElement).dataset.calculator) start(target as HTMLElement);
      else fadeRow(target as HTMLElement);
    }
  },
  { rootMargin: '400px' },
);

async function start(box: HTMLElement): Promise<void> {
  const [{ live }, calculation] = await Promise.all([
    import('../Calculator/live.ts'),
    import('../../lib/calculations.ts').then(({ loadCalculation }) =>
      loadCalculation(box.dataset.calculator ?? ''),
    ),
  ]);
  live(box, calculation);
}

if (/[?&]booth\./.test(location.search))
  import('../Booth/follow-booth.ts').then(({ followBooth }) => followBooth());

const fadeRow = async (example: HTMLElement) =>
  (await import('../WorkedExample/fade-row.ts')).fadeRow(example);

for (const box of boxes('calculator')) seen.observe(box);
for (const example of document.querySelectorAll('.worked-example')) seen.observe(example);
for (const box of boxes('practice')) {
  const button = box.querySelector('button');
  if (!button) continue;
  button.hidden = false;
  button.onclick = async () => (await import('../Practice/practice-live.ts')).practice(box);
}

export {};
