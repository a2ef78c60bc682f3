/** Waits for a picture; only then, or when one was left on the bench, is the bench's code fetched. */
const box = document.querySelector<HTMLElement>('[data-section]');
const choose = box?.querySelector('input');
const said = box?.querySelector('[role=status]');

const bench = () => import('./open-bench.ts');
const tell = (text: string) => {
  if (said) said.textContent = text;
};

async function open(file: Blob, name: string, sample?: 'fillet' | 'groove'): Promise<void> {
  tell('Opening the picture…');
  tell(await (await bench()).openBench(file, name, sample));
}

choose?.addEventListener('change', () => {
  const file = choose.files?.[0];
  if (file) open(file, file.name);
});
for (const button of box?.querySelectorAll<HTMLButtonElement>('[data-sample]') ?? []) {
  const name = button.dataset.sample as 'fillet' | 'groove';
  button.addEventListener('click', () => {
    const drawing = document.querySelector(`#section-sample-${name} svg`)?.outerHTML;
    if (drawing) open(new Blob([drawing], { type: 'image/svg+xml' }), `Sample ${name}`, name);
  });
  button.hidden = false;
}
try {
  if (localStorage.getItem('sixteenths.section'))
    bench().then(async ({ reopenBench }) => tell(await reopenBench()));
} catch {
  // Where nothing can be kept, nothing was.
}
