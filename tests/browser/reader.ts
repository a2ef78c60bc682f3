import { type Browser, type CDPSession, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

export interface Reader {
  theme?: 'light' | 'dark';
  units?: 'us' | 'metric';
  /** In CSS pixels. */
  width?: number;
  height?: number;
  scripts?: boolean;
}

/** A page as one reader sees it, and all that went wrong while it was open. */
export interface Visit {
  page: Page;
  /** Errors, refused loads and requests to other hosts, a sentence each. */
  trouble: string[];
  /** Resolves when nothing has been asked for over a tenth of a second. */
  quiet(): Promise<void>;
}

/** A tab that is used for one visit after another: opening one costs more than most visits. */
interface Tab {
  page: Page;
  devtools: CDPSession;
  trouble: string[];
  quiet: Visit['quiet'];
}

const origin = new URL(inject('address')).origin;
let browser: Promise<Browser> | undefined;
/** With scripts and without. A visit that runs on after its test gave up keeps its tab to itself. */
const free = new Map<boolean, Tab[]>([
  [true, []],
  [false, []],
]);

/**
 * Opens the site's page at `path` (base path included) as a reader who was never here before, and
 * hands it over.
 */
export async function visit<T>(
  path: string,
  reader: Reader,
  look: (visit: Visit) => Promise<T>,
): Promise<T> {
  const { theme = 'light', units = 'us', width = 1280, height = 800, scripts = true } = reader;
  const tab = free.get(scripts)?.pop() ?? (await openTab(scripts));
  const { page, devtools, trouble, quiet } = tab;
  await page.emulateMedia({ colorScheme: theme, media: null });
  await page.setViewportSize({ width, height });
  trouble.length = 0;
  await page.goto(units === 'metric' ? `${path}?units=metric` : path, { waitUntil: 'load' });
  try {
    return await look({ page, trouble, quiet });
  } finally {
    await page.goto('about:blank');
    await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
    free.get(scripts)?.push(tab);
  }
}

async function openTab(scripts: boolean): Promise<Tab> {
  browser ??= chromium.connect(inject('browser'));
  const context = await (await browser).newContext({
    baseURL: origin,
    javaScriptEnabled: scripts,
  });
  // Long, since a busy machine may be twenty times slower; what never comes fails all the same.
  context.setDefaultTimeout(40_000);
  // Its downloads would mix with those of the page; offline.test.ts has tabs of its own.
  if (scripts) await context.addInitScript(takeServiceWorkersAway);
  if (scripts) await context.addInitScript(reportPolicyViolations);
  const page = await context.newPage();
  return { page, devtools: await context.newCDPSession(page), ...listen(page) };
}

function listen(page: Page): Pick<Visit, 'trouble' | 'quiet'> {
  const trouble: string[] = [];
  let pending = 0;
  let lastChange = Date.now();
  const count = (step: number) => () => {
    pending += step;
    lastChange = Date.now();
  };
  page.on('request', count(1));
  page.on('requestfinished', count(-1));
  page.on('requestfailed', count(-1));
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') {
      trouble.push(`console ${message.type()}: ${message.text()}`);
    }
  });
  page.on('pageerror', (error) => trouble.push(`uncaught: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(`${origin}/`) && !/^(data|blob|about):/.test(url)) {
      trouble.push(`request to another host: ${url}`);
    }
  });
  page.on('requestfailed', (request) => {
    // Leaving a page stops what it was still loading; that is no fault of the page.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED')
      trouble.push(`failed request: ${request.url()}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) trouble.push(`status ${response.status()}: ${response.url()}`);
  });
  const quiet = async () => {
    lastChange = Date.now();
    while (pending > 0 || Date.now() - lastChange < 100) {
      await new Promise((done) => setTimeout(done, 20));
    }
  };
  return { trouble, quiet };
}

/** Runs in the page, which then finds itself in a browser that has none. */
function takeServiceWorkersAway() {
  Reflect.deleteProperty(Navigator.prototype, 'serviceWorker');
}

/** Runs in the page: a refused script or style shows as an error in the console. */
function reportPolicyViolations() {
  document.addEventListener('securitypolicyviolation', (event) => {
    console.error(`policy refused ${event.violatedDirective}: ${event.blockedURI || event.sample}`);
  });
}
