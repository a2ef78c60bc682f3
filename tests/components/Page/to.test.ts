import { expect, it, vi } from 'vitest';

async function toBelow(base: string) {
  vi.resetModules();
  vi.stubEnv('BASE_URL', base);
  return (await import('../../../components/Page/to.ts')).to;
}

it.each([
  ['/', '/lessons/'],
  ['/course/', '/course/lessons/'],
  ['/course', '/course/lessons/'],
])('leads below %s', async (base, address) => {
  const to = await toBelow(base);
  expect(to('/lessons/')).toBe(address);
});

it('refuses a path that does not start at the root', async () => {
  const to = await toBelow('/');
  expect(() => to('lessons/')).toThrow('no path from the root');
});
