import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { type BuildResult, build } from 'esbuild';
import { type Browser, chromium } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tools } from '../../cli/tools.js';
import { buildPackage, readDescription } from '../../lib/index.js';

const SAMPLE = readFileSync('samples/garden-studio.yaml', 'utf8');
const KERNEL = readFileSync('node_modules/manifold-3d/manifold.wasm');
const SCRIPT = readFileSync('dist/lib/page/main.js', 'utf8');
const FONT = readFileSync('node_modules/dejavu-fonts-ttf/ttf/DejaVuSans.ttf');

/** The page: takes the description and the kernel from its own server, and offers one function. */
const PAGE = `
import factory from 'manifold-3d';
import PDFDocument from 'pdfkit';
import { buildPackage, readDescription } from './dist/lib/index.js';

const hex = (buffer) => [...new Uint8Array(buffer)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
const sha256 = async (bytes) => hex(await crypto.subtle.digest('SHA-256', bytes));
const bytesOf = async (path) => new Uint8Array(await (await fetch(path)).arrayBuffer());
const kernel = async () => ({ factory, wasm: await bytesOf('/kernel') });
const digest = async (bytes) => new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
const page = async () => ({ script: await (await fetch('/page-script')).text(), sha256: digest });
const pdf = async () => ({ document: PDFDocument, font: await bytesOf('/font') });

window.makeHouse = async () => {
  const house = readDescription(await (await fetch('/sample')).text(), 'sample.yaml');
  const { files } = await buildPackage(house, { kernel, pdf, page });
  return Promise.all(files.map(async ({ path, bytes }) => [path, await sha256(bytes)]));
};
`;

let bundle: BuildResult<{ write: false; metafile: true }>;
let server: Server;
let browser: Browser;

beforeAll(async () => {
  bundle = await build({
    stdin: { contents: PAGE, resolveDir: process.cwd(), loader: 'js' },
    bundle: true,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    // The kernel, and the part of the glTF library that reads files, ask for these in Node and nowhere else.
    external: ['node:module', 'node:fs', 'node:path'],
    write: false,
    metafile: true,
    logLevel: 'silent',
  });
  const served: Record<string, readonly [type: string, body: Uint8Array | string]> = {
    '/': ['text/html', '<!doctype html><link rel="icon" href="data:,"><script type="module" src="/page.js"></script>'],
    '/page.js': ['text/javascript', bundle.outputFiles[0]?.contents ?? ''],
    '/sample': ['text/plain; charset=utf-8', SAMPLE],
    '/kernel': ['application/wasm', KERNEL],
    '/page-script': ['text/plain; charset=utf-8', SCRIPT],
    '/font': ['font/ttf', FONT],
  };
  server = createServer((request, response) => {
    const [type, body] = served[request.url ?? ''] ?? [];
    response.writeHead(type === undefined ? 404 : 200, { 'content-type': type ?? 'text/plain' }).end(body);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  browser = await chromium.launch({
    executablePath: '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
  });
});

afterAll(async () => {
  await browser?.close();
  server?.close();
});

describe('the library in a browser', () => {
  it('is bundled with no polyfills and loads nothing of Node', () => {
    expect(bundle.warnings).toEqual([]);
    const [output] = Object.values(bundle.metafile.outputs);
    expect(output?.imports).toEqual([{ path: 'node:module', kind: 'dynamic-import', external: true }]);
    const inputs = Object.keys(bundle.metafile.inputs);
    expect(
      inputs.filter((path) => /(polyfill|browserify|node_modules\/(buffer|process|stream|util)\/)/.test(path)),
    ).toEqual([]);
    expect(inputs.filter((path) => path.startsWith('(disabled):'))).toEqual([]);
  });

  it('makes a sample with the same bytes as Node, every file of it', async () => {
    const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
    const { files } = await buildPackage(readDescription(SAMPLE, 'sample.yaml'), tools);
    const here = files.map(({ path, bytes }) => [path, sha256(bytes)]);

    const page = await browser.newPage();
    const troubles: string[] = [];
    page.on('pageerror', (error) => troubles.push(String(error)));
    page.on('console', (message) => troubles.push(message.text()));
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await page.waitForFunction('"makeHouse" in window');
    const there = await page.evaluate('makeHouse()');

    expect(troubles).toEqual([]);
    expect(there).toEqual(here);
    for (const ending of ['.stl', '.dxf', '.html']) expect(here.some(([path]) => path?.endsWith(ending))).toBe(true);
  });
});
