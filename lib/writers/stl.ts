import { serializeBinary } from '@jscad/stl-serializer/CSGToStlb.js';
import * as texts from '../base/texts/writers.js';
import { DocumentError } from '../documents/document-error.js';
import type { Mesh } from '../documents/mesh.js';
import { auditEdges, auditMesh } from '../documents/mesh-audit.js';
import { transformMesh } from '../documents/mesh-measure.js';
import type { Vec3 } from '../math/vec.js';
import { PointTable, roundApart } from './float-rounding.js';
import { walkedTriangles } from './stl-triangles.js';

const HEADER = 80;
const TRIANGLE = 50;

export interface StlOptions {
  /** Model mm per mm of the solids, e.g. 1 / 50 for a scale model; 1 when left out. */
  readonly scale?: number;
  /** Printable ASCII kept at the file's head, 70 characters at most; the rest is dropped. */
  readonly title: string;
}

/** What the strict edge test found in the bytes of a binary STL. */
export interface StlAudit {
  readonly triangles: number;
  readonly vertices: number;
  readonly openEdges: number;
  readonly crowdedEdges: number;
  readonly opposedEdges: number;
  readonly nonFinite: number;
  readonly degenerate: number;
  /** Triangles at fault, each once, in the order of the file. */
  readonly faulty: readonly number[];
  /** A corner of the first of them, mm. */
  readonly at?: Vec3;
}

/**
 * Binary STL of closed solids, one after the other in one file.
 * The serializer's plain entry snaps corners to a hundred-thousandth of the solid's size, which can close up thin
 * triangles and tear the skin; its binary stage is called by itself, on corners rounded to float32 beforehand.
 * The bytes are then decoded and held to the strict edge test once more, over all parts together.
 * @throws DocumentError naming the part that leaks, or the parts that touch along an edge.
 */
export function writeStl(parts: readonly Mesh[], options: StlOptions): Uint8Array {
  if (parts.length === 0) throw new DocumentError('empty', options.title, texts.thereIsNoSolid);
  const faults = parts.flatMap(auditMesh);
  const [fault] = faults;
  if (fault) throw new DocumentError(fault.code, fault.part, faults.map((f) => `${f.part}: ${f.message}`).join(' '));

  const { scale = 1 } = options;
  const solids = parts.map((part) => {
    const { positions } = scale === 1 ? part : transformMesh(part, { scale });
    return walkedTriangles(roundApart(positions), part.triangles);
  });
  const pieces = serializeBinary(solids, {}).map((piece) => new Uint8Array(piece));
  const bytes = new Uint8Array(pieces.reduce((n, piece) => n + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  bytes.set(headerOf(options.title));
  requireClosed(bytes, parts);
  return bytes;
}

/**
 * Strict test of a binary STL as its readers see it: corners are joined only where they agree to the last digit,
 * every directed edge must occur once and its opposite once.
 * @throws DocumentError when the length doesn't fit the count of triangles.
 */
export function auditStl(bytes: Uint8Array): StlAudit {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const count = bytes.length >= HEADER + 4 ? view.getUint32(HEADER, true) : 0;
  if (bytes.length !== HEADER + 4 + TRIANGLE * count)
    throw new DocumentError('bad-length', 'STL', texts.bytesDontHoldTriangles(bytes.length, count));

  const table = new PointTable(3 * count);
  const corners = new Uint32Array(3 * count);
  const bad = new Set<number>();
  let nonFinite = 0;
  // Adding zero makes one place of zero and negative zero.
  const float = (at: number): number => view.getFloat32(at, true) + 0;
  let degenerate = 0;
  for (let t = 0; t < count; t++) {
    const at = HEADER + 4 + TRIANGLE * t;
    let sum = float(at) + float(at + 4) + float(at + 8);
    for (let c = 0; c < 3; c++) {
      const x = float(at + 12 + 12 * c);
      const y = float(at + 16 + 12 * c);
      const z = float(at + 20 + 12 * c);
      corners[3 * t + c] = table.place(x, y, z);
      sum += x + y + z;
    }
    if (!Number.isFinite(sum)) {
      nonFinite++;
      bad.add(t);
    }
    if (
      corners[3 * t] === corners[3 * t + 1] ||
      corners[3 * t + 1] === corners[3 * t + 2] ||
      corners[3 * t + 2] === corners[3 * t]
    ) {
      degenerate++;
      bad.add(t);
    }
  }
  const edges = auditEdges(corners, table.size);
  for (const t of [edges.open, edges.crowded, edges.opposed].flat(2)) bad.add(t);
  const faulty = [...bad].sort((a, b) => a - b);
  const [first] = faulty;
  const place = first === undefined ? undefined : HEADER + 4 + TRIANGLE * first + 12;
  return {
    triangles: count,
    vertices: table.size,
    openEdges: edges.open.length,
    crowdedEdges: edges.crowded.length,
    opposedEdges: edges.opposed.length,
    nonFinite,
    degenerate,
    faulty,
    ...(place === undefined
      ? {}
      : {
          at: [
            view.getFloat32(place, true),
            view.getFloat32(place + 4, true),
            view.getFloat32(place + 8, true),
          ] as Vec3,
        }),
  };
}

function requireClosed(bytes: Uint8Array, parts: readonly Mesh[]): void {
  const audit = auditStl(bytes);
  if (audit.faulty.length === 0) return;
  const names = [...new Set(audit.faulty.map((t) => partOf(t, parts)))];
  const where = audit.at?.map((x) => x.toFixed(3)).join(', ');
  if (audit.crowdedEdges > 0 && audit.openEdges === 0 && audit.opposedEdges === 0 && audit.nonFinite === 0)
    throw new DocumentError('crowded-edge', names.join(', '), texts.edgesAreShared(audit.crowdedEdges, where));
  throw new DocumentError(
    'open-edge',
    names.join(', '),
    texts.solidLeaksAsWritten(
      audit.openEdges,
      audit.crowdedEdges,
      audit.opposedEdges,
      audit.degenerate,
      audit.nonFinite,
      where,
    ),
  );
}

function partOf(triangle: number, parts: readonly Mesh[]): string {
  let before = 0;
  for (const part of parts) {
    before += part.triangles.length / 3;
    if (triangle < before) return part.name;
  }
  return texts.unknownPart;
}

/** A head that begins with "solid" would be taken for the text form. */
function headerOf(title: string): Uint8Array {
  const text = texts.stlHeader(title).slice(0, HEADER);
  return Uint8Array.from({ length: HEADER }, (_, i) => {
    const code = i < text.length ? text.charCodeAt(i) : 0x20;
    return code >= 0x20 && code < 0x7f ? code : 0x3f;
  });
}
