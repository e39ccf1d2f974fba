export interface Owned {
  delete(): void;
}

/** A solid of the kernel, as far as we use it. */
export interface Body extends Owned {
  status(): string;
  isEmpty(): boolean;
  volume(): number;
  originalID(): number;
  asOriginal(): Body;
  translate(by: readonly number[]): Body;
  /** By a 4 × 4 matrix, column after column. */
  transform(matrix: readonly number[]): Body;
  warpBatch(work: (corners: Float64Array) => void): Body;
  /** `warpBatch` with a function made callable beforehand. */
  _WarpBatch(work: number): Body;
  decompose(): Body[];
  minGap(other: Body, searchLength: number): number;
  getMesh(): BodyMesh;
}

/** Triangles in runs; each run comes from one original solid. */
export interface BodyMesh {
  readonly triVerts: Uint32Array;
  readonly runIndex: Uint32Array;
  readonly runOriginalID: Uint32Array;
  readonly vertProperties: Float32Array;
}

export interface List<T> extends Owned {
  push_back(item: T): void;
}

export type Point = { readonly x: number; readonly y: number };

type Combine = 'union' | 'difference' | 'intersection';

/**
 * What we use of the kernel. Outlines go to its bindings directly: its public extrude and revolve pass them
 * through a plane union that rounds to 1e-8 and leave the point lists undeleted.
 */
export interface Bindings {
  setup(): void;
  /** Makes a function callable by the kernel; `signature` gives its result's and arguments' types. */
  addFunction(work: (at: number, count: number) => void, signature: 'vii'): number;
  readonly Vector_vec2: new () => List<Point>;
  readonly Vector2_vec2: new () => List<List<Point>>;
  _Revolve(outline: List<List<Point>>, segments: number, degrees: number): Body;
  _Extrude(outline: List<List<Point>>, height: number, divisions: number, twist: number, top: Point): Body;
  readonly Manifold: Record<Combine, (solids: readonly Body[]) => Body> & {
    cube(size: number, centred: boolean): Body;
    /** Throws when the mesh isn't closed. */
    ofMesh(mesh: BodyTriangles): Body;
  };
  readonly Mesh: new (mesh: BodyTriangles) => BodyTriangles;
}

/** Triangles that a solid is made of; corners in float32, three numbers each. */
export interface BodyTriangles {
  readonly numProp: 3;
  readonly vertProperties: Float32Array;
  readonly triVerts: Uint32Array;
}

/**
 * Moves or reads all corners of a solid at once, in float64 where they lie in the kernel's memory. The kernel's own
 * `warpBatch` compiles a function at each call, which takes longer than cutting a block; here one serves for all.
 */
export class CornerMover {
  readonly #bindings: Bindings;
  readonly #function: number;
  #work: (corners: Float64Array) => void = () => undefined;
  #memory = new ArrayBuffer(0);

  constructor(bindings: Bindings) {
    this.#bindings = bindings;
    this.#function = bindings.addFunction((at, count) => {
      this.#work(new Float64Array(this.#kernelMemory(), at, 3 * count));
    }, 'vii');
  }

  /** A copy of a solid whose corners, x, y and z in turn, `work` may have changed. */
  move(body: Body, work: (corners: Float64Array) => void): Body {
    this.#work = work;
    return body._WarpBatch(this.#function);
  }

  /**
   * All corners of a solid, x, y and z in turn. The kernel shows them in float64 only to what may move them, and then
   * puts the moved copy in order, which takes many times as long; a copy with a corner that is no number it gives up.
   */
  read(body: Body): Float64Array {
    let exact = new Float64Array();
    const givenUp = this.move(body, (corners) => {
      exact = corners.slice();
      corners[0] = Number.NaN;
    });
    givenUp.delete();
    return exact;
  }

  /** The kernel's memory is a new buffer each time that it has grown; the old one then has no length. */
  #kernelMemory(): ArrayBuffer {
    if (this.#memory.byteLength === 0) {
      const cube = this.#bindings.Manifold.cube(1, true);
      const same = cube.warpBatch((corners) => {
        this.#memory = corners.buffer as ArrayBuffer;
      });
      for (const item of [cube, same]) item.delete();
    }
    return this.#memory;
  }
}
