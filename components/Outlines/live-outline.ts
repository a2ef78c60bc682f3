/** Puts the comparison on the page, and loads the tables that the reader chooses. */
import { h, render } from 'preact';
import { emptyOutline, ownOutlineFile } from '../../lib/files/own-outline-file.ts';
import { readOwnOutline } from '../../lib/outlines/own-outline.ts';
import { Shelf } from '../Shelf/shelf.ts';
import Comparison, { type Lesson } from './Comparison.tsx';

export function liveOutline(): void {
  const box = document.getElementById('your-outline') as HTMLElement;
  const chooser = box.querySelector('input') as HTMLInputElement;
  const problem = box.querySelector('.problem') as HTMLElement;
  const place = document.getElementById('outline-comparison') as HTMLElement;
  const lessons: Lesson[] = JSON.parse(box.dataset.lessons ?? '[]');
  const shelf = new Shelf(ownOutlineFile, emptyOutline);
  let { data, problem: said = '' } = shelf.take();

  const show = (focus = false) => {
    problem.textContent = said;
    chooser.setAttribute('aria-invalid', String(said !== ''));
    render(h(Comparison, { lessons, outline: data, onChange: keep }), place);
    if (focus) place.querySelector('h2')?.focus();
  };
  const keep = (next: typeof data) => {
    data = next;
    said = shelf.put(data) ?? '';
    show();
  };
  const load = async () => {
    const [table] = chooser.files ?? [];
    if (!table) return;
    const read = readOwnOutline(
      await table.text(),
      lessons.map(({ id }) => id),
    );
    if (read.ok) {
      keep({
        name: table.name,
        topics: read.topics.map((t) => ({ ...t, lessons: [...t.lessons] })),
      });
      said = [said, ...read.notes].filter(Boolean).join('. ');
    } else said = `${table.name}: ${read.problem}. Nothing was changed`;
    // The same file can then be chosen again.
    chooser.value = '';
    show(read.ok);
  };
  chooser.addEventListener('change', load);
  shelf.watch((taken) => {
    data = taken.data;
    said = taken.problem ?? '';
    show();
  });
  show();
  load();
}
