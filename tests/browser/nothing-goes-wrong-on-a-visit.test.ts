import { describe, expect, it } from 'vitest';
import { allPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

describe('no error, nothing refused by the policy, no request to another host', () => {
  it.each(allPages)('%s', async (path) => {
    const found = await visit(path, {}, async ({ page, trouble, quiet }) => {
      await readToTheEnd(page);
      await quiet();
      return [...trouble];
    });
    expect(found).toEqual([]);
  });
});
