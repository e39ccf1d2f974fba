import { fileURLToPath } from 'node:url';
import { turnOf } from '../../lib/documents/dimension-arcs.js';
import { measureOf } from '../../lib/documents/dimensioning.js';
import type { DimensionPrimitive } from '../../lib/documents/drawing.js';
import { readWith } from './run.js';

export interface PatternLine {
  readonly angle: number;
  readonly base: readonly number[];
  readonly offset: readonly number[];
  readonly dashes: readonly number[];
}

/** What ezdxf (Debian's python3-ezdxf) reads in a DXF file, by its programming interface. */
export interface DxfReading {
  readonly version: string;
  /** `$INSUNITS`: 4 is millimetres. */
  readonly units: number;
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  /** From the header, and from the dimension style that the header names. */
  readonly dimScale: readonly [number, number];
  readonly dimTextHeight: readonly [number, number];
  readonly extents: readonly [readonly number[], readonly number[]];
  readonly counts: Readonly<Record<string, number>>;
  readonly layers: Readonly<Record<string, { readonly weight: number; readonly lineType: string }>>;
  readonly lineTypes: Readonly<Record<string, readonly number[]>>;
  readonly dimensions: readonly {
    readonly type: number;
    readonly measurement: number;
    /** Where the arc of an angle runs. */
    readonly arcPoint: readonly [number, number] | null;
    readonly style: string;
    readonly override: string;
    readonly texts: readonly string[];
    readonly strokes: number;
  }[];
  /** By which measures are multiplied, by dimension style. */
  readonly lengthFactors: Readonly<Record<string, number>>;
  readonly inserts: readonly { readonly name: string; readonly at: readonly number[]; readonly rotation: number }[];
  readonly hatches: readonly {
    readonly pattern: string;
    readonly solid: number;
    readonly layer: string;
    readonly paths: number;
    readonly bulges: number;
    readonly lines: readonly PatternLine[];
    /** The lines of the pattern of that name in the reader's own table, turned and scaled as the file says. */
    readonly namedLines: readonly PatternLine[];
  }[];
  readonly texts: readonly {
    readonly text: string;
    readonly align: string;
    readonly at: readonly number[];
    readonly height: number;
    readonly rotation: number;
    readonly layer: string;
  }[];
  readonly polylines: readonly {
    readonly layer: string;
    readonly closed: boolean;
    readonly points: readonly (readonly number[])[];
  }[];
  readonly arcs: readonly {
    readonly layer: string;
    readonly radius: number;
    readonly start: number;
    readonly end: number;
  }[];
}

const SCRIPT = fileURLToPath(new URL('../tools/read-dxf.py', import.meta.url));

export const readByEzdxf = (dxf: Uint8Array): DxfReading => readAllByEzdxf([dxf])[0] as DxfReading;

/** Many files at once: the reader takes longer to begin than to read one. */
export function readAllByEzdxf(all: readonly Uint8Array[]): DxfReading[] {
  // Debian's own interpreter, for which its packages are installed.
  const python = { command: '/usr/bin/python3', args: [SCRIPT], debianPackage: 'python3-ezdxf' };
  const [first, ...more] = all.map((bytes, i) => ({
    name: i === 0 ? 'drawing.dxf' : `drawing-${i + 1}.dxf`,
    bytes,
  }));
  return first ? (JSON.parse(readWith(python, first, ...more)) as DxfReading[]) : [];
}

/** What the reader measures of a dimension: it knows no lengths of arcs, and takes their angle, in degrees. */
export const measureAsRead = (dim: DimensionPrimitive): number =>
  dim.type === 'arc' ? (turnOf(dim) * 180) / Math.PI : measureOf(dim);
