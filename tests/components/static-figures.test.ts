/** Drawings that a lesson shows as they are: on their sheet, named, explained, and small. */

import { readdirSync, readFileSync } from 'node:fs';
import { brotliCompressSync } from 'node:zlib';
import { type ComponentType, h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { calculationIds } from '../../content/commands/calculation-ids.ts';
import { sheetFaults } from './sheet-faults.ts';

/** They are drawn from props, and have tests of their own. */
const withProps = ['electrode-angles', 'preheat-zone'];
const ids = calculationIds();
const still = readdirSync('components/drawings')
  .map((name) => name.replace('.tsx', ''))
  .filter((name) => !ids.includes(name) && !withProps.includes(name));
const lessons = readdirSync('content/lessons').map((name) =>
  readFileSync(`content/lessons/${name}`, 'utf8'),
);

describe.each(still)('the figure %s', (name) => {
  const drawn = async () => {
    const { default: Figure } = await import(`../../components/drawings/${name}.tsx`);
    return renderToString(h(Figure as ComponentType, {}));
  };
  it('stays on its sheet, with a name and words below', async () => {
    const svg = await drawn();
    expect(sheetFaults(svg)).toEqual([]);
    expect(svg, 'an escape that was not read').not.toContain('\\u');
    expect(svg).toMatch(/aria-label="[^"]{15,}"/);
    expect(svg).toMatch(/<figcaption>.{15,}<\/figcaption>/);
  });
  it('weighs less than a kilobyte by itself', async () => {
    expect(brotliCompressSync(await drawn()).length).toBeLessThan(1000);
  });
  it('is shown by exactly one lesson', () => {
    expect(lessons.filter((text) => text.includes(`<Drawing of="${name}"`))).toHaveLength(1);
  });
});

it('gives the warm zone as the code prints it, 3 in or 75 mm, and the thickness where that is more', async () => {
  const { default: PreheatZone } = await import('../../components/drawings/preheat-zone.tsx');
  const words = (thickness: string) =>
    renderToString(h(PreheatZone, { thickness })).replaceAll('\u00a0', ' ');
  // AWS D1.1 clause 5.6 (2008), as cited in the lesson: 3 in [75 mm] or the thickness.
  expect(words('1 in')).toMatch(/at least <span class="us">3 in<\/span><span class="metric">75 mm/);
  expect(words('4 in')).toMatch(/at least <span class="us">4 in/);
});
