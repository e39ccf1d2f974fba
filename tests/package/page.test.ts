import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tools } from '../../cli/tools.js';
import type { House } from '../../lib/description/house.js';
import { cameraOn, onScreen, sightOf } from '../../lib/documents/camera.js';
import { instancesOf, placed } from '../../lib/documents/scene.js';
import type { LaidBlock } from '../../lib/masonry/block.js';
import type { Vec3 } from '../../lib/math/vec.js';
import { housePage } from '../../lib/models/page.js';
import { builtScene } from '../../lib/models/page-scene.js';
import { blockTable } from '../../lib/tables/blocks.js';
import { writeModelPage } from '../../lib/writers/html-model.js';
import { readWith } from '../readers/run.js';
import { builtOf, sampleHouse } from '../tools/built.js';
import { facts, heading, type PictureElement, set } from './page-parts.js';

const NASTY = '</script><script>window.broken = 1</script><img src=x onerror="window.broken = 2">';

let folder: string;
let url: string;
let browser: Browser;
let built: Awaited<ReturnType<typeof builtOf>>;
let model: ReturnType<typeof housePage>;
/** Whatever a page says that it shouldn't, and what it asks of the network. */
let troubles: string[];

beforeAll(async () => {
  const sample = sampleHouse('garden-studio');
  const house: House = {
    ...sample,
    project: { ...sample.project, title: `Orchard ${NASTY}` },
    rooms: sample.rooms.map((room) => ({ ...room, name: `Workroom ${NASTY}` })),
  };
  built = await builtOf(house);
  model = housePage(built, builtScene(built));
  folder = mkdtempSync(join(tmpdir(), 'ringcourse-page-'));
  const file = join(folder, 'house.html');
  writeFileSync(file, await writeModelPage(model, await tools.page()));
  url = pathToFileURL(file).href;
  browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--disable-background-networking'],
  });
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

const SIZE = { width: 1000, height: 700 };

async function open(options: Parameters<Browser['newPage']>[0] = {}): Promise<Page> {
  const page = await browser.newPage({ viewport: SIZE, ...options });
  troubles = [];
  page.on('pageerror', (error) => troubles.push(String(error)));
  page.on('console', (message) => troubles.push(message.text()));
  page.on('request', (request) => request.url() !== url && troubles.push(request.url()));
  await page.goto(url);
  await page.waitForSelector('html[data-ready], #trouble:not([hidden])', { state: 'attached' });
  expect(await page.locator('#trouble').textContent()).toBe('');
  return page;
}

/** A whole block that faces west in a course, and where its outer face stands. */
function westBlock(course: number): { block: LaidBlock; at: Vec3 } {
  const west = 1.5 * Math.PI;
  const block = built.blocks.find((b) => b.course === course && b.startRad < west && b.endRad > west) as LaidBlock;
  const solid = built.solids[built.blocks.indexOf(block)] as (typeof built.solids)[number];
  const heights = [...solid.positions].filter((_, i) => i % 3 === 2);
  const z = (Math.min(...heights) + Math.max(...heights)) / 2;
  const dome = built.setout.domes[0] as (typeof built.setout.domes)[number];
  const middle = (block.startRad + block.endRad) / 2;
  const r = dome.outerRadiusAt(z);
  return { block, at: [dome.at[0] + r * Math.sin(middle), dome.at[1] + r * Math.cos(middle), z] };
}

/** Where a place is seen on the page when the house is looked at from the west, reckoned from the solids. */
async function seenFromWest(page: Page, at: Vec3): Promise<readonly [number, number]> {
  const box = await page.locator('#view').boundingBox();
  if (!box) throw new Error('the model is not there');
  const size = [box.width, box.height] as const;
  const camera = cameraOn(
    (tell) => {
      for (const { over } of model.rooms) tell(...over);
      for (const { instance, place } of instancesOf(model.scene)) {
        const { positions } = model.scene.meshes[instance.mesh] as (typeof model.scene.meshes)[number];
        const low: [number, number, number] = [Infinity, Infinity, Infinity];
        const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
        for (let i = 0; i < positions.length; i += 3) {
          const p = placed(place, [...positions.subarray(i, i + 3)] as unknown as Vec3);
          for (const k of [0, 1, 2] as const) [low[k], high[k]] = [Math.min(low[k], p[k]), Math.max(high[k], p[k])];
        }
        for (const x of [low[0], high[0]])
          for (const y of [low[1], high[1]]) for (const z of [low[2], high[2]]) tell(x, y, z);
      }
    },
    1.5 * Math.PI,
    0.12,
    size,
  );
  const seen = onScreen(sightOf(camera, size, 1e4), at, size);
  return [box.x + (seen?.[0] ?? 0), box.y + (seen?.[1] ?? 0)];
}

describe('the model page in a browser', () => {
  it('tells a known block that one clicks, as the table of blocks does, and hides later courses', async () => {
    const page = await open();
    await page.click('#look-west');
    const { block, at } = westBlock(8);
    const [x, y] = await seenFromWest(page, at);
    await page.mouse.click(x, y);
    expect(await heading(page)).toBe(block.mark);
    const row = blockTable(built.plan, { blocks: built.blocks, slivers: [], reach: { beds: 0, faces: 0 } }).rows.find(
      (r) => r.mark === block.mark,
    );
    const told = await facts(page);
    expect(told.mould).toBe(row?.mould);
    expect(told.course).toBe(`8 of ${built.setout.domes[0]?.courses.length}`);
    for (const [name, key] of [
      ['dry mass', 'dry-mass'],
      ['wet mass', 'wet-mass'],
      ['inside, lower edge', 'inner-lower-arc'],
      ['outside, upper edge', 'outer-upper-arc'],
      ['thickness', 'thickness'],
    ] as const) {
      const value = Number.parseFloat(told[name] ?? '');
      expect(Math.abs(value - (row?.[key] as number)), name).toBeLessThanOrEqual(name.endsWith('mass') ? 0.006 : 0.5);
    }

    // With the courses from 6 on taken away, one looks past where that block was.
    await page.keyboard.press('Escape');
    const five = model.steps.indexOf(`studio, course 5 of ${built.setout.domes[0]?.courses.length}`);
    await set(page, 'step', five);
    await page.mouse.click(x, y);
    const behind = await page.locator('#about h3').count();
    if (behind > 0) expect(Number(/-(\d+)-\d+$/.exec((await heading(page)) ?? '')?.[1] ?? 0)).toBeLessThanOrEqual(5);
    const low = westBlock(3);
    await page.mouse.click(...(await seenFromWest(page, low.at)));
    expect(await heading(page)).toBe(low.block.mark);
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('shows texts of the description as texts, and lets nothing else run', async () => {
    const page = await open();
    expect(await page.title()).toContain('<script>window.broken = 1</script>');
    expect(await page.locator('h1').textContent()).toContain(NASTY);
    expect(await page.locator('#marks .room').textContent()).toContain(NASTY);
    expect(await page.locator('script, img, iframe').count()).toBe(2);
    expect(await page.evaluate('window.broken')).toBeUndefined();
    expect(troubles).toEqual([]);
    await page.evaluate(`{
      const script = document.createElement('script');
      script.textContent = 'window.broken = 3';
      document.body.append(script);
    }`);
    expect(await page.evaluate('window.broken')).toBeUndefined();
    await page.close();
  });

  it('cuts, draws apart, colours and tells openings', async () => {
    const page = await open();
    const { block, at } = westBlock(8);
    await page.click('#look-west');
    const place = await seenFromWest(page, at);
    // The western half taken away: what is seen there now lies farther off.
    await page.check('input[name="cut"][value="upright"]');
    await set(page, 'cut-bearing', 90);
    await page.check('#cut-other');
    await page.mouse.click(...place);
    const inside = await heading(page);
    expect(inside).not.toBe(block.mark);
    expect(inside).toMatch(/^(studio-\d+-\d+|arch bench-window)$/);
    await page.check('input[name="cut"][value="none"]');

    await set(page, 'apart', 100);
    await page.fill('#find', block.mark);
    await page.press('#find', 'Enter');
    expect(await heading(page)).toBe(block.mark);
    expect(await page.locator('#marks .mark').textContent()).toBe(block.mark);
    await set(page, 'apart', 0);

    await page.check('input[name="colours"][value="3"]');
    const moulds = await page.locator('#legend button').allTextContents();
    const counts = new Map<string, number>();
    for (const b of built.blocks) {
      const mould = built.mouldOf(b) ?? 'no mould fits';
      counts.set(mould, (counts.get(mould) ?? 0) + 1);
    }
    for (const [mould, count] of counts) expect(moulds).toContain(`${mould}${count}`);
    // More moulds than colours: each has a sign of its own in the list.
    const signs = await page
      .locator('#legend .swatch')
      .evaluateAll((all) => (all as unknown as { style: { background: string } }[]).map((s) => s.style.background));
    expect(signs.length).toBe(counts.size + 1);
    expect(new Set(signs).size).toBe(signs.length);

    await page.click('#openings button:has-text("bench-window")');
    const { width, height, sill } = built.setout.house.openings.find(
      (o) => o.id === 'bench-window',
    ) as House['openings'][number];
    // Drawn with the next frame; to ask for all texts doesn't wait for any.
    await page.locator('#marks .size').first().waitFor();
    expect(await page.locator('#marks .size').allTextContents()).toEqual([width, height, sill].map((mm) => `${mm} mm`));
    expect((await facts(page)).head).toBe('segmental');
    // Pointing through the clear opening is pointing at the opening.
    const box = await page.locator('#view').boundingBox();
    await page.keyboard.press('Escape');
    await page.mouse.click((box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2);
    expect(await heading(page)).toBe('arch bench-window');
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('names and sizes nothing that is cut away or not built yet, and no label lies on another', async () => {
    const page = await open();
    const labels = page.locator('#marks text:not(.compass)');
    const seen = async () => {
      await page.waitForTimeout(100);
      return (await labels.allTextContents()).map((text) => (text.includes(NASTY) ? 'room' : text));
    };
    const { mark } = westBlock(8).block;
    await page.fill('#find', mark);
    await page.press('#find', 'Enter');
    await expect.poll(seen).toEqual([mark, 'room']);
    await set(page, 'step', 2);
    await expect.poll(seen).toEqual(['room']);
    await set(page, 'step', model.steps.length - 1);
    await page.check('input[name="cut"][value="upright"]');
    await set(page, 'cut-bearing', 90);
    // What lies west of the cut stays, then what lies east of it.
    await expect.poll(seen).toEqual([mark, 'room']);
    await page.check('#cut-other');
    await expect.poll(seen).toEqual(['room']);
    await set(page, 'cut-place', 1000);
    await expect.poll(seen).toEqual([]);
    await page.click('#openings button:has-text("bench-window")');
    await expect.poll(seen).toEqual([]);
    await page.check('input[name="cut"][value="none"]');
    await expect.poll(async () => (await seen()).length).toBe(4);

    // Sizes seen along their lines and from far off.
    await page.focus('#view');
    for (const key of [...Array(9).fill('ArrowLeft'), ...Array(12).fill('-')]) {
      await page.keyboard.press(key);
      await page.waitForTimeout(30);
      const boxes = await page
        .locator('#marks .size')
        .evaluateAll((all: { getBBox(): { x: number; y: number; width: number; height: number } }[]) =>
          all.map((one) => {
            const { x, y, width, height } = one.getBBox();
            return { x, y, width, height };
          }),
        );
      for (const [i, a] of boxes.entries())
        for (const b of boxes.slice(i + 1)) {
          const apart = a.x + a.width <= b.x || b.x + b.width <= a.x || Math.abs(a.y - b.y) >= 13;
          expect(apart, `${key}: ${JSON.stringify([a, b])}`).toBe(true);
        }
    }
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('is used by keys alone', async () => {
    const page = await open();
    await page.keyboard.press('Tab');
    expect(await page.evaluate('document.activeElement.id')).toBe('view');
    await page.keyboard.press('Enter');
    const first = await heading(page);
    expect(first).toMatch(/^(studio|arch)/);
    await page.keyboard.press('.');
    expect(await heading(page)).not.toBe(first);
    await page.keyboard.press(',');
    expect(await heading(page)).toBe(first);
    const last = await page.locator('#step-text').textContent();
    await page.keyboard.press('PageDown');
    expect(await page.locator('#step-text').textContent()).not.toBe(last);
    const label = () => page.locator('#marks .room').evaluate((text) => text.getAttribute('x'));
    const [before] = [await label()];
    await page.keyboard.press('Shift+ArrowRight');
    await expect.poll(label).not.toBe(before);
    await page.keyboard.press('Escape');
    expect(await page.locator('#about h3').count()).toBe(0);
    // On to the slider, and to the search.
    for (let i = 0; i < 12 && (await page.evaluate('document.activeElement.id')) !== 'step'; i++)
      await page.keyboard.press('Tab');
    await page.keyboard.press('Home');
    expect(await page.locator('#step-text').textContent()).toBe(`1 of ${model.steps.length}: footing and slab`);
    for (let i = 0; i < 20 && (await page.evaluate('document.activeElement.id')) !== 'find'; i++)
      await page.keyboard.press('Tab');
    await page.keyboard.type(westBlock(3).block.mark);
    await page.keyboard.press('Enter');
    expect(await heading(page)).toBe(westBlock(3).block.mark);
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('is used by fingers on a phone: a tap chooses, two fingers zoom', async () => {
    const page = await open({
      viewport: { width: 390, height: 780 },
      hasTouch: true,
      isMobile: true,
      deviceScaleFactor: 2,
    });
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(390);
    const box = await page.locator('#view').boundingBox();
    const [x, y] = [(box?.x ?? 0) + (box?.width ?? 0) / 2, (box?.y ?? 0) + (box?.height ?? 0) / 2];
    await page.touchscreen.tap(x, y);
    expect(await heading(page)).toMatch(/^(studio|arch)/);
    const north = () => page.locator('#marks .room').evaluate((text) => Number(text.getAttribute('y')));
    const before = await north();
    const session = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', apart: number) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints:
          type === 'touchEnd'
            ? []
            : [
                { x: x - apart, y, id: 0 },
                { x: x + apart, y, id: 1 },
              ],
      });
    await touch('touchStart', 30);
    for (const apart of [40, 50, 60]) await touch('touchMove', apart);
    await touch('touchEnd', 0);
    // Twice as near, the name over the roof is farther from the middle.
    await expect.poll(north).toBeLessThan(before - 20);
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('prints the view with sizes of openings and cautions', async () => {
    const page = await open({ colorScheme: 'dark' });
    await page.getByRole('radio', { name: 'mould', exact: true }).check();
    const bytes = await page.pdf({ format: 'A4', printBackground: false });
    const program = (command: string, args: readonly string[]) => ({ command, debianPackage: 'poppler-utils', args });
    const file = { name: 'page.pdf', bytes: new Uint8Array(bytes) };
    const words = readWith(program('sh', ['-c', 'pdftotext -layout "$0" -']), file);
    // With colours by mould comes which mould each of them is.
    for (const text of ['Orchard', 'M1 ', 'M2 ', 'bench-window', '1200 mm', 'Not a design'])
      expect(words).toContain(text);
    // On a page lying on its side the picture shares the first one with the head: text and picture are both there.
    const wide = await page.pdf({ format: 'A4', landscape: true });
    const onFirst = readWith(program('pdfimages', ['-list', '-l', '1']), {
      name: 'wide.pdf',
      bytes: new Uint8Array(wide),
    });
    expect(onFirst).toMatch(/image\s+\d+/);
    // The width of the picture in pixels.
    const images = readWith(program('pdfimages', ['-list']), file);
    expect(Math.max(...[...images.matchAll(/image\s+(\d+)/g)].map((m) => Number(m[1])))).toBeGreaterThanOrEqual(1800);
    expect(troubles).toEqual([]);
    await page.close();
  });

  it('shows the picture where paper is only shown, with no printing', async () => {
    const page = await open();
    const { width, height } = (await page.locator('#view').boundingBox()) ?? { width: 0, height: 1 };
    const picture = page.locator('#print');
    /** Once it is there: its shape, and how many colours it has at places spread over it. */
    const shown = async () => {
      await expect.poll(() => picture.evaluate((canvas: PictureElement) => canvas.width)).toBeGreaterThanOrEqual(1800);
      return picture.evaluate((canvas: PictureElement) => {
        const { data } = canvas.getContext('2d').getImageData(0, 0, canvas.width, canvas.height);
        const colours = new Set<number>();
        for (let i = 0; i < data.length; i += 404) colours.add((data[i] ?? 0) * 256 + (data[i + 1] ?? 0));
        return { shape: canvas.width / canvas.height, colours: colours.size };
      });
    };
    await page.emulateMedia({ media: 'print' });
    const seen = await shown();
    expect(seen.colours).toBeGreaterThan(50);
    expect(seen.shape).toBeCloseTo(width / height, 2);
    // On paper from the start.
    await page.reload();
    expect((await shown()).colours).toBeGreaterThan(50);
    expect(troubles).toEqual([]);
    await page.close();
  });
});
