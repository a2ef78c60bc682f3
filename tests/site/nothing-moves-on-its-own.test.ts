import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { site } from './built-site.ts';

/** Every way in which a page can move things: none is used, so that nobody has to ask for less. */
const moving =
  /[;{\s](-webkit-)?(transition|animation)[-a-z]*\s*:|@keyframes|@view-transition|scroll-behavior|\.animate\(|startViewTransition|behavior:\s*["'`]smooth|<(marquee|blink|animate|animateTransform|animateMotion|set)[\s>]/;

const texts = [...site.files].filter((file) => /\.(html|css|js|svg)$/.test(file));

describe('nothing moves, whether or not a reader asks for less motion (WCAG 2.2, 2.2.2, 2.3.3)', () => {
  it('reads pages, style sheets, scripts and drawings', () => {
    for (const kind of ['.html', '.js', '.svg'])
      expect(texts.filter((file) => file.endsWith(kind)).length, kind).toBeGreaterThan(0);
  });

  it('and finds no transition, no animation, no gliding scroll', () => {
    const found = texts.flatMap((file) => {
      const text = readFileSync(join(site.directory, file.slice(site.base.length)), 'utf8');
      const [what] = moving.exec(text) ?? [];
      return what ? [`${file}: ${what}`] : [];
    });
    expect(found).toEqual([]);
  });

  it.each([
    'a{transition:color .2s}',
    'a { animation-name: x }',
    '@keyframes x{}',
    'html{scroll-behavior:smooth}',
    'box.animate([])',
    'scrollTo({behavior:"smooth"})',
    '<animate attributeName="x"/>',
  ])('would see %s', (text) => {
    expect(text).toMatch(moving);
  });
});
