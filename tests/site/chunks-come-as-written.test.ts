import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { site } from './built-site.ts';

const scripts = [...site.files].filter((file) => file.endsWith('.js'));

it('no script carries the bundler’s helper for dynamic imports or its lists of files', () => {
  expect(scripts.length).toBeGreaterThan(0);
  const helped = scripts.filter((file) =>
    /__vite__mapDeps|modulepreload|vite:preloadError/.test(
      readFileSync(join(site.directory, file.slice(site.base.length)), 'utf8'),
    ),
  );
  expect(helped).toEqual([]);
});
