/**
 * Serves the built site for reading and for the browser tests: `npm run serve`.
 * A plain static server, so that what works here works on any host of static files.
 * Environment: PORT (4321, or the next free one), HOST, OUT_DIR (dist), SITE_BASE (as in the build).
 */
import { existsSync } from 'node:fs';
import { readFile, stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, resolve, sep } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

const contentTypes: Record<string, string> = {
  '.css': 'text/css; charset=utf-8',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.jpg': 'image/jpeg',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
  '.zip': 'application/zip',
};

export interface Serving {
  /** Where the front page is, with base path and final slash. */
  address: string;
  close(): Promise<void>;
}

/**
 * Starts the server and resolves once it listens. `port: 0` takes any free port; another
 * port that is busy is passed over for the next one.
 * @throws Error when nothing is built in `directory`
 */
export async function serve({
  directory = 'dist',
  base = '/',
  port = 4321,
  host = '127.0.0.1',
} = {}): Promise<Serving> {
  const root = resolve(directory);
  if (!existsSync(join(root, 'index.html'))) {
    throw new Error(`There is no built site in ${directory}. Build it first: npm run build`);
  }
  const prefix = `/${base}/`.replace(/\/+/g, '/');
  const server = createServer((request, response) => {
    answer(request, response, root, prefix).catch(() =>
      send(response, 500, 'Could not read the file.'),
    );
  });
  await listen(server, port, host);
  const shownHost = host === '127.0.0.1' || host === '0.0.0.0' ? 'localhost' : host;
  return {
    address: `http://${shownHost}:${(server.address() as AddressInfo).port}${prefix}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

async function listen(server: Server, port: number, host: string): Promise<void> {
  const lastTried = port === 0 ? 0 : port + 20;
  for (let candidate = port; ; candidate++) {
    try {
      await new Promise<void>((done, fail) => {
        server.once('error', fail);
        server.listen(candidate, host, () => {
          server.off('error', fail);
          done();
        });
      });
      return;
    } catch (problem) {
      const busy = (problem as NodeJS.ErrnoException).code === 'EADDRINUSE';
      if (!busy || candidate >= lastTried) throw problem;
    }
  }
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  root: string,
  prefix: string,
): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.setHeader('Allow', 'GET, HEAD');
    return send(response, 405, 'This server only hands out files.');
  }
  const [rawPath = '/', ...query] = (request.url ?? '/').split('?');
  const search = query.length > 0 ? `?${query.join('?')}` : '';
  const path = decode(rawPath);
  if (path === undefined) return send(response, 400, 'The address cannot be read.');
  if (prefix !== '/' && (path === '/' || `${path}/` === prefix)) {
    return redirect(response, prefix + search);
  }
  if (!path.startsWith(prefix)) return notFound(request, response, root);

  const file = resolve(root, path.slice(prefix.length));
  if (file !== root && !file.startsWith(root + sep)) return notFound(request, response, root);

  const found = await stat(file).catch(() => undefined);
  if (found?.isDirectory()) {
    if (!existsSync(join(file, 'index.html'))) return notFound(request, response, root);
    if (!path.endsWith('/')) return redirect(response, `${encodeURI(path)}/${search}`);
    return sendFile(request, response, 200, join(file, 'index.html'));
  }
  if (!found?.isFile() || path.endsWith('/')) return notFound(request, response, root);
  return sendFile(request, response, 200, file);
}

/** The path without escapes and doubled slashes (`//host` would redirect away), if it is sound. */
function decode(rawPath: string): string | undefined {
  try {
    const path = decodeURIComponent(rawPath).replace(/[/\\]+/g, '/');
    return path.startsWith('/') && !path.includes('\0') ? path : undefined;
  } catch {
    return undefined;
  }
}

async function notFound(request: IncomingMessage, response: ServerResponse, root: string) {
  const page = join(root, '404.html');
  if (!existsSync(page)) return send(response, 404, 'There is no such page.');
  return sendFile(request, response, 404, page);
}

async function sendFile(
  request: IncomingMessage,
  response: ServerResponse,
  status: number,
  file: string,
): Promise<void> {
  const content = await readFile(file);
  const type = contentTypes[extname(file)] ?? 'application/octet-stream';
  const { size, mtimeMs } = await stat(file);
  const version = `W/"${size.toString(36)}-${Math.trunc(mtimeMs).toString(36)}"`;
  // Only names that carry a hash of their content may be kept without asking again.
  const hashed = file.includes(`${sep}_astro${sep}`);
  response.setHeader('Content-Type', type);
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('Cache-Control', hashed ? 'public, max-age=31536000, immutable' : 'no-cache');
  response.setHeader('ETag', version);
  if (status === 200 && request.headers['if-none-match'] === version) {
    response.writeHead(304).end();
    return;
  }
  const { body, encoding } = await compress(content, type, request.headers['accept-encoding']);
  if (encoding) response.setHeader('Content-Encoding', encoding);
  response.setHeader('Vary', 'Accept-Encoding');
  response.setHeader('Content-Length', body.length);
  response.writeHead(status).end(request.method === 'HEAD' ? undefined : body);
}

async function compress(content: Buffer, type: string, accepted = '') {
  const worthIt = /^text\/|json|javascript|svg|xml/.test(type);
  if (worthIt && /\bbr\b/.test(accepted)) {
    const params = { [constants.BROTLI_PARAM_QUALITY]: 5 };
    return { body: await promisify(brotliCompress)(content, { params }), encoding: 'br' };
  }
  if (worthIt && /\bgzip\b/.test(accepted)) {
    return { body: await promisify(gzip)(content), encoding: 'gzip' };
  }
  return { body: content, encoding: undefined };
}

function redirect(response: ServerResponse, to: string): void {
  response.writeHead(301, { Location: to, 'Cache-Control': 'no-cache' }).end();
}

function send(response: ServerResponse, status: number, sentence: string): void {
  if (!response.headersSent) {
    response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' });
  }
  response.end(sentence);
}

if (import.meta.main) {
  try {
    const { address } = await serve({
      directory: process.env.OUT_DIR,
      base: process.env.SITE_BASE,
      port: process.env.PORT ? Number(process.env.PORT) : undefined,
      host: process.env.HOST,
    });
    console.log(`The course is at ${address}  (Ctrl+C stops it)`);
  } catch (problem) {
    console.error(problem instanceof Error ? problem.message : problem);
    process.exitCode = 1;
  }
}
