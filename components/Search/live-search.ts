import type MiniSearch from 'minisearch';
import { type Found, find } from './find.ts';
import { indexOptions, type Place } from './index-options.ts';

const kinds: Record<string, string> = {
  lesson: 'Lesson',
  word: 'Word',
  fault: 'Fault',
  calculator: 'Calculator',
  exercise: 'Exercise',
  source: 'Source',
  page: 'Page',
};

/**
 * Searches at each key, and keeps what is sought in the address. Arrow keys walk from the box through
 * what is found and back.
 */
export async function liveSearch(Index: typeof MiniSearch): Promise<void> {
  const form = document.querySelector<HTMLFormElement>('[data-search]');
  const box = form?.querySelector('input');
  const list = form?.querySelector('ol');
  const status = form?.querySelector('[data-found]');
  if (!form || !box || !list || !status) return;

  form.addEventListener('submit', (event) => {
    event.preventDefault();
    list.querySelector('a')?.focus();
  });
  form.addEventListener('keydown', (event) => walk(event, box, list));
  box.value ||= new URLSearchParams(location.search).get('q') ?? '';
  // What is typed before the index has come is kept as well, for the way back.
  if (box.value) keepInAddress(box.value.trim());
  box.addEventListener('input', () => keepInAddress(box.value.trim()));
  // Whoever has begun to move by keys is not pulled away.
  if (!location.hash && document.activeElement === document.body) box.focus();

  const index = await fetchIndex(Index, form.dataset.search ?? '');
  const show = () => {
    if (!index) {
      status.textContent =
        'The list of places did not come. Reload the page where there is a network.';
      return;
    }
    const typed = box.value.trim();
    const found = typed ? find(index, typed) : [];
    list.replaceChildren(...found.map(item));
    status.textContent = typed ? counted(found.length) : '';
  };
  box.addEventListener('input', show);
  show();
}

async function fetchIndex(
  Index: typeof MiniSearch,
  address: string,
): Promise<MiniSearch<Place> | undefined> {
  try {
    const response = await fetch(address);
    return Index.loadJSON<Place>(await response.text(), indexOptions);
  } catch {
    return undefined;
  }
}

const counted = (count: number): string => {
  if (count === 0) return 'Nothing found. Try another word, or one of the pages below.';
  return count === 1 ? '1 place' : `${count} places`;
};

function item({ kind, title, heading, path }: Found): HTMLLIElement {
  const link = document.createElement('a');
  link.href = path;
  link.textContent = title;
  const about = document.createElement('span');
  about.className = 'quiet';
  about.textContent = [kinds[kind], heading].filter(Boolean).join(': ');
  const row = document.createElement('li');
  row.append(link, ' ', about);
  return row;
}

function walk(event: KeyboardEvent, box: HTMLInputElement, list: HTMLElement): void {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  const stops: HTMLElement[] = [box, ...list.querySelectorAll('a')];
  const at = stops.indexOf(document.activeElement as HTMLElement);
  if (event.key === 'Escape' && at > 0) box.focus();
  const next = step !== undefined && at >= 0 ? stops[at + step] : undefined;
  if (!next) return;
  event.preventDefault();
  next.focus();
}

function keepInAddress(typed: string): void {
  const address = new URL(location.href);
  if (typed) address.searchParams.set('q', typed);
  else address.searchParams.delete('q');
  try {
    history.replaceState(history.state, '', address);
  } catch {
    // Some browsers limit how often; the next key writes it.
  }
}
