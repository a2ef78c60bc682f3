/** Waits for a picture; only then is the bench's code fetched. */
const box = document.querySelector<HTMLElement>('[data-section]');
const choose = box?.querySelector('input');
const sample = box?.querySelector('button');
const said = box?.querySelector('[role=status]');

async function open(file: Blob, name: string, isSample = false): Promise<void> {
  if (said) said.textContent = 'Opening the picture…';
  const { openBench } = await import('./open-bench.ts');
  const problem = await openBench(file, name, isSample);
  if (said) said.textContent = problem;
}

choose?.addEventListener('change', () => {
  const file = choose.files?.[0];
  if (file) open(file, file.name);
});
sample?.addEventListener('click', () => {
  const drawing = document.querySelector('#section-sample svg')?.outerHTML;
  if (drawing) open(new Blob([drawing], { type: 'image/svg+xml' }), 'Sample section', true);
});
if (sample) sample.hidden = false;

export {};
