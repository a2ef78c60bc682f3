import type { Locator, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { describe, expect, it } from 'vitest';
import { filletPicture, filletSampleMarks, filletTruth } from '../../lib/section/sample-fillet.ts';
import { grooveTruth } from '../../lib/section/sample-groove.ts';
import { markNames } from '../../lib/section/section-marks.ts';
import { site } from '../site/built-site.ts';
import { type Reader, type Visit, visit } from './reader.ts';

const path = `${site.base}section/`;
const metric: Reader = { units: 'metric' };

const onBench = <T>(reader: Reader, look: (visit: Visit) => Promise<T>) =>
  visit(path, reader, async (visited) => {
    await visited.page.getByRole('button', { name: 'Try it on the sample fillet' }).click();
    await visited.page.getByRole('heading', { name: 'Mark the section' }).waitFor();
    const result = await look(visited);
    expect(visited.trouble).toEqual([]);
    return result;
  });

const frame = (page: Page) => page.locator('.section-frame');
const mark = (page: Page, name: string) => page.locator(`[data-mark="${name}"]`);
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** Where a point of the picture lies on the screen, while all of the picture is shown. */
async function onScreen(
  page: Page,
  [x, y]: readonly [number, number],
  size: { width: number; height: number } = filletPicture,
) {
  const picture = frame(page);
  await picture.scrollIntoViewIfNeeded();
  const box = (await picture.boundingBox()) as NonNullable<
    Awaited<ReturnType<Locator['boundingBox']>>
  >;
  const zoom = Math.min(box.width / size.width, box.height / size.height);
  return {
    x: box.x + box.width / 2 + (x - size.width / 2) * zoom,
    y: box.y + box.height / 2 + (y - size.height / 2) * zoom,
  };
}

/** The number in front of the give or take, in the row with this name. */
async function reading(page: Page, name: string): Promise<{ value: number; around: number }> {
  const row = page.getByRole('row', { name: new RegExp(`^${name}`) });
  const text = (await row.getByRole('cell').first().textContent()) ?? '';
  const [, value, around] = /([\d.−]+)\D+([\d.]+)/.exec(text) ?? [];
  return { value: Number(value?.replace('−', '-')), around: Number(around) };
}

async function expectTruth(page: Page) {
  for (const [label, truth] of [
    ['Leg on plate A', filletTruth.legA],
    ['Leg on plate B', filletTruth.legB],
    ['Theoretical throat', filletTruth.throat],
  ] as const) {
    const { value, around } = await reading(page, label);
    // A click lands on a whole pixel of the screen, about two of the picture.
    expect(Math.abs(value - truth), label).toBeLessThanOrEqual(around + 0.1);
  }
}

describe('a section is measured on the sample', () => {
  it('by mouse: press, and the next thing is asked for; drag, and the reading follows', async () => {
    await onBench(metric, async ({ page }) => {
      for (const name of ['ends', 'root', 'toeA', 'toeB'] as const)
        for (const point of filletSampleMarks[name]) {
          const { x, y } = await onScreen(page, point);
          await page.mouse.click(x, y);
        }
      await expectTruth(page);
      expect(await page.locator('.section-now').textContent()).toContain('Now: Face');
      const before = await reading(page, 'Leg on plate A');
      const toe = await onScreen(page, filletPicture.toeA);
      await page.mouse.move(toe.x, toe.y);
      await page.mouse.down();
      await page.mouse.move(toe.x + 40, toe.y, { steps: 4 });
      expect(await page.locator('.section-loupe').count()).toBe(1);
      await page.mouse.up();
      expect((await reading(page, 'Leg on plate A')).value).toBeGreaterThan(before.value + 1);
      await button(page, 'Undo').click();
      expect(await reading(page, 'Leg on plate A')).toEqual(before);
      await button(page, 'Do again').click();
      expect((await reading(page, 'Leg on plate A')).value).toBeGreaterThan(before.value + 1);
    });
  });

  it('by keys alone: marks are set at the cross, named, nudged and taken away', async () => {
    await onBench(metric, async ({ page }) => {
      await page.locator('.section-steps button', { hasText: 'Root' }).focus();
      await page.keyboard.press('Enter');
      await frame(page).focus();
      await page.keyboard.press('Enter');
      const root = mark(page, 'root-0');
      expect(await root.evaluate((one) => one === document.activeElement)).toBe(true);
      const [x, y] = [filletPicture.width / 2, filletPicture.height / 2];
      expect(await root.getAttribute('aria-label')).toBe(`Root. ${x} across, ${y} down`);
      for (const key of ['ArrowRight', 'Shift+ArrowDown']) await page.keyboard.press(key);
      const label = await root.getAttribute('aria-label');
      const [, across, down] = /(\d+) across, (\d+) down/.exec(label ?? '') ?? [];
      expect(Number(across)).toBeGreaterThan(x);
      expect(Number(down) - y).toBeGreaterThan(5 * (Number(across) - x));
      await page.keyboard.press('Enter');
      expect(await frame(page).evaluate((one) => one === document.activeElement)).toBe(true);
      await root.focus();
      await page.keyboard.press('Delete');
      expect(await root.count()).toBe(0);
      await button(page, 'Undo').click();
      expect(await root.count()).toBe(1);
    });
  });

  it('by touch: one finger marks, two bring the picture closer and mark nothing', async () => {
    await onBench({ ...metric, width: 360, height: 740 }, async ({ page }) => {
      const { x, y } = await onScreen(page, filletPicture.root);
      const send = (type: string, points: { x: number; y: number; id: number }[]) =>
        touch(page, type, points);
      const before = await frame(page).getAttribute('viewBox');
      await send('touchStart', [{ x, y, id: 1 }]);
      await send('touchStart', [
        { x, y, id: 1 },
        { x: x + 40, y: y + 40, id: 2 },
      ]);
      await send('touchMove', [
        { x: x - 40, y: y - 40, id: 1 },
        { x: x + 80, y: y + 80, id: 2 },
      ]);
      await send('touchEnd', []);
      const closer = await frame(page).getAttribute('viewBox');
      const across = (box: string | null) => Number(box?.split(' ')[2]);
      expect(across(closer)).toBeLessThan(0.6 * across(before));
      expect(await page.locator('[data-mark]').count()).toBe(0);
      await send('touchStart', [{ x, y, id: 3 }]);
      await send('touchEnd', []);
      expect(await page.locator('[data-mark]').count()).toBe(1);
    });
  });

  it('all at once, with verdicts that follow the size, the code and the units', async () => {
    await onBench(metric, async ({ page }) => {
      await button(page, 'Mark the sample for me').click();
      await expectTruth(page);
      for (const name of markNames)
        if (name in filletSampleMarks) expect(await mark(page, `${name}-0`).count(), name).toBe(1);
      expect((await reading(page, 'Dilution')).value).toBeCloseTo(filletTruth.dilution, -1);
      const verdicts = page.locator('.section-verdicts');
      expect(await verdicts.textContent()).toContain('fail');
      await page.getByLabel('Size on the drawing').fill('6');
      expect(await verdicts.textContent()).not.toContain('fail');
      await page.getByLabel('Code').selectOption('ASME IX, welder’s test');
      expect(await verdicts.textContent()).toContain('QW-184');
      await page.getByLabel('inch').first().check();
      expect(await page.getByLabel('Size on the drawing').inputValue()).toBe('0.236');
      expect((await reading(page, 'Leg on plate A')).value).toBeCloseTo(filletTruth.legA / 25.4, 2);
      await page.getByLabel('Size on the drawing').fill('five');
      expect(await page.locator('#section-size-problem').textContent()).toMatch(
        /^Size on the drawing /,
      );
    });
  });

  it('and is said to a screen reader once the hand rests', async () => {
    await onBench(metric, async ({ page }) => {
      await button(page, 'Mark the sample for me').click();
      const said = page.locator('.section-bench .unseen[role=status]');
      await page.waitForFunction(() =>
        document.querySelector('.section-bench .unseen[role=status]')?.textContent?.includes('mm'),
      );
      expect(await said.textContent()).toMatch(/^Leg on plate A 8\.2/);
    });
  });

  it('and is saved as a picture, as a drawing and as numbers', async () => {
    await onBench(metric, async ({ page }) => {
      await button(page, 'Mark the sample for me').click();
      const saved = async (name: string) => {
        const [download] = await Promise.all([
          page.waitForEvent('download'),
          button(page, name).click(),
        ]);
        const chunks: Buffer[] = [];
        for await (const chunk of await download.createReadStream()) chunks.push(chunk as Buffer);
        return Buffer.concat(chunks);
      };
      const png = PNG.sync.read(await saved('Save picture'));
      expect([png.width, png.height]).toEqual([filletPicture.width, filletPicture.height]);
      const svg = (await saved('Save as SVG')).toString();
      expect(svg).toMatch(/^<svg[^>]*xmlns/);
      expect(svg).toContain('data:image/png;base64,');
      expect(svg).toContain('5\u00a0mm');
      const csv = (await saved('Save numbers')).toString();
      expect(csv).toMatch(/Leg on plate A,8\.2,0\.\d+,mm,,/);
      expect(csv).toMatch(/Judged: Fused to the root,.*pass/);
    });
  });
});

describe('a groove is measured on its sample', () => {
  it('all at once, with a backing strip, a size and passes that were counted', async () => {
    await visit(path, metric, async ({ page, trouble }) => {
      await page.getByRole('button', { name: 'Try it on the sample groove' }).click();
      await button(page, 'Mark the sample for me').click();
      for (const [label, truth] of [
        ['Height of the cap', grooveTruth.capHeight],
        ['Throat that counts', grooveTruth.throat],
        ['Fusion beyond the edge of plate B, least', grooveTruth.sidewallB],
        ['Area of deposit', grooveTruth.depositArea],
      ] as const) {
        const { value, around } = await reading(page, label);
        expect(Math.abs(value - truth), label).toBeLessThanOrEqual(around);
      }
      const verdicts = page.locator('.section-verdicts');
      expect(await verdicts.textContent()).toContain('Fused to the edge of plate A');
      expect(await verdicts.textContent()).not.toContain('✕');
      await page.getByLabel('Size on the drawing').fill('11');
      expect(await verdicts.textContent()).toContain('✕');
      await page.getByLabel('Root', { exact: true }).selectOption('backing strip');
      expect(await verdicts.textContent()).toContain('Fused to the backing strip');
      const row = page.getByRole('row', { name: 'Passes counted' });
      expect(await row.textContent()).toContain('6');
      await page.locator('#section-passes').fill('8');
      expect(await row.textContent()).toContain('8');
      await page.locator('#section-passes').fill('some');
      expect(await page.locator('#section-passes-problem').textContent()).toMatch(/^Passes must/);
      expect(trouble).toEqual([]);
    });
  });
});

describe('a picture of one’s own', () => {
  const choose = (page: Page, name: string, mimeType: string, buffer: Buffer) =>
    page.locator('#section-file').setInputFiles({ name, mimeType, buffer });

  it('is opened, marked and squared up by a rectangle', async () => {
    await visit(path, metric, async ({ page, trouble }) => {
      const size = { width: 640, height: 480 };
      await choose(page, 'slice.png', 'image/png', grayPng(size.width, size.height));
      await page.getByRole('heading', { name: 'Mark the section' }).waitFor();
      await page.getByLabel('What gives the scale').selectOption('rectangle');
      await page.getByLabel('First side of the rectangle').fill('40');
      await page.getByLabel('Second side of the rectangle').fill('30');
      const corners = [
        [120, 90],
        [520, 90],
        [520, 390],
        [120, 390],
      ] as const;
      for (const point of [...corners, [200, 300], [300, 300], [200, 200]] as const) {
        const { x, y } = await onScreen(page, point, size);
        await page.mouse.click(x, y);
      }
      const { value, around } = await reading(page, 'Leg on plate A');
      expect(Math.abs(value - 10)).toBeLessThanOrEqual(around + 0.1);
      expect(trouble).toEqual([]);
    });
  });

  it('is redrawn squared up, measures the same there, and can be seen as it was taken', async () => {
    await visit(path, metric, async ({ page, trouble }) => {
      const size = { width: 640, height: 480 };
      await choose(page, 'tilted.png', 'image/png', grayPng(size.width, size.height));
      await page.getByRole('heading', { name: 'Mark the section' }).waitFor();
      await page.getByLabel('What gives the scale').selectOption('rectangle');
      await page.getByLabel('First side of the rectangle').fill('40');
      await page.getByLabel('Second side of the rectangle').fill('30');
      const picture = page.locator('.section-frame image');
      const tilted = [
        [180, 90],
        [460, 110],
        [540, 400],
        [100, 380],
      ] as const;
      for (const point of tilted) {
        const { x, y } = await onScreen(page, point, size);
        await page.mouse.click(x, y);
      }
      await page.waitForFunction(
        () => document.querySelector('.section-frame image')?.getAttribute('width') !== '640',
      );
      const width = Number(await picture.getAttribute('width'));
      const height = Number(await picture.getAttribute('height'));
      // A mark set on the squared-up picture lies where its own place in the photograph is.
      for (const [across, up] of [
        [0, 0],
        [60, 0],
        [0, 60],
      ] as const) {
        const place = [width / 2 + across, height / 2 - up] as const;
        const { x, y } = await onScreen(page, place, { width, height });
        await page.mouse.click(x, y);
      }
      const legs = () =>
        Promise.all(['A', 'B'].map((plate) => reading(page, `Leg on plate ${plate}`)));
      const [legA, legB] = await legs();
      // As far apart in the squared-up picture, so as long; on the tilted one they look unlike.
      expect(Math.abs((legA?.value ?? 0) - (legB?.value ?? 9))).toBeLessThanOrEqual(
        legA?.around ?? 0,
      );
      const there = await mark(page, 'root-0').getAttribute('aria-label');
      await button(page, 'Squared up').click();
      expect(await picture.getAttribute('width')).toBe('640');
      expect(await legs()).toEqual([legA, legB]);
      const here = await mark(page, 'root-0').getAttribute('aria-label');
      expect(here).not.toBe(there);
      expect(trouble).toEqual([]);
    });
  });

  it('and its marks are there again after a reload, until they are put away', async () => {
    await visit(path, metric, async ({ page, trouble }) => {
      await choose(page, 'slice.png', 'image/png', grayPng(640, 480));
      await page.getByRole('heading', { name: 'Mark the section' }).waitFor();
      await page.getByLabel('Weld', { exact: true }).selectOption('groove');
      await page.getByLabel('Slice', { exact: true }).fill('7 of 12');
      const { x, y } = await onScreen(page, [200, 300], { width: 640, height: 480 });
      await page.mouse.click(x, y);
      const label = await mark(page, 'ends-0').getAttribute('aria-label');
      await page.reload();
      await mark(page, 'ends-0').waitFor();
      expect(await mark(page, 'ends-0').getAttribute('aria-label')).toBe(label);
      expect(await page.getByLabel('Slice', { exact: true }).inputValue()).toBe('7 of 12');
      expect(await page.getByLabel('Weld', { exact: true }).inputValue()).toBe('groove');
      await button(page, 'Put it away').click();
      await page.locator('.section-bench').waitFor({ state: 'detached' });
      await page.reload();
      expect(await page.evaluate(() => localStorage.getItem('sixteenths.section'))).toBeNull();
      expect(trouble).toEqual([]);
    });
  });

  it('that is lost from the browser gives its marks back when it is chosen again', async () => {
    await visit(path, metric, async ({ page }) => {
      const file = grayPng(640, 480);
      await choose(page, 'slice.png', 'image/png', file);
      await page.getByRole('heading', { name: 'Mark the section' }).waitFor();
      await page.getByLabel('Slice', { exact: true }).fill('8');
      await page.waitForFunction(() => localStorage.getItem('sixteenths.section')?.includes('"8"'));
      await page.evaluate(
        () =>
          new Promise((done) => {
            indexedDB.deleteDatabase('sixteenths.section').onsuccess = done;
          }),
      );
      await page.reload();
      await page.getByText('the picture is not. Choose it again').waitFor();
      await choose(page, 'slice.png', 'image/png', file);
      await page.getByRole('heading', { name: 'Mark the section' }).waitFor();
      expect(await page.getByLabel('Slice', { exact: true }).inputValue()).toBe('8');
    });
  });

  it('of 48 megapixels that the camera noted as turned stands upright, scaled down, and stays quick', async () => {
    await visit(path, metric, async ({ page, trouble }) => {
      const jpeg = await page.evaluate(async () => {
        const sheet = new OffscreenCanvas(8000, 6000);
        const pen = sheet.getContext('2d');
        for (const [color, left] of [
          ['#000', 0],
          ['#fff', 4000],
        ] as const) {
          if (pen) pen.fillStyle = color;
          pen?.fillRect(left, 0, 4000, 6000);
        }
        const blob = await sheet.convertToBlob({ type: 'image/jpeg', quality: 0.5 });
        const bytes = new Uint8Array(await blob.arrayBuffer());
        let text = '';
        for (let i = 0; i < bytes.length; i += 0x8000)
          text += String.fromCharCode(...bytes.subarray(i, i + 0x8000));
        return btoa(text);
      });
      await choose(page, 'turned.jpg', 'image/jpeg', turned(Buffer.from(jpeg, 'base64')));
      const image = page.locator('.section-frame image');
      await image.waitFor();
      expect(await image.getAttribute('width')).toBe('1500');
      expect(await image.getAttribute('height')).toBe('2000');
      // What was left is at the top once the right side is up.
      const shades = await page.evaluate(async () => {
        const shown = new Image();
        shown.src = document.querySelector('.section-frame image')?.getAttribute('href') ?? '';
        await shown.decode();
        const pen = new OffscreenCanvas(1500, 2000).getContext('2d');
        pen?.drawImage(shown, 0, 0);
        const { data } = pen?.getImageData(750, 0, 1, 2000) ?? { data: [] };
        return [100, 1900].map((y) => data[4 * y] ?? -1);
      });
      expect(shades[0]).toBeLessThan(60);
      expect(shades[1]).toBeGreaterThan(200);
      const { x, y } = await onScreen(page, [700, 900], { width: 1500, height: 2000 });
      await page.mouse.move(x, y);
      await page.mouse.down();
      const slowest = await page.evaluate(
        () =>
          new Promise<number>((done) => {
            let [most, last, frames] = [0, performance.now(), 0];
            const next = (now: number) => {
              most = Math.max(most, now - last);
              last = now;
              if (++frames < 12) requestAnimationFrame(next);
              else done(most);
            };
            requestAnimationFrame(next);
          }),
      );
      await page.mouse.move(x + 30, y + 30, { steps: 6 });
      await page.mouse.up();
      expect(await mark(page, 'ends-0').count()).toBe(1);
      expect(slowest).toBeLessThan(1000);
      expect(trouble).toEqual([]);
    });
  });

  it.each([
    ['a text', 'notes.jpg', Buffer.from('no picture at all')],
    ['a broken picture', 'cut.png', grayPng(300, 300).subarray(0, 30)],
    ['an empty file', 'empty.png', Buffer.alloc(0)],
  ])('that is %s gets a sentence', async (_, name, buffer) => {
    await visit(path, metric, async ({ page }) => {
      await choose(page, name, 'image/png', buffer);
      const said = page.locator('.needs-script [role=status]');
      await page.waitForFunction(() =>
        document.querySelector('.needs-script [role=status]')?.textContent?.startsWith('Picture: '),
      );
      expect(await said.textContent()).toContain('cannot be opened');
    });
  });

  it('that is too small gets a sentence', async () => {
    await visit(path, metric, async ({ page }) => {
      await choose(page, 'tiny.png', 'image/png', grayPng(20, 20));
      await page.getByText('too few to measure on').waitFor();
    });
  });
});

function grayPng(width: number, height: number): Buffer {
  const png = new PNG({ width, height });
  png.data.fill(160);
  return PNG.sync.write(png);
}

/** The same JPEG with the camera's note (EXIF orientation 6) that its right side is up. */
function turned(jpeg: Buffer): Buffer {
  const tiff = Buffer.from('4d4d002a00000008000101120003000000010006000000000000', 'hex');
  const body = Buffer.concat([Buffer.from('Exif\0\0'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, body.length + 2]);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}

const sessions = new WeakMap<
  Page,
  Promise<{ send: (type: string, points: object[]) => unknown }>
>();

async function touch(page: Page, type: string, touchPoints: object[]) {
  let session = sessions.get(page);
  if (!session) {
    session = page
      .context()
      .newCDPSession(page)
      .then((devtools) => ({
        send: (kind, points) =>
          devtools.send('Input.dispatchTouchEvent', {
            type: kind as 'touchStart',
            touchPoints: points as { x: number; y: number }[],
          }),
      }));
    sessions.set(page, session);
  }
  await (await session).send(type, touchPoints);
}
