import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inFolder, runReader } from './run.js';

/** What slic3r (Debian) made of a part. */
export interface Sliced {
  /** Plastic that it lays, cm³, skirt included. */
  readonly filament: number;
  readonly layers: number;
  /** All that it said. */
  readonly said: string;
}

/** Slices an STL with 0.4 mm nozzle, 20 % infill and three perimeters; says what it repaired, if anything. */
export function sliceBySlic3r(stl: Uint8Array, bed: readonly [number, number], layer: number): Sliced {
  return inFolder({ name: 'part.stl', bytes: stl }, (path, folder) => {
    const output = join(folder, 'part.gcode');
    const [x, y] = bed;
    const args = [
      ...['--nozzle-diameter', '0.4', '--fill-density', '20', '--perimeters', '3', '--skirts', '0'],
      ...['--layer-height', String(layer), '--first-layer-height', String(layer)],
      ...['--bed-shape', `0x0,${x}x0,${x}x${y},0x${y}`, '--output', output, path],
    ];
    const { stdout, stderr } = runReader({ command: 'slic3r', debianPackage: 'slic3r' }, args, 'part.stl');
    const code = readFileSync(output, 'utf8');
    const used = /filament used = [\d.]+mm \(([\d.]+)cm3\)/.exec(code)?.[1];
    if (used === undefined) throw new Error(`slic3r laid nothing:\n${stdout}${stderr}`);
    const heights = new Set([...code.matchAll(/^G1 Z([\d.]+)/gm)].map((m) => m[1]));
    return { filament: Number(used), layers: heights.size, said: stdout + stderr };
  });
}
