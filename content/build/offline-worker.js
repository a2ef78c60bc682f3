/**
 * Answers for the site without a network. Written beside the built pages as `sw.js`, with the two
 * constants filled in by offline-copy.ts.
 *
 * Every file is kept under its address and the hash of its content, so that a new version fetches
 * only what has changed, and the version that is still on somebody's screen keeps its own files.
 * The files of the version before are thrown away when the one after the next takes over.
 */
const base = '@base@';
/** Hash of the content by path below the base; a page's path ends in a slash or is empty. */
const files = JSON.parse('@files@');

// Other sites may live on this host: the name carries the place of this one.
const store = `sixteenths${base}`;
const kept = `${base}?kept`;
const generation = `${base}?generation`;
/** What every reader needs when the network goes: where to start, and what to say of other pages. */
const first = ['', 'offline/', '404.html'];

const keyOf = (path) => `${base}${path}?${files[path]}`;
const open = () => caches.open(store);
const ignoring = { ignoreVary: true };

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(takeOver()));
self.addEventListener('fetch', (event) => {
  const url = new URL(event.request.url);
  const ours = url.origin === location.origin && url.pathname.startsWith(base);
  if (event.request.method === 'GET' && ours) event.respondWith(answer(event.request, url));
});
self.addEventListener('message', (event) => {
  const [port] = event.ports;
  const act = { keep, drop, count, use: () => self.skipWaiting() }[event.data];
  if (act) event.waitUntil(act((said) => port?.postMessage(said)));
});

/** A reader who keeps the whole course gets the whole new one before he is told of it. */
async function install() {
  const cache = await open();
  const whole = await cache.match(kept);
  await fetchMissing(cache, whole ? Object.keys(files) : first, () => {});
}

async function takeOver() {
  const cache = await open();
  const mine = Object.keys(files).map(keyOf);
  const before = await cache.match(generation).then((found) => found?.json() ?? []);
  const wanted = new Set([...mine, ...before, kept].map((key) => new URL(key, location).href));
  for (const { url } of await cache.keys()) if (!wanted.has(url)) await cache.delete(url);
  await cache.put(generation, new Response(JSON.stringify(mine)));
  await self.clients.claim();
}

async function answer(request, url) {
  const path = pathOf(url);
  // Hosts add the final slash by a redirect, and so does this.
  if (path && !(path in files) && `${path}/` in files)
    return Response.redirect(`${base}${path}/${url.search}`, 302);
  const cache = await open().catch(() => undefined);
  const own = path in files && (await cache?.match(keyOf(path), ignoring));
  if (own) return own;
  try {
    const fresh = await fetch(request);
    if (cache && path in files && fresh.ok)
      cache.put(keyOf(path), plain(fresh.clone())).catch(() => {});
    return fresh;
  } catch (gone) {
    // A page of the version before, still open, may ask for its own files.
    const older = await cache?.match(`${base}${path}`, { ...ignoring, ignoreSearch: true });
    if (older && path) return older;
    if (request.mode !== 'navigate') throw gone;
    return instead(cache, path in files ? 'offline/' : '404.html');
  }
}

/** The path below the base as the list of files spells it. */
function pathOf({ pathname }) {
  let path = pathname.slice(base.length);
  try {
    path = decodeURIComponent(path);
  } catch {
    // An address that cannot be read leads nowhere.
  }
  return path.replace(/(^|\/)index\.html$/, '$1');
}

async function instead(cache, path) {
  const page = await cache?.match(keyOf(path), ignoring);
  const status = path === '404.html' ? 404 : 503;
  return page
    ? new Response(page.body, { status, headers: page.headers })
    : new Response('There is no network, and this page is not on this device.', { status });
}

/** A browser refuses a page that was stored together with the redirect that led to it. */
const plain = (response) =>
  response.redirected
    ? new Response(response.body, { status: response.status, headers: response.headers })
    : response;

async function missingFrom(cache, paths) {
  const there = new Set((await cache.keys()).map(({ url }) => url));
  return paths.filter((path) => !there.has(new URL(keyOf(path), location).href));
}

/** What the reader opens meanwhile comes first where the line is slow. */
const isSlow = () => ![undefined, '4g'].includes(navigator.connection?.effectiveType);

/** Fetches four at a time, one on a slow line; throws what stopped it, and leaves what has come. */
async function fetchMissing(cache, paths, tell) {
  const waiting = await missingFrom(cache, paths);
  let have = paths.length - waiting.length;
  const fetchNext = async (_, lane) => {
    while (waiting.length > 0 && (lane === 0 || !isSlow())) {
      const path = waiting.shift();
      const response = await fetch(base + path, { cache: 'no-cache', priority: 'low' });
      // The page of lost addresses may come with the status that it is for.
      if (!response.ok && path !== '404.html') throw new Error(`${response.status}`);
      await cache.put(keyOf(path), okay(plain(response)));
      have += 1;
      tell({ have, total: paths.length });
    }
  };
  try {
    await Promise.all(Array.from({ length: 4 }, fetchNext));
  } catch (thrown) {
    waiting.length = 0;
    throw thrown;
  }
}

const okay = (response) =>
  response.ok ? response : new Response(response.body, { headers: response.headers });

let keeping;

/** Keeps the whole course. Two pages that ask share one run. */
async function keep(tell) {
  const listeners = keeping?.listeners ?? new Set();
  listeners.add(tell);
  const tellAll = (said) => {
    for (const one of listeners) one(said);
  };
  keeping ??= { listeners, run: keepAll(tellAll) };
  await keeping.run;
}

async function keepAll(tell) {
  try {
    const cache = await open();
    await cache.put(kept, new Response(''));
    await fetchMissing(cache, Object.keys(files), tell);
    tell({ ended: 'whole' });
  } catch (thrown) {
    tell({ ended: thrown?.name === 'QuotaExceededError' ? 'full' : 'stopped' });
  } finally {
    keeping = undefined;
  }
}

/** Throws the course away but for what shows where it can be had again. */
async function drop(tell) {
  const cache = await open();
  const stays = new Set(first.map((path) => new URL(keyOf(path), location).href));
  for (const { url } of await cache.keys()) if (!stays.has(url)) await cache.delete(url);
  tell({ ended: 'dropped' });
}

async function count(tell) {
  const cache = await open();
  const paths = Object.keys(files);
  tell({ have: paths.length - (await missingFrom(cache, paths)).length, total: paths.length });
}
