import { chromium } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { findBrowser } from './find-browser.ts';

const bareMachine = { HOME: process.env.HOME, PATH: '/nowhere' };

describe('finds a browser', () => {
  it('takes the one that CHROMIUM_PATH names before any other', async () => {
    const { executablePath } = await findBrowser({
      ...process.env,
      CHROMIUM_PATH: process.execPath,
    });
    expect(executablePath).toBe(process.execPath);
  });

  it('says so when CHROMIUM_PATH names none', async () => {
    const wrong = findBrowser({ ...process.env, CHROMIUM_PATH: '/nowhere/chromium' });
    await expect(wrong).rejects.toThrow(
      'CHROMIUM_PATH names no program that can run: /nowhere/chromium',
    );
  });

  // The packaged browser is for Linux on x64 only; elsewhere the machine has to bring one.
  it.runIf(process.platform === 'linux' && process.arch === 'x64')(
    'unpacks the packaged one on a machine without any, and it prints',
    async () => {
      const browser = await chromium.launch(await findBrowser(bareMachine));
      const page = await browser.newPage();
      await page.setContent('<h1>Bead</h1>');
      expect(await page.pdf()).not.toHaveLength(0);
      await browser.close();
    },
  );

  it('starts none with its security switched off', async () => {
    const { args } = await findBrowser();
    expect(args).toEqual(['--no-sandbox']);
  });
});
