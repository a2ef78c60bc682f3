import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type IncomingHttpHeaders, request } from 'node:http';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Serving, serve } from '../../../content/commands/serve.ts';

const outside = mkdtempSync(join(tmpdir(), 'serve-test-'));
const directory = join(outside, 'dist');
const files = {
  'index.html': '<h1>Front</h1>',
  '404.html': '<h1>No such page</h1>',
  'lessons/flat-bead/index.html': '<h1>Flat bead</h1>',
  'site.webmanifest': '{}',
  'worker.mjs': 'export {}',
  'maths.woff2': 'font',
  'icon.svg': '<svg/>',
  '_astro/page.Dx3k.css': 'p{}',
};
beforeAll(() => {
  mkdirSync(join(directory, 'lessons/flat-bead'), { recursive: true });
  mkdirSync(join(directory, '_astro'));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(directory, name), text);
  writeFileSync(join(outside, 'secret.txt'), 'not for you');
  mkdirSync(join(outside, 'dist-other'));
  writeFileSync(join(outside, 'dist-other/secret.txt'), 'not for you');
});
afterAll(() => rmSync(outside, { recursive: true }));

interface Answer {
  status: number | undefined;
  headers: IncomingHttpHeaders;
  body: Buffer;
}

/** Sends the path as it is: fetch would tidy `..` away before the server sees it. */
function get(site: Serving, path: string, headers = {}, method = 'GET'): Promise<Answer> {
  return new Promise((done, fail) => {
    const { hostname, port } = new URL(site.address);
    request({ hostname, port, path, headers, method }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part) => parts.push(part));
      response.on('end', () =>
        done({
          status: response.statusCode,
          headers: response.headers,
          body: Buffer.concat(parts),
        }),
      );
    })
      .on('error', fail)
      .end();
  });
}

describe('at the root of a host', () => {
  let site: Serving;
  beforeAll(async () => {
    site = await serve({ directory, port: 0 });
  });
  afterAll(() => site.close());

  it('answers a directory with its index page', async () => {
    const page = await get(site, '/lessons/flat-bead/?heat-input.current=128A');
    expect(page.status).toBe(200);
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.body.toString()).toBe('<h1>Flat bead</h1>');
  });

  it.each([
    ['/site.webmanifest', 'application/manifest+json; charset=utf-8'],
    ['/worker.mjs', 'text/javascript; charset=utf-8'],
    ['/maths.woff2', 'font/woff2'],
    ['/icon.svg', 'image/svg+xml; charset=utf-8'],
  ])('sends %s as %s', async (path, type) => {
    expect((await get(site, path)).headers['content-type']).toBe(type);
  });

  it('adds a missing final slash and keeps the question', async () => {
    const page = await get(site, '/lessons/flat-bead?units=metric&x=1?2');
    expect(page.status).toBe(301);
    expect(page.headers.location).toBe('/lessons/flat-bead/?units=metric&x=1?2');
  });

  it.each(['//lessons/flat-bead', '/\\lessons/flat-bead'])(
    'never redirects %s to another host',
    async (path) => {
      expect((await get(site, path)).headers.location).toBe('/lessons/flat-bead/');
    },
  );

  it.each(['/nothing/', '/lessons/', '/index.html/', '/lessons/flat-bead/x'])(
    'answers %s with the 404 page and status 404',
    async (path) => {
      const page = await get(site, path);
      expect(page.status).toBe(404);
      expect(page.body.toString()).toBe('<h1>No such page</h1>');
    },
  );

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/..%5csecret.txt',
    '/lessons/../../secret.txt',
    '/../dist-other/secret.txt',
    '/%00',
    '/%zz',
    'http://other.host/../secret.txt',
  ])('hands out nothing from outside for %s', async (path) => {
    const page = await get(site, path);
    expect([400, 404]).toContain(page.status);
    expect(page.body.toString()).not.toContain('not for you');
  });

  it('compresses text for those who can read it, and nothing else', async () => {
    const brotli = await get(site, '/', { 'accept-encoding': 'gzip, br' });
    expect(brotli.headers['content-encoding']).toBe('br');
    expect(brotliDecompressSync(brotli.body).toString()).toBe('<h1>Front</h1>');
    const gzip = await get(site, '/', { 'accept-encoding': 'gzip' });
    expect(gunzipSync(gzip.body).toString()).toBe('<h1>Front</h1>');
    const font = await get(site, '/maths.woff2', { 'accept-encoding': 'gzip, br' });
    expect(font.headers['content-encoding']).toBeUndefined();
  });

  it('lets only names with a hash be kept unasked, and answers 304 for the rest', async () => {
    expect((await get(site, '/_astro/page.Dx3k.css')).headers['cache-control']).toContain(
      'immutable',
    );
    const page = await get(site, '/');
    expect(page.headers['cache-control']).toBe('no-cache');
    const again = await get(site, '/', { 'if-none-match': page.headers.etag });
    expect(again.status).toBe(304);
    expect(again.body).toHaveLength(0);
  });

  it('answers HEAD without a body and refuses other methods', async () => {
    const head = await get(site, '/', {}, 'HEAD');
    expect([head.status, head.body.length, head.headers['content-length']]).toEqual([200, 0, '14']);
    expect((await get(site, '/', {}, 'POST')).status).toBe(405);
  });
});

it('serves from below a base path and leads the bare host there', async () => {
  const site = await serve({ directory, base: 'course', port: 0 });
  try {
    expect(new URL(site.address).pathname).toBe('/course/');
    expect((await get(site, '/course/')).body.toString()).toBe('<h1>Front</h1>');
    for (const path of ['/', '/course']) {
      expect((await get(site, path)).headers.location).toBe('/course/');
    }
    const lesson = await get(site, '/course/lessons/flat-bead');
    expect(lesson.headers.location).toBe('/course/lessons/flat-bead/');
    expect((await get(site, '/lessons/flat-bead/')).status).toBe(404);
    expect((await get(site, '/course/../secret.txt')).body.toString()).not.toContain('not for you');
  } finally {
    await site.close();
  }
});

it('takes the next free port when the wanted one is busy', async () => {
  const other = createServer();
  await new Promise<void>((done) => other.listen(0, '127.0.0.1', done));
  const busy = (other.address() as { port: number }).port;
  const site = await serve({ directory, port: busy });
  try {
    expect(Number(new URL(site.address).port)).toBeGreaterThan(busy);
  } finally {
    await site.close();
    other.close();
  }
});

it('says what to do when nothing is built', async () => {
  await expect(serve({ directory: outside, port: 0 })).rejects.toThrow('npm run build');
});
