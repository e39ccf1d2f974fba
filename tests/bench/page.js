/**
 * Opens the model page of every sample in a browser that draws without a graphics card, and tells its size and how
 * long it takes from its start till it can be used. Run `npm run bench:page`; a sample's path as argument opens that one
 * alone.
 */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { tools } from '../../dist/cli/tools.js';
import { buildPackage, readDescription } from '../../dist/lib/index.js';

const RUNS = 5;

const [path] = process.argv.slice(2);
const samples =
  path === undefined
    ? readdirSync('samples')
        .filter((name) => /^[a-z-]+\.yaml$/.test(name))
        .map((name) => `samples/${name}`)
    : [path];
const folder = mkdtempSync(join(tmpdir(), 'ringcourse-page-'));
const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader'],
});
try {
  for (const sample of samples) {
    const house = readDescription(readFileSync(sample, 'utf8'), sample);
    const { files } = await buildPackage(house, tools, { only: ['model'] });
    const { bytes } = files.find((file) => file.path === 'model/house.html');
    const file = join(folder, 'house.html');
    writeFileSync(file, bytes);
    const times = [];
    for (let run = 0; run < RUNS; run++) {
      const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
      await page.goto(pathToFileURL(file).href);
      await page.waitForSelector('html[data-ready]', { state: 'attached' });
      // The first picture is there once a pixel of it can be read.
      times.push(
        await page.evaluate(() => {
          const gl = document.getElementById('view').getContext('webgl2');
          gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, new Uint8Array(4));
          return performance.now();
        }),
      );
      await page.close();
    }
    times.sort((a, b) => a - b);
    console.log(
      `${basename(sample, '.yaml').padEnd(16)} ${(bytes.length / 1000).toFixed(0).padStart(5)} kB, ready after ${times[Math.floor(RUNS / 2)].toFixed(0).padStart(5)} ms`,
    );
  }
} finally {
  await browser.close();
  rmSync(folder, { recursive: true, force: true });
}
