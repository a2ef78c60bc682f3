import type { Line } from '../Booth/read-example.ts';

/** The rows of a list of terms in an example, each text as either reader sees it. */
export const linesOf = (box: HTMLElement, list: 'givens' | 'answers'): Line[] =>
  [...box.querySelectorAll(`.${list} > div`)].map((row) => {
    const cell = row.querySelector('dd');
    const text = (system: string) =>
      (cell?.querySelector(`.${system}`) ?? cell)?.textContent?.trim() ?? '';
    return {
      label: row.querySelector('dt')?.textContent?.trim() ?? '',
      shown: { us: text('us'), metric: text('metric') },
    };
  });
