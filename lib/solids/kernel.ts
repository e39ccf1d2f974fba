import * as texts from '../base/texts/solids.js';
import { SPECK } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import type { Placement } from '../documents/scene.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import { type Bindings, type Body, CornerMover, type List, type Owned, type Point } from './bindings.js';
import { type FaceNamer, type PlanFrame, prismFaces, revolvedFaces } from './faces.js';
import type { Outline } from './outline.js';

/** The geometry kernel as its caller supplies it: this library loads no file and imports no code of it. */
export interface KernelSource {
  /** The default export of the module `manifold-3d`. */
  readonly factory: (settings: { locateFile: () => string; wasmBinary: Uint8Array }) => Promise<unknown>;
  /** The bytes of its `manifold.wasm`. */
  readonly wasm: Uint8Array;
}

/** A loaded kernel. Solids live inside one scope and die with it, whatever happens. */
export interface Kernel {
  scope<T>(work: (scope: SolidScope) => T): T;
}

/** A closed solid inside a scope, named for messages after the part that it makes. */
export interface Solid {
  readonly part: string;
  readonly body: Body;
}

/** How far a point looks for the solid that it lies in; mm. */
const FAR = 1e4;

const loaded = new WeakMap<KernelSource['factory'], Promise<Kernel>>();

/** Loads the kernel once for each factory; later calls get the same one. */
export function loadKernel(source: KernelSource): Promise<Kernel> {
  const known = loaded.get(source.factory);
  if (known) return known;
  // A name instead of an address: with the bytes given, nothing is located, and bundles have no address.
  const fresh = source.factory({ locateFile: () => 'manifold.wasm', wasmBinary: source.wasm }).then((module) => {
    const bindings = module as Bindings;
    bindings.setup();
    const mover = new CornerMover(bindings);
    return { scope: <T>(work: (scope: SolidScope) => T) => runScope(bindings, mover, new Map(), work) };
  });
  loaded.set(source.factory, fresh);
  fresh.catch(() => loaded.delete(source.factory));
  return fresh;
}

function runScope<T>(
  bindings: Bindings,
  mover: CornerMover,
  faces: Map<number, FaceNamer>,
  work: (scope: SolidScope) => T,
): T {
  const owned: Owned[] = [];
  try {
    return work(new SolidScope(bindings, mover, faces, owned));
  } finally {
    for (const item of owned) item.delete();
  }
}

/** Makes solids and owns them all. Each step checks its result and names the part that failed. */
export class SolidScope {
  constructor(
    private readonly bindings: Bindings,
    private readonly mover: CornerMover,
    private readonly faces: Map<number, FaceNamer>,
    private readonly owned: Owned[],
  ) {}

  /** A scope inside this one: it sees these solids, and its own die before them. */
  scope<T>(work: (scope: SolidScope) => T): T {
    return runScope(this.bindings, this.mover, this.faces, work);
  }

  /** An outline in (r, z) turned about the upright axis at `at` in equal facets; one corner lies due east. */
  revolve(part: string, outline: Outline, segments: number, at: Vec2): Solid {
    const body = this.withPoints(outline, (points) => this.bindings._Revolve(points, segments, 360));
    this.faces.set(body.originalID(), revolvedFaces(outline, segments, at));
    return this.checked(part, texts.revolvingItsOutline, this.own(body.translate([at[0], at[1], 0])));
  }

  /** An outline in (u, z) pushed along v from `v[0]` to `v[1]`; `ends` name the two end faces. */
  prism(
    part: string,
    outline: Outline,
    frame: PlanFrame,
    v: readonly [number, number],
    ends: readonly [string, string],
  ): Solid {
    const body = this.withPoints(outline, (points) =>
      this.bindings._Extrude(points, v[1] - v[0], 0, 0, { x: 1, y: 1 }),
    );
    this.faces.set(body.originalID(), prismFaces(outline, frame, v, ends));
    const { at, along, across } = frame;
    // (u, z, −v) is right-handed: the kernel's third axis runs back from the far end.
    const placed = body.transform([
      ...[across[0], across[1], 0, 0],
      ...[0, 0, 1, 0],
      ...[-along[0], -along[1], 0, 0],
      ...[at[0] + along[0] * v[1], at[1] + along[1] * v[1], 0, 1],
    ]);
    return this.checked(part, texts.pushingItsOutlineAlong, this.own(placed));
  }

  /** An outline repeated at stations 0 … `count` and placed point by point; right-handed in (outline, station). */
  bend(
    part: string,
    outline: Outline,
    count: number,
    place: (x: number, y: number, station: number) => Vec3,
    faces: FaceNamer,
  ): Solid {
    const straight = this.withPoints(outline, (points) =>
      this.bindings._Extrude(points, count, count - 1, 0, { x: 1, y: 1 }),
    );
    const bent = this.mover.move(straight, (corners) => {
      for (let i = 0; i < corners.length; i += 3) {
        corners.set(place(corners[i] as number, corners[i + 1] as number, Math.round(corners[i + 2] as number)), i);
      }
    });
    const body = this.own(this.own(bent).asOriginal());
    this.faces.set(body.originalID(), faces);
    return this.checked(part, texts.bendingItsOutline, body);
  }

  /** An outline in plan (x east, y north) pushed up from one level to another; all its faces have the outline's names. */
  slab(part: string, outline: Outline, [from, to]: readonly [number, number]): Solid {
    const body = this.withPoints(outline, (points) => this.bindings._Extrude(points, to - from, 0, 0, { x: 1, y: 1 }));
    const name = outline.names[0] as string;
    this.faces.set(body.originalID(), () => name);
    return this.checked(part, texts.pushingItsOutlineUp, this.own(body.translate([0, 0, from])));
  }

  /** A solid given by its triangles, closed by index and facing outward; its corners are rounded to float32. */
  solid(part: string, positions: ArrayLike<number>, triangles: Uint32Array, faces: FaceNamer): Solid {
    const mesh = new this.bindings.Mesh({
      numProp: 3,
      vertProperties: Float32Array.from(positions),
      triVerts: triangles,
    });
    const body = this.own(this.own(this.bindings.Manifold.ofMesh(mesh)).asOriginal());
    this.faces.set(body.originalID(), faces);
    return this.checked(part, texts.closingItsTriangles, body);
  }

  union(part: string, solids: readonly Solid[]): Solid {
    return this.combine(part, 'union', solids);
  }

  /** The first solid less all others. */
  subtract(part: string, from: Solid, solids: readonly Solid[]): Solid {
    return this.combine(part, 'difference', [from, ...solids]);
  }

  intersect(part: string, solids: readonly Solid[]): Solid {
    return this.combine(part, 'intersection', solids);
  }

  private combine(part: string, operation: 'union' | 'difference' | 'intersection', solids: readonly Solid[]): Solid {
    if (solids.length === 1) return { part, body: (solids[0] as Solid).body };
    const body = this.bindings.Manifold[operation](solids.map((s) => s.body));
    const names = solids.map((s) => s.part).join(', ');
    return this.checked(part, texts.operationOf(operation, names), this.own(body));
  }

  /** The connected pieces of a solid, the largest first. */
  pieces({ part, body }: Solid): Solid[] {
    return body
      .decompose()
      .map((piece) => ({ part, body: this.own(piece) }))
      .sort((a, b) => b.body.volume() - a.body.volume());
  }

  /** Distance (mm) between a solid and a point outside it; 0 when the solid holds the point. */
  gap({ body }: Solid, point: Vec3): number {
    const speck = this.own(this.own(this.bindings.Manifold.cube(SPECK, true)).translate([...point]));
    return body.minGap(speck, FAR);
  }

  /** Distance (mm) between two solids that lie apart, as far as `most`; 0 where they meet. */
  between(one: Solid, other: Solid, most: number): number {
    return one.body.minGap(other.body, most);
  }

  /** The solid after a motion: where the axes point, and where the origin comes to lie. */
  moved({ part, body }: Solid, { x, y, z, move }: Placement): Solid {
    return { part, body: this.own(body.transform([...x, 0, ...y, 0, ...z, 0, ...move, 1])) };
  }

  volume({ body }: Solid): number {
    return body.volume();
  }

  /** The solid as a mesh in float64, in an order that depends on its making alone. */
  mesh(name: string, solid: Solid): Mesh {
    const { triVerts, runIndex, runOriginalID, vertProperties } = solid.body.getMesh();
    const triangles = triVerts.slice();
    const positions = this.exactPositions(solid, vertProperties);
    const faceNames: string[] = [];
    const indexOf = new Map<string, number>();
    const faceOf = new Uint16Array(triangles.length / 3);
    for (let run = 0; run < runOriginalID.length; run++) {
      const namer = this.faces.get(runOriginalID[run] as number);
      if (!namer) throw new Error(`${name}: a face comes from a solid that no outline made`);
      for (let t = (runIndex[run] as number) / 3; t < (runIndex[run + 1] as number) / 3; t++) {
        const face = nameTriangle(namer, positions, triangles, t);
        let index = indexOf.get(face);
        if (index === undefined) {
          index = faceNames.push(face) - 1;
          indexOf.set(face, index);
        }
        faceOf[t] = index;
      }
    }
    return { name, positions, triangles, faceNames, faceOf };
  }

  /** The same where nobody asks for faces by name: all are one. Less than half the work. */
  plainMesh(name: string, solid: Solid): Mesh {
    const { triVerts, vertProperties } = solid.body.getMesh();
    const triangles = triVerts.slice();
    const positions = this.exactPositions(solid, vertProperties);
    return { name, positions, triangles, faceNames: [name], faceOf: new Uint16Array(triangles.length / 3) };
  }

  /** The mesh export rounds to float32; these are the same vertices unrounded. */
  private exactPositions(solid: Solid, rounded: Float32Array): Float64Array {
    const exact = this.mover.read(solid.body);
    if (!sameRounded(exact, rounded)) {
      throw new Error(`${solid.part}: the kernel's exact and rounded vertices don't correspond`);
    }
    return exact;
  }

  private withPoints(outline: Outline, make: (points: List<List<Point>>) => Body): Body {
    const ring = new this.bindings.Vector_vec2();
    const rings = new this.bindings.Vector2_vec2();
    try {
      for (const [x, y] of outline.points) ring.push_back({ x, y });
      rings.push_back(ring);
      return this.own(make(rings));
    } finally {
      ring.delete();
      rings.delete();
    }
  }

  private own<T extends Owned>(item: T): T {
    this.owned.push(item);
    return item;
  }

  private checked(part: string, step: string, body: Body): Solid {
    const status = body.status();
    if (status !== 'NoError') throw new Error(`${part}: ${step} failed in the geometry kernel (${status})`);
    if (body.isEmpty()) throw new Error(`${part}: ${step} left nothing`);
    return { part, body };
  }
}

function sameRounded(exact: Float64Array, rounded: Float32Array): boolean {
  if (exact.length !== rounded.length) return false;
  for (let i = 0; i < exact.length; i++) if (Math.fround(exact[i] as number) !== rounded[i]) return false;
  return true;
}

function nameTriangle(namer: FaceNamer, positions: Float64Array, triangles: Uint32Array, t: number): string {
  const a = 3 * (triangles[3 * t] as number);
  const b = 3 * (triangles[3 * t + 1] as number);
  const c = 3 * (triangles[3 * t + 2] as number);
  const ax = positions[a] as number;
  const ay = positions[a + 1] as number;
  const az = positions[a + 2] as number;
  const bx = positions[b] as number;
  const by = positions[b + 1] as number;
  const bz = positions[b + 2] as number;
  const cx = positions[c] as number;
  const cy = positions[c + 1] as number;
  const cz = positions[c + 2] as number;
  const nx = (by - ay) * (cz - az) - (bz - az) * (cy - ay);
  const ny = (bz - az) * (cx - ax) - (bx - ax) * (cz - az);
  const nz = (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
  const length = Math.sqrt(nx * nx + ny * ny + nz * nz) || 1;
  return namer((ax + bx + cx) / 3, (ay + by + cy) / 3, (az + bz + cz) / 3, nx / length, ny / length, nz / length);
}
