// Renders a sample as a picture without GPU or browser: node tests/tools/picture.mjs FILE OUT.png [bearing] [elevation]
// Blocks, rings and cast pieces are drawn as solids, so joints show as the gaps that they are. Needs `npm run build`.
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { deflateSync } from 'node:zlib';
import manifold from 'manifold-3d';
import { blockSolids, houseSolids, layBlocks, loadKernel, readDescription, setOutHouse } from '../../dist/lib/index.js';

const [file, out, bearingText = '215', elevationText = '28'] = process.argv.slice(2);
if (!file || !out) {
  console.error('usage: node tests/tools/picture.mjs FILE OUT.png [bearing] [elevation]');
  process.exit(2);
}
const WIDTH = 1400;
const HEIGHT = 1000;
const OVER = 2;
const COLOURS = {
  block: [214, 196, 168],
  arch: [178, 112, 82],
  curb: [120, 128, 140],
  plug: [120, 128, 140],
  skewback: [150, 150, 158],
  footing: [142, 140, 136],
  slab: [176, 174, 168],
};

const wasm = readFileSync(createRequire(import.meta.url).resolve('manifold-3d/manifold.wasm'));
const kernel = await loadKernel({ factory: manifold, wasm });
const setout = setOutHouse(readDescription(readFileSync(file, 'utf8'), file));
const parts = houseSolids(kernel, setout).parts.filter((p) => !/:(shell|stem-wall)$/.test(p.name));
const blocks = blockSolids(kernel, setout, layBlocks(setout).blocks);
const kindOf = (name) => (/^(arch|passage):/.test(name) ? 'arch' : (name.split(':')[1] ?? name));
const solids = [...parts.map((m) => [m, kindOf(m.name)]), ...blocks.map((m) => [m, 'block'])];

const bearing = (Number(bearingText) * Math.PI) / 180;
const elevation = (Number(elevationText) * Math.PI) / 180;
// The viewer stands at `bearing` and looks at the house, raised by `elevation`.
const toViewer = [
  Math.sin(bearing) * Math.cos(elevation),
  Math.cos(bearing) * Math.cos(elevation),
  Math.sin(elevation),
];
const right = [-Math.cos(bearing), Math.sin(bearing), 0];
const up = [-Math.sin(bearing) * Math.sin(elevation), -Math.cos(bearing) * Math.sin(elevation), Math.cos(elevation)];
const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const light = [0.35 * right[0] + 0.5 * toViewer[0], 0.35 * right[1] + 0.5 * toViewer[1], 0.8];
const lightLength = Math.hypot(...light);

let [left, bottom, rightmost, top] = [Infinity, Infinity, -Infinity, -Infinity];
for (const [mesh] of solids) {
  for (let i = 0; i < mesh.positions.length; i += 3) {
    const p = mesh.positions.subarray(i, i + 3);
    left = Math.min(left, dot(p, right));
    rightmost = Math.max(rightmost, dot(p, right));
    bottom = Math.min(bottom, dot(p, up));
    top = Math.max(top, dot(p, up));
  }
}
const w = WIDTH * OVER;
const h = HEIGHT * OVER;
const zoom = 0.92 * Math.min(w / (rightmost - left), h / (top - bottom));
const depth = new Float64Array(w * h).fill(-Infinity);
const colour = new Float32Array(w * h * 3).fill(250);
const owner = new Int32Array(w * h).fill(-1);

solids.forEach(([mesh, kind], id) => {
  const base = COLOURS[kind] ?? COLOURS.block;
  const tint = kind === 'block' ? 1 + 0.05 * (((id * 7919) % 13) / 6 - 1) : 1;
  const screen = [];
  for (let i = 0; i < mesh.positions.length; i += 3) {
    const p = mesh.positions.subarray(i, i + 3);
    screen.push([
      (dot(p, right) - (left + rightmost) / 2) * zoom + w / 2,
      h / 2 - (dot(p, up) - (bottom + top) / 2) * zoom,
      dot(p, toViewer),
    ]);
  }
  for (let t = 0; t < mesh.triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => mesh.triangles[t + k]);
    const at = (i) => mesh.positions.subarray(3 * i, 3 * i + 3);
    const e1 = [0, 1, 2].map((k) => at(b)[k] - at(a)[k]);
    const e2 = [0, 1, 2].map((k) => at(c)[k] - at(a)[k]);
    const n = [e1[1] * e2[2] - e1[2] * e2[1], e1[2] * e2[0] - e1[0] * e2[2], e1[0] * e2[1] - e1[1] * e2[0]];
    const length = Math.hypot(...n) || 1;
    if (dot(n, toViewer) <= 0) continue;
    const shade = tint * (0.42 + 0.58 * Math.max(0, dot(n, light) / length / lightLength));
    fill(
      screen[a],
      screen[b],
      screen[c],
      base.map((v) => v * shade),
      id,
    );
  }
});

function fill(p, q, r, rgb, id) {
  const area = (q[0] - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (q[1] - p[1]);
  if (area === 0) return;
  const x0 = Math.max(0, Math.floor(Math.min(p[0], q[0], r[0])));
  const x1 = Math.min(w - 1, Math.ceil(Math.max(p[0], q[0], r[0])));
  const y0 = Math.max(0, Math.floor(Math.min(p[1], q[1], r[1])));
  const y1 = Math.min(h - 1, Math.ceil(Math.max(p[1], q[1], r[1])));
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      const u = ((x - p[0]) * (r[1] - p[1]) - (r[0] - p[0]) * (y - p[1])) / area;
      const v = ((q[0] - p[0]) * (y - p[1]) - (x - p[0]) * (q[1] - p[1])) / area;
      if (u < 0 || v < 0 || u + v > 1) continue;
      const z = p[2] + u * (q[2] - p[2]) + v * (r[2] - p[2]);
      const k = y * w + x;
      if (z <= depth[k]) continue;
      depth[k] = z;
      owner[k] = id;
      colour.set(rgb, 3 * k);
    }
  }
}

// A dark line where the solid changes reads as the drawing's edge.
const pixels = new Uint8Array(HEIGHT * (1 + WIDTH * 3));
for (let y = 0; y < HEIGHT; y++) {
  for (let x = 0; x < WIDTH; x++) {
    const sum = [0, 0, 0];
    for (let dy = 0; dy < OVER; dy++) {
      for (let dx = 0; dx < OVER; dx++) {
        const k = (y * OVER + dy) * w + x * OVER + dx;
        const edge = owner[k] !== (owner[k + 1] ?? -1) || owner[k] !== (owner[k + w] ?? -1);
        for (let i = 0; i < 3; i++) sum[i] += colour[3 * k + i] * (edge ? 0.62 : 1);
      }
    }
    for (let i = 0; i < 3; i++)
      pixels[y * (1 + WIDTH * 3) + 1 + 3 * x + i] = Math.min(255, Math.round(sum[i] / OVER ** 2));
  }
}
writeFileSync(out, png(pixels));

function png(data) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(WIDTH, 0);
  header.writeUInt32BE(HEIGHT, 4);
  header.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
  return Buffer.concat([
    signature,
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(data, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

function chunk(type, body) {
  const data = Buffer.concat([Buffer.from(type, 'latin1'), body]);
  const size = Buffer.alloc(4);
  size.writeUInt32BE(body.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc(data));
  return Buffer.concat([size, data, check]);
}

function crc(data) {
  let c = 0xffffffff;
  for (const byte of data) {
    c ^= byte;
    for (let k = 0; k < 8; k++) c = c & 1 ? (c >>> 1) ^ 0xedb88320 : c >>> 1;
  }
  return (c ^ 0xffffffff) >>> 0;
}
