import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import manifold from 'manifold-3d';
import { beforeAll, describe, expect, it } from 'vitest';
import { layBlocks } from '../../lib/masonry/lay.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { blockSolids } from '../../lib/solids/block-solids.js';
import { houseSolids } from '../../lib/solids/house-solids.js';
import { type Kernel, loadKernel, type SolidScope } from '../../lib/solids/kernel.js';
import { outlineOf, rectangle } from '../../lib/solids/outline.js';
import { houseOf, openingOf } from '../tools/house.js';
import { nodeKernel } from '../tools/kernel.js';
import { HEADS, openingLike } from './support.js';

const FRAME = { at: [0, 0], along: [0, 1], across: [1, 0] } as const;
const ONE = { bottom: 'a', side: 'b', top: 'c' };
const house = setOutHouse(houseOf({ openings: [openingOf(), openingLike('flush niche', HEADS[2] as never)] }));

/** What Node's types leave out of the standard WebAssembly interface. */
interface Wasm {
  instantiate(bytes: Uint8Array, imports: unknown): Promise<{ instance: { exports: Record<string, unknown> } }>;
  readonly Memory: new () => { readonly buffer: ArrayBuffer };
}
const wasmOf = (globalThis as unknown as { WebAssembly: Wasm }).WebAssembly;
const wasm = readFileSync(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));

/** A kernel of its own, whose memory can be watched. */
async function watchedKernel(): Promise<{ kernel: Kernel; bytes: () => number }> {
  let memory: InstanceType<Wasm['Memory']> | undefined;
  const kernel = await loadKernel({
    wasm,
    factory: (settings) => {
      const watched = {
        ...settings,
        instantiateWasm: (imports: unknown, done: (instance: unknown) => void) => {
          wasmOf.instantiate(wasm, imports).then(({ instance }) => {
            memory = Object.values(instance.exports).find((e) => e instanceof wasmOf.Memory) as typeof memory;
            done(instance);
          });
        },
      };
      return manifold(watched);
    },
  });
  return { kernel, bytes: () => (memory as InstanceType<Wasm['Memory']>).buffer.byteLength };
}

describe('the kernel', () => {
  let kernel: Kernel;
  beforeAll(async () => {
    kernel = await nodeKernel();
  });

  it('loads once for a factory', async () => {
    expect(await nodeKernel()).toBe(kernel);
  });

  it('loads again after a failure', async () => {
    let tries = 0;
    const factory: Parameters<typeof loadKernel>[0]['factory'] = (settings) => {
      tries++;
      return tries === 1 ? Promise.reject(new Error('no memory')) : manifold(settings);
    };
    await expect(loadKernel({ factory, wasm })).rejects.toThrow('no memory');
    await loadKernel({ factory, wasm });
    expect(tries).toBe(2);
  });

  it('names the part and the step when nothing is left', () => {
    const work = () =>
      kernel.scope((scope) => {
        const small = scope.prism('hall:lintel', rectangle([0, 0], [10, 10], ONE), FRAME, [0, 10], ['n', 'f']);
        const large = scope.prism('cutter', rectangle([-5, -5], [20, 20], ONE), FRAME, [-5, 20], ['n', 'f']);
        scope.subtract('hall:lintel', small, [large]);
      });
    expect(work).toThrow('hall:lintel: the difference of hall:lintel, cutter left nothing');
  });

  it('refuses outlines that the kernel would take without a word', () => {
    const clockwise = [
      [0, 0],
      [0, 1],
      [1, 1],
    ] as const;
    const broken = [
      [0, 0],
      [Number.NaN, 0],
      [1, 1],
    ] as const;
    for (const points of [clockwise, broken])
      expect(() => outlineOf(['face', points])).toThrow('finite and counter-clockwise');
  });

  it('keeps coordinates in float64', () => {
    const size = 1000 / 3;
    const mesh = kernel.scope((scope) =>
      scope.mesh('box', scope.prism('box', rectangle([0, 0], [size, size], ONE), FRAME, [0, size], ['n', 'f'])),
    );
    expect(Math.max(...mesh.positions)).toBe(size);
  });

  it('gives the same bytes whatever was built before, and in a fresh kernel', async () => {
    const build = (k: Kernel) => {
      const { whole, parts } = houseSolids(k, house, { surface: 10 });
      return [whole, ...parts, ...blockSolids(k, house, layBlocks(house).blocks, { surface: 10 })];
    };
    const first = build(kernel);
    houseSolids(kernel, setOutHouse(houseOf()), { surface: 20 });
    expect(build(kernel)).toEqual(first);
    const { kernel: fresh } = await watchedKernel();
    expect(build(fresh)).toEqual(first);
  });

  it('holds no memory after 100 builds', async () => {
    const { kernel: watched, bytes } = await watchedKernel();
    const blocks = layBlocks(house).blocks;
    const build = () => {
      houseSolids(watched, house, { surface: 40 });
      blockSolids(watched, house, blocks, { surface: 40 });
    };
    for (let i = 0; i < 5; i++) build();
    const settled = bytes();
    for (let i = 0; i < 100; i++) build();
    expect(bytes()).toBe(settled);
  });

  // A house's own peak hides small leaks: here the peak is small and the steps are many.
  const roundOf = (corners: number) =>
    outlineOf([
      'side',
      Array.from({ length: corners }, (_, i) => {
        const a = (i / corners) * 2 * Math.PI;
        return [20 + 10 * Math.cos(a), 10 * Math.sin(a)] as const;
      }),
    ]);
  const fine = roundOf(2000);
  const coarse = roundOf(80);
  const rod = (scope: SolidScope, outline = coarse) => scope.prism('rod', outline, FRAME, [0, 5], ['n', 'f']);
  const box = (scope: SolidScope) => scope.prism('box', rectangle([0, 0], [20, 20], ONE), FRAME, [-9, 3], ['n', 'f']);
  const STEPS: Record<string, readonly [times: number, step: (scope: SolidScope) => unknown]> = {
    prism: [500, (scope) => rod(scope, fine)],
    revolve: [500, (scope) => scope.revolve('ring', fine, 3, [1, 1])],
    bend: [
      500,
      (scope) =>
        scope.bend(
          'bent',
          fine,
          1,
          (x, y, k) => [x, 9 * k, -y],
          () => 'face',
        ),
    ],
    union: [1000, (scope) => scope.union('sum', [rod(scope), box(scope)])],
    subtract: [1000, (scope) => scope.subtract('rest', rod(scope), [box(scope)])],
    intersect: [1000, (scope) => scope.intersect('common', [rod(scope), box(scope)])],
    pieces: [1000, (scope) => scope.pieces(rod(scope))],
    gap: [1000, (scope) => scope.gap(rod(scope), [40, 0, 0])],
    mesh: [1000, (scope) => scope.mesh('rod', rod(scope))],
    scope: [1000, (scope) => scope.scope((inner) => rod(inner))],
  };
  it.each(Object.keys(STEPS))('%s: done many times, it leaves no memory behind', async (name) => {
    const { kernel: watched, bytes } = await watchedKernel();
    const [times, step] = STEPS[name] as (typeof STEPS)[string];
    for (let i = 0; i < 20; i++) watched.scope(step);
    const settled = bytes();
    for (let i = 0; i < times; i++) watched.scope(step);
    expect(bytes()).toBe(settled);
  });

  it('frees what a failed build made', async () => {
    const { kernel: watched, bytes } = await watchedKernel();
    const fail = () =>
      watched.scope((scope) => {
        const box = (size: number) =>
          scope.prism('box', rectangle([-size, 0], [size, size], ONE), FRAME, [-size, size], ['n', 'f']);
        const round = scope.revolve('ball', rectangle([1, 1], [2, 2], ONE), 400, [0, 0]);
        scope.subtract('ball', round, [box(5)]);
      });
    for (let i = 0; i < 10; i++) expect(fail).toThrow('left nothing');
    const settled = bytes();
    for (let i = 0; i < 300; i++) expect(fail).toThrow('left nothing');
    expect(bytes()).toBe(settled);
  });
});
