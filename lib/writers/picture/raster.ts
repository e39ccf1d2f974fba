import type { Vec3 } from '../../math/vec.js';

/** A corner on the screen: x, y in pixels from the upper left, depth from 0, and how far it lies past the cut. */
export interface Corner {
  readonly x: number;
  readonly y: number;
  readonly depth: number;
  /** 1 over the distance along the line of sight. */
  readonly near: number;
  /** Distance past the cut, mm; what is positive isn't drawn. */
  readonly past: number;
}

/** What is seen at each pixel. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly depth: Float32Array;
  /** Red, green, blue, 0 to 255, row by row. */
  readonly colour: Uint8Array;
  /** What surface is seen; 0 for none. */
  readonly surface: Int32Array;
}

export function rasterOf(width: number, height: number, [red, green, blue]: Vec3): Raster {
  const colour = new Uint8Array(3 * width * height);
  for (let i = 0; i < colour.length; i += 3) {
    colour[i] = red;
    colour[i + 1] = green;
    colour[i + 2] = blue;
  }
  const depth = new Float32Array(width * height).fill(2);
  return { width, height, depth, colour, surface: new Int32Array(width * height) };
}

/** Colours every pixel whose middle lies in a triangle, nearer than what is there and before the cut. */
export function fillTriangle(
  raster: Raster,
  [p, q, r]: readonly [Corner, Corner, Corner],
  surface: number,
  colourAt: (x: number, y: number) => Vec3,
): void {
  const area = (q.x - p.x) * (r.y - p.y) - (r.x - p.x) * (q.y - p.y);
  if (area === 0) return;
  const { width, height, depth } = raster;
  const x0 = Math.max(0, Math.ceil(Math.min(p.x, q.x, r.x) - 0.5));
  const x1 = Math.min(width - 1, Math.floor(Math.max(p.x, q.x, r.x) - 0.5));
  const y0 = Math.max(0, Math.ceil(Math.min(p.y, q.y, r.y) - 0.5));
  const y1 = Math.min(height - 1, Math.floor(Math.max(p.y, q.y, r.y) - 0.5));
  const cut = Math.max(p.past, q.past, r.past) > 0;
  for (let y = y0; y <= y1; y++) {
    for (let x = x0; x <= x1; x++) {
      const [dx, dy] = [x + 0.5 - p.x, y + 0.5 - p.y];
      const u = (dx * (r.y - p.y) - (r.x - p.x) * dy) / area;
      const v = ((q.x - p.x) * dy - dx * (q.y - p.y)) / area;
      if (u < 0 || v < 0 || u + v > 1) continue;
      const w = 1 - u - v;
      // What is straight in space is straight on the screen once divided by the distance.
      if (cut && w * p.past * p.near + u * q.past * q.near + v * r.past * r.near > 0) continue;
      const z = w * p.depth + u * q.depth + v * r.depth;
      const k = y * width + x;
      if (z >= (depth[k] as number)) continue;
      depth[k] = z;
      raster.surface[k] = surface;
      raster.colour.set(colourAt(x, y), 3 * k);
    }
  }
}

/** Part of its light that a pixel keeps where one surface ends at another. */
const EDGE = 0.62;

/** The picture `over` times coarser, each pixel the mean of so many squared, with dark lines where surfaces meet. */
export function reduced({ width, height, colour, surface }: Raster, over: number): Uint8Array {
  const [wide, high] = [width / over, height / over];
  const pixels = new Uint8Array(3 * wide * high);
  for (let y = 0; y < high; y++) {
    for (let x = 0; x < wide; x++) {
      let [red, green, blue] = [0, 0, 0];
      for (let dy = 0; dy < over; dy++) {
        for (let dx = 0; dx < over; dx++) {
          const k = (y * over + dy) * width + x * over + dx;
          const edge = surface[k] !== (surface[k + 1] ?? 0) || surface[k] !== (surface[k + width] ?? 0);
          const light = edge ? EDGE : 1;
          red += (colour[3 * k] as number) * light;
          green += (colour[3 * k + 1] as number) * light;
          blue += (colour[3 * k + 2] as number) * light;
        }
      }
      const at = 3 * (y * wide + x);
      pixels[at] = Math.round(red / (over * over));
      pixels[at + 1] = Math.round(green / (over * over));
      pixels[at + 2] = Math.round(blue / (over * over));
    }
  }
  return pixels;
}
