import { describe, expect, it } from 'vitest';
import { shiftsOn } from './layout-shifts.ts';
import { sampledPages } from './page-paths.ts';
import { readToTheEnd } from './read-to-the-end.ts';
import { visit } from './reader.ts';

describe('the layout stands still from the first paint to the last line', () => {
  it.each(sampledPages)('%s', async (path) => {
    const shifts = await visit(
      path,
      { width: 360, height: 2000, units: 'metric' },
      async ({ page, quiet }) => {
        await quiet();
        await readToTheEnd(page, 30);
        await quiet();
        return shiftsOn(page);
      },
    );
    expect(shifts).toEqual([]);
  });
});
