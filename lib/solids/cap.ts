import { SAME_ANGLE_RAD } from '../base/tolerances.js';
import type { Mesh } from '../documents/mesh.js';
import { atan2, cos, hypot, sin } from '../math/elementary.js';
import { turnPositive, type Vec2 } from '../math/vec.js';
import type { Corner } from './outline.js';

/** What is put on a solid that was parted at a seam: a line in (r, z) turned about an upright axis. */
export interface Cap {
  /** Name of the level faces that it replaces: a ring about the axis. */
  readonly seam: string;
  readonly at: Vec2;
  readonly segments: number;
  /** From the ring's outer rim up, over and down to its inner rim. */
  readonly profile: readonly Corner[];
}

/** Vertices about an axis in the order of their angles; a single one for a point on the axis. */
interface Ring {
  readonly vertices: ArrayLike<number>;
  readonly angles: ArrayLike<number>;
}

/** Puts caps on a solid: the seams vanish, and their rims become the caps' first and last rings. */
export function withCaps(lower: Mesh, caps: readonly Cap[]): Mesh {
  if (caps.length === 0) return lower;
  const seams = caps.map((cap) => lower.faceNames.indexOf(cap.seam));
  const faceNames = lower.faceNames.filter((_, face) => !seams.includes(face));
  const rims = rimsOf(lower, caps, seams);
  const rings = caps.reduce((sum, { profile, segments }) => sum + profile.length * segments, 0);
  const corners = rims.reduce((sum, rim) => sum + rim.outer.vertices.length + rim.inner.vertices.length, 0);
  const mesh = new Growing(lower, seams, faceNames, rings, 2 * rings + corners);
  for (const [k, { at, segments, profile }] of caps.entries()) {
    const { outer, inner } = rims[k] as Rims;
    let below = outer;
    for (let i = 0; i + 1 < profile.length; i++) {
      const { name } = profile[i] as Corner;
      const { point } = profile[i + 1] as Corner;
      const above = i + 2 === profile.length ? inner : mesh.turn(at, point, segments);
      mesh.join(name, below, above);
      below = above;
    }
  }
  return mesh.done();
}

/** A mesh that takes more rings and bands between them; its arrays are made once, for as much as will come. */
class Growing {
  readonly #name: string;
  readonly #positions: Float64Array;
  readonly #triangles: Uint32Array;
  readonly #faceOf: Uint16Array;
  readonly #faceNames: string[];
  #vertices: number;
  #count = 0;

  /** Starts with a mesh less some of its faces. */
  constructor(from: Mesh, without: readonly number[], faceNames: string[], vertices: number, triangles: number) {
    this.#name = from.name;
    this.#faceNames = faceNames;
    this.#vertices = from.positions.length / 3;
    this.#positions = new Float64Array(from.positions.length + 3 * vertices);
    this.#positions.set(from.positions);
    this.#triangles = new Uint32Array(from.triangles.length + 3 * triangles);
    this.#faceOf = new Uint16Array(from.faceOf.length + triangles);
    const renamed = from.faceNames.map((name, face) => (without.includes(face) ? -1 : faceNames.indexOf(name)));
    for (let t = 0; t < from.faceOf.length; t++) {
      const face = renamed[from.faceOf[t] as number] as number;
      if (face < 0) continue;
      const [a, b, c] = [from.triangles[3 * t], from.triangles[3 * t + 1], from.triangles[3 * t + 2]];
      this.#add(a as number, b as number, c as number, face);
    }
  }

  #add(a: number, b: number, c: number, face: number): void {
    const t = this.#count++;
    this.#triangles[3 * t] = a;
    this.#triangles[3 * t + 1] = b;
    this.#triangles[3 * t + 2] = c;
    this.#faceOf[t] = face;
  }

  /** A point in (r, z) turned about the upright axis at `at`. */
  turn(at: Vec2, [r, z]: Vec2, segments: number): Ring {
    const count = r === 0 ? 1 : segments;
    const vertices = new Uint32Array(count);
    const angles = new Float64Array(count);
    for (let k = 0; k < count; k++) {
      const angle = (2 * Math.PI * k) / segments;
      const v = this.#vertices++;
      this.#positions[3 * v] = at[0] + r * cos(angle);
      this.#positions[3 * v + 1] = at[1] + r * sin(angle);
      this.#positions[3 * v + 2] = z;
      vertices[k] = v;
      angles[k] = angle + SAME_ANGLE_RAD;
    }
    return { vertices, angles };
  }

  /** A band of triangles between two rings, outward when the second lies above the first on the outside. */
  join(name: string, a: Ring, b: Ring): void {
    const [m, n] = [a.vertices.length, b.vertices.length];
    // Along the axis there is nothing.
    if (m === 1 && n === 1) return;
    const known = this.#faceNames.indexOf(name);
    const face = known < 0 ? this.#faceNames.push(name) - 1 : known;
    const [stepsA, stepsB] = [m > 1 ? m : 0, n > 1 ? n : 0];
    const vertex = (ring: Ring, k: number) => ring.vertices[k === ring.vertices.length ? 0 : k] as number;
    const angle = (ring: Ring, k: number) => ring.angles[k] ?? 2 * Math.PI + SAME_ANGLE_RAD;
    for (let i = 0, j = 0; i < stepsA || j < stepsB; ) {
      if (i < stepsA && (j === stepsB || angle(a, i + 1) <= angle(b, j + 1) + SAME_ANGLE_RAD)) {
        this.#add(vertex(a, i), vertex(a, i + 1), vertex(b, j), face);
        i++;
      } else {
        this.#add(vertex(a, i), vertex(b, j + 1), vertex(b, j), face);
        j++;
      }
    }
  }

  done(): Mesh {
    return {
      name: this.#name,
      positions: this.#positions.slice(0, 3 * this.#vertices),
      triangles: this.#triangles.slice(0, 3 * this.#count),
      faceNames: this.#faceNames,
      faceOf: this.#faceOf.slice(0, this.#count),
    };
  }
}

interface Rims {
  readonly outer: Ring;
  readonly inner: Ring;
}

/** The rims of each seam: a level ring about its cap's axis. */
function rimsOf({ positions, triangles, faceOf, name }: Mesh, caps: readonly Cap[], seams: readonly number[]): Rims[] {
  const found = caps.map(() => new Set<number>());
  const capOf = new Map(seams.map((face, k) => [face, k]));
  for (let t = 0; t < faceOf.length; t++) {
    const k = capOf.get(faceOf[t] as number);
    if (k !== undefined) for (let c = 0; c < 3; c++) (found[k] as Set<number>).add(triangles[3 * t + c] as number);
  }
  return caps.map(({ at }, k) => {
    const corners = [...(found[k] as Set<number>)].map((vertex) => {
      const [x, y] = [(positions[3 * vertex] as number) - at[0], (positions[3 * vertex + 1] as number) - at[1]];
      // Told from a little before due east, so that a corner there comes first however it is rounded.
      return { vertex, radius: hypot(x, y), angle: turnPositive(atan2(y, x) + SAME_ANGLE_RAD) };
    });
    if (corners.length === 0) throw new Error(`${name}: the kernel left no seam to put a cap on`);
    const radii = corners.map((c) => c.radius);
    const middle = (Math.max(...radii) + Math.min(...radii)) / 2;
    corners.sort((a, b) => a.angle - b.angle);
    const rim = (outside: boolean): Ring => {
      const own = corners.filter((c) => c.radius > middle === outside);
      return { vertices: own.map((c) => c.vertex), angles: own.map((c) => c.angle) };
    };
    return { outer: rim(true), inner: rim(false) };
  });
}
