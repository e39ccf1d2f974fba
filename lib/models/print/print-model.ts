import type { Mesh } from '../../documents/mesh.js';
import { meshBounds, meshVolume, transformMesh } from '../../documents/mesh-measure.js';
import { IN_PLACE, type Placement } from '../../documents/scene.js';
import type { Vec2, Vec3 } from '../../math/vec.js';
import type { Kernel, Solid, SolidScope } from '../../solids/kernel.js';
import { arrange, type Spot } from './arrange.js';
import { assemble } from './assemble.js';
import { type CutTree, linesOf } from './cut-lines.js';
import { filamentVolume } from './filament.js';
import { layFlat } from './lay-flat.js';
import { BRIDGE } from './overhang.js';
import { cutPieces, loosePeg, type Piece, type Pieces } from './pieces.js';
import type { PrintPlan } from './plan.js';
import type { PrintSizes } from './sizes.js';

export type PartKind = 'base' | 'roof' | 'peg' | 'block';

/** One printed part in mm of the model, as it lies on the bed with its least corner in the origin. */
export interface PrintPart {
  /** Name for people and files: `base`, `base-2`, `hall-roof`, `peg`. */
  readonly name: string;
  readonly kind: PartKind;
  readonly mesh: Mesh;
  /** How many are needed. */
  readonly count: number;
  readonly size: Vec3;
  /** Volume enclosed, and of the plastic in it, mm³ each. */
  readonly volume: number;
  readonly filament: number;
  /** Widest stretch that hangs over too flat, mm; `supported` where it is too wide to bridge. */
  readonly overhang: number;
  readonly supported: boolean;
  /** From its place in the model to where it lies; `null` for what has no one place. */
  readonly motion: Placement | null;
}

/** Where one copy of a part lies. */
export interface PlacedPart {
  readonly part: number;
  readonly plate: number;
  readonly at: Vec2;
  readonly turned: boolean;
}

/** The printed model: its pieces, ready for the bed. */
export interface PrintModel {
  readonly plan: PrintPlan;
  readonly parts: readonly PrintPart[];
  readonly places: readonly PlacedPart[];
  readonly plates: number;
  /** The model in one piece, roofs on, in its place. */
  readonly whole: Mesh;
  /** Courses whose joints are too fine for the nozzle, by dome. */
  readonly plain: readonly (readonly number[])[];
}

/** A solid to be printed, still in mm of the house. */
interface Raw {
  readonly name: string;
  readonly kind: PartKind;
  readonly mesh: Mesh;
  readonly faces: readonly Vec2[];
  readonly count: number;
}

/** Blocks to be printed one by one, in mm of the house; alike ones once, with their count. */
export interface LooseBlock {
  readonly mesh: Mesh;
  readonly count: number;
  /** Outward normals, in plan, of upright faces that it may lie on. */
  readonly faces: readonly Vec2[];
}

/** Makes every part of a planned print. Throws an `Error` naming the part when the kernel fails on it. */
export function printModel(kernel: Kernel, plan: PrintPlan, loose: readonly LooseBlock[] = []): PrintModel {
  const { sizes } = plan;
  const { nozzle, bed } = plan.setout.house.print;
  const made = kernel.scope((scope) => {
    const assembly = assemble(scope, plan);
    const scaled = (mesh: Mesh) => transformMesh(mesh, { scale: 1 / sizes.scale });
    const raw = rawParts(scope, plan, assembly);
    return {
      raw: [...raw, ...loose.map(blockPart)].map((r) => ({ ...r, mesh: scaled(r.mesh) })),
      whole: scaled(scope.plainMesh('model', assembly.whole)),
      plain: assembly.plain,
    };
  });
  const parts = made.raw.map(({ faces, ...rest }): PrintPart => {
    const { mesh, motion, overhang } = layFlat(rest.mesh, faces, bed);
    return {
      ...rest,
      mesh,
      size: meshBounds(mesh).max,
      volume: meshVolume(mesh),
      filament: filamentVolume(mesh, nozzle),
      overhang: overhang.span,
      supported: overhang.span > BRIDGE,
      motion: rest.count === 1 && rest.kind !== 'peg' ? motion : null,
    };
  });
  const spots = arrange(
    parts.flatMap(({ size, count }, part) =>
      Array.from({ length: count }, () => ({ id: String(part), size: [size[0], size[1]] as const })),
    ),
    [bed[0], bed[1]],
  );
  const places = spots.map(({ id, ...spot }: Spot): PlacedPart => ({ ...spot, part: Number(id) }));
  const plates = Math.max(...places.map((p) => p.plate));
  return { plan, parts, places, plates, whole: made.whole, plain: made.plain };
}

function rawParts(scope: SolidScope, plan: PrintPlan, { base, roofs }: ReturnType<typeof assemble>): Raw[] {
  const { sizes, setout, domes } = plan;
  const standing = piecesOf(scope, base, plan.base, sizes);
  const lids = roofs.map(({ dome, layers }) => {
    const tree = domes[dome]?.roof as NonNullable<(typeof domes)[number]['roof']>;
    return { name: `${setout.domes[dome]?.id}-roof`, ...piecesOf(scope, layers, tree, sizes) };
  });
  const named = (kind: PartKind, name: string, pieces: readonly Piece[]): Raw[] =>
    pieces.map(({ solid, faces }, i) => {
      const own = pieces.length === 1 ? name : `${name}-${i + 1}`;
      return { name: own, kind, mesh: scope.plainMesh(own, solid), faces, count: 1 };
    });
  const pegs = standing.pegs.length + lids.reduce((n, lid) => n + lid.pegs.length, 0);
  return [
    ...named('base', 'base', standing.pieces),
    ...lids.flatMap(({ name, pieces }) => named('roof', name, pieces)),
    ...(pegs > 0
      ? [
          {
            name: 'peg',
            kind: 'peg' as const,
            mesh: scope.plainMesh('peg', loosePeg(scope, sizes)),
            faces: [],
            count: pegs,
          },
        ]
      : []),
  ];
}

/** The pieces of a part, layer by layer; above the lowest, what doesn't hang together is a piece each. */
function piecesOf(scope: SolidScope, layers: readonly Solid[], tree: CutTree, sizes: PrintSizes): Pieces {
  const cut = layers.map((solid, i) => {
    const { pieces, pegs } = cutPieces(scope, { solid, faces: [] }, tree, linesOf(tree), sizes);
    const apart = ({ solid: piece, faces }: Piece) => scope.pieces(piece).map((one) => ({ solid: one, faces }));
    return { pieces: i === 0 ? pieces : pieces.flatMap(apart), pegs };
  });
  return { pieces: cut.flatMap((c) => c.pieces), pegs: cut.flatMap((c) => c.pegs) };
}

const blockPart = ({ mesh, count, faces }: LooseBlock): Raw => ({
  name: `block-${mesh.name}`,
  kind: 'block',
  mesh,
  count,
  faces,
});

/** Where a copy lies on its plate, from where its part lies in the origin. */
export function placeOnPlate({ at, turned }: PlacedPart, { size }: PrintPart): Placement {
  if (!turned) return { ...IN_PLACE, move: [at[0], at[1], 0] };
  return { x: [0, 1, 0], y: [-1, 0, 0], z: [0, 0, 1], move: [at[0] + size[1], at[1], 0] };
}
