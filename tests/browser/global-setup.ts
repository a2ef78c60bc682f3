import { chromium } from 'playwright-core';
import type { TestProject } from 'vitest/node';
import { serve } from '../../content/commands/serve.ts';
import { findBrowser } from './find-browser.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Where the built site is served, with base path and final slash. */
    address: string;
    /** Where the one browser listens that all tests share. */
    browser: string;
  }
}

/** One server and one browser for all browser tests. */
export default async function setUp(project: TestProject) {
  const site = await serve({
    directory: process.env.OUT_DIR,
    base: process.env.SITE_BASE,
    port: 0,
  });
  const browser = await chromium.launchServer(await findBrowser());
  project.provide('address', site.address);
  project.provide('browser', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await site.close();
  };
}
