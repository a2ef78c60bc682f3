import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
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

let browser: Promise<Browser> | undefined;
const sharedBrowser = () => {
  browser ??= chromium.connect(inject('browser'));
  return browser;
};

/** Opens the site's page at `path` (base path included), hands it over, and closes it again. */
export async function visit<T>(
  path: string,
  reader: Reader,
  look: (visit: Visit) => Promise<T>,
): Promise<T> {
  const { theme = 'light', units = 'us', width = 1280, height = 800, scripts = true } = reader;
  const options: BrowserContextOptions = {
    baseURL: new URL(inject('address')).origin,
    colorScheme: theme,
    javaScriptEnabled: scripts,
    viewport: { width, height },
    // Its downloads would mix with those of the page; tests of the offline copy allow it.
    serviceWorkers: 'block',
  };
  const context = await (await sharedBrowser()).newContext(options);
  context.setDefaultTimeout(10_000);
  try {
    const page = await context.newPage();
    const { trouble, quiet } = listen(page, options.baseURL ?? '');
    if (scripts) await context.addInitScript(reportPolicyViolations);
    await page.goto(units === 'metric' ? `${path}?units=metric` : path, { waitUntil: 'load' });
    return await look({ page, trouble, quiet });
  } finally {
    await context.close();
  }
}

function listen(page: Page, origin: string): Pick<Visit, 'trouble' | 'quiet'> {
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
    if (!url.startsWith(`${origin}/`) && !/^(data|blob):/.test(url)) {
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

/** Runs in the page: a refused script or style shows as an error in the console. */
function reportPolicyViolations() {
  document.addEventListener('securitypolicyviolation', (event) => {
    console.error(`policy refused ${event.violatedDirective}: ${event.blockedURI || event.sample}`);
  });
}
