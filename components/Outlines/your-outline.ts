/** Fetches the comparison when there is something to compare: a table was chosen, or one is kept. */
const box = document.getElementById('your-outline');
const file = document.querySelector<HTMLInputElement>('#outline-file');
const start = async () => (await import('./live-outline.ts')).liveOutline();

let kept: string | null = null;
try {
  kept = localStorage.getItem('sixteenths.own-outline');
} catch {
  // Storage may be closed to this page; a table can still be loaded.
}
if (box && file) {
  if (kept) start();
  else file.addEventListener('change', start, { once: true });
}

export {};
