import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import type { ModelPage } from '../../lib/documents/model-page.js';
import { moved } from '../../lib/documents/scene.js';
import { unpackPage } from '../../lib/page/data.js';
import { placeSolids, sharpEdges } from '../../lib/page/solids.js';
import { findMarks } from '../../lib/page/view.js';
import { type PageSource, writeModelPage } from '../../lib/writers/html-model.js';
import { base64, packPage } from '../../lib/writers/page-data.js';
import { boxOf } from '../documents/solids.js';

const NASTY = `</script><script>alert("1")</script> & 'q' <img src=x onerror=alert(1)>`;

const page = (part: Partial<ModelPage> = {}): ModelPage => ({
  title: NASTY,
  facts: [[NASTY, NASTY]],
  cautions: ['Mind the ring.', NASTY],
  scene: {
    title: NASTY,
    facts: {},
    materials: [{ name: 'block', colour: [200, 190, 170] }],
    meshes: [boxOf('block', [250, 250, 250])],
    nodes: [
      {
        kind: 'instance',
        name: 'hall-1-1',
        mesh: 0,
        place: moved([1234.56, -9876.54, 0.07]),
        material: 0,
        facts: { [NASTY]: NASTY },
      },
      {
        kind: 'instance',
        name: 'hall-1-10',
        mesh: 0,
        place: { x: [0, -1, 0], y: [1, 0, 0], z: [0, 0, 1], move: [5000, 0, 0] },
        material: 0,
      },
    ],
  },
  pieces: [
    { step: 0, lift: [0, 0, 0], opening: null },
    { step: 1, lift: [0, 0, 275], opening: 0 },
  ],
  steps: ['the ground', NASTY],
  colourings: [{ name: 'as built', entries: [{ label: NASTY, colour: [1, 2, 3] }], of: [0, 0] }],
  rooms: [{ text: NASTY, inside: [0, 0, 1200], over: [0, 0, 3000], reach: 2000 }],
  openings: [
    {
      name: NASTY,
      facts: [['width', '900 mm']],
      dimensions: [{ from: [0, 0, 0], to: [900, 0, 0], text: '900 mm' }],
      pane: [
        [0, 0, 0],
        [900, 0, 0],
        [900, 0, 2000],
        [0, 0, 2000],
      ],
      middle: [450, 0, 1000],
      fromRad: Math.PI,
    },
  ],
  northRad: 0.3,
  ...part,
});

const source: PageSource = {
  script: 'console.log(1)',
  sha256: async (bytes) => createHash('sha256').update(bytes).digest(),
};
const html = async (part: Partial<ModelPage> = {}) =>
  new TextDecoder().decode(await writeModelPage(page(part), source));

describe('a model page', () => {
  it('lets the browser run its one script and style, by hashes that are theirs, and fetch nothing', async () => {
    const text = await html();
    const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(text)?.[1] ?? '';
    const hash = (inner: string) => `'sha256-${createHash('sha256').update(inner).digest('base64')}'`;
    const script = /<script>([\s\S]*?)<\/script>/.exec(text)?.[1] ?? '';
    const style = /<style>([\s\S]*?)<\/style>/.exec(text)?.[1] ?? '';
    expect(policy.split('; ')).toEqual([
      "default-src 'none'",
      `script-src ${hash(script)}`,
      `style-src ${hash(style)}`,
      "base-uri 'none'",
      "form-action 'none'",
    ]);
    expect(script).toBe(source.script);
    expect(text).not.toMatch(/https?:|url\(|@import|javascript:/i);
    expect(text).not.toMatch(/<[a-z][^>]*\s(style|on\w+)=/i);
  });

  it('holds no text of the description but escaped or packed', async () => {
    const text = await html();
    expect(text.match(/<script/g)).toHaveLength(2);
    expect(text).not.toContain('<img');
    expect(text).toContain('&lt;/script&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt; &amp; &#39;q&#39;');
    expect(/<script type="text\/plain" id="data">([^<]*)<\/script>/.exec(text)?.[1]).toMatch(/^[A-Za-z0-9+/]+=*$/);
  });

  it('refuses a script that would end its own element', async () => {
    const bad = { ...source, script: 'const a = "</SCRIPT>"' };
    await expect(writeModelPage(page(), bad)).rejects.toThrow('ends a script');
  });

  it('is the same each time', async () => expect(await html()).toBe(await html()));
});

describe('the data of a model page', () => {
  it('come back as they were, coordinates to half of a tenth of a millimetre', () => {
    const { payload, meshes } = unpackPage(packPage(page()));
    const { scene, pieces: _, title, facts: __, cautions: ___, ...told } = page();
    expect(payload).toMatchObject({ ...told, title });
    expect(payload.names).toEqual(['hall-1-1', 'hall-1-10']);
    expect(payload.told[0]?.map((k) => payload.facts[k])).toEqual([[NASTY, NASTY]]);
    const mesh = scene.meshes[0] as (typeof scene.meshes)[number];
    expect([...(meshes[0]?.triangles ?? [])]).toEqual([...mesh.triangles]);
    for (const [i, value] of (meshes[0]?.corners ?? []).entries())
      expect(Math.abs(value - (mesh.positions[i] as number))).toBeLessThanOrEqual(0.0501);
  });

  it('put every piece in its place', () => {
    const solids = placeSolids(unpackPage(packPage(page())));
    const [one, other] = solids.boxes;
    const close = (found: readonly number[] | undefined, asked: readonly number[]) => {
      for (const [i, value] of asked.entries()) expect(found?.[i]).toBeCloseTo(value, 1);
    };
    const { min, max } = boundsOf(page().scene.meshes[0]?.positions ?? new Float64Array());
    close(one?.[0], [min[0] + 1234.56, min[1] - 9876.54, min[2] + 0.07]);
    close(one?.[1], [max[0] + 1234.56, max[1] - 9876.54, max[2] + 0.07]);
    // A quarter turn clockwise: x points to −y, y to x.
    close(other?.[0], [5000 + min[1], -max[0], min[2]]);
    close(other?.[1], [5000 + max[1], -min[0], max[2]]);
  });

  it('has an edge at each of the twelve of a cube, and none across its faces', () => {
    const { meshes } = unpackPage(packPage(page()));
    expect(sharpEdges(meshes[0] as (typeof meshes)[number])).toHaveLength(2 * 12);
  });

  it('is in base64 as Node has it', () => {
    for (const length of [0, 1, 2, 3, 4, 255]) {
      const bytes = Uint8Array.from({ length }, (_, i) => (i * 37) % 256);
      expect(base64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
    }
  });
});

describe('the search for a mark', () => {
  const names = ['hall-1-1', 'hall-1-10', 'hall-1-11', 'lab-1-1', 'arch door'];
  it.each([
    ['hall-1-1', [0]],
    [' HALL-1-10 ', [1]],
    ['hall-1', [0, 1, 2]],
    ['-1-1', [0, 1, 2, 3]],
    ['door', [4]],
    ['', []],
    ['nothing', []],
  ])('%j', (asked, found) => expect(findMarks(names, asked)).toEqual(found));
});

function boundsOf(positions: Float64Array) {
  const axis = (k: number) => [...positions].filter((_, i) => i % 3 === k);
  const of = (least: boolean) =>
    [0, 1, 2].map((k) => (least ? Math.min(...axis(k)) : Math.max(...axis(k)))) as [number, number, number];
  return { min: of(true), max: of(false) };
}
