import { WHOLE } from '../base/tolerances.js';
import type { Centering } from '../description/house.js';
import { nicheBack } from '../masonry/arch-volumes.js';
import { type Depth, onSurface } from '../masonry/prism.js';
import { acos, cos, sin } from '../math/elementary.js';
import type { HeadArc, Section } from '../math/section.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';

/** One arc of a rib, parallel to the soffit: the whole rib, or one of the two sides of a pointed one. */
export interface RibArc {
  readonly radius: number;
  /** Of the arc, radians. */
  readonly angleRad: number;
  readonly length: number;
  /** Straight from end to end, and the curve's height over it: to check a bend or a cut. */
  readonly chord: number;
  readonly rise: number;
  readonly pieces: 1 | 2;
}

/** One kind of lagging strip: its place on the soffit counted from the crown, and how long it is. */
export interface LaggingStrip {
  readonly number: number;
  /** Across from the middle of the opening, and above the floor: the strip's middle on the soffit. */
  readonly at: Vec2;
  readonly length: number;
  /** On the soffit. */
  readonly width: number;
  readonly pieces: 1 | 2;
}

/** The temporary support of one arch, barrel, vault or niche head. */
export interface Centre {
  readonly id: string;
  readonly what: 'opening' | 'niche' | 'passage';
  readonly shape: Section['head']['shape'];
  /** Clear width and rise of the soffit, springing above the floor. */
  readonly width: number;
  readonly rise: number;
  readonly springingZ: number;
  /** Longest way along the soffit. */
  readonly depth: number;
  readonly ribs: number;
  /** From middle to middle. */
  readonly spacing: number;
  /** Rib under its lagging: width at the springing and height over it. */
  readonly ribWidth: number;
  readonly ribRise: number;
  /** `null` under a flat head. */
  readonly board: RibArc | null;
  /** The same rib of bent tube, at the tube's centre line. */
  readonly tube: RibArc | null;
  readonly strips: readonly LaggingStrip[];
}

/** Centerings of every opening and passage, in their order. */
export function centresOf(house: HouseSetout): Centre[] {
  const rules = house.house.centering;
  return [
    ...house.arches.map((arch) =>
      centre(arch.clear.kind === 'through' ? 'opening' : 'niche', arch, soffitOf(arch), rules),
    ),
    ...house.passages.map((passage) => centre('passage', passage, vaultOf(passage), rules)),
  ];
}

function soffitOf(arch: ArchSetout): Depth {
  const { dome, faceV, clear } = arch;
  const inner = onSurface(dome, 0);
  const outer: Depth = faceV === null ? onSurface(dome, dome.thickness) : () => faceV;
  const end = clear.kind === 'through' ? outer : nicheBack(arch);
  return (u, z) => end(u, z) - inner(u, z);
}

const vaultOf =
  (passage: PassageSetout): Depth =>
  (u, z) => {
    const [from, to] = passage.stretchAt(u, z);
    return to - from;
  };

function centre(
  what: Centre['what'],
  { id, section }: Pick<ArchSetout | PassageSetout, 'id' | 'section'>,
  depthAt: Depth,
  rules: Centering,
): Centre {
  const { arc, springingZ, width, head } = section;
  const strips = stripsOf(section, depthAt, rules.laggingWidth);
  const depth = Math.max(...strips.map((s) => s.length));
  const ribs = Math.max(2, Math.ceil(depth / rules.ribSpacing - WHOLE) + 1);
  const board = arc && ribArc(arc, springingZ, rules.lagging);
  const outline = arc ? ribOutline(arc, springingZ, rules.lagging) : { width, rise: -rules.lagging };
  return {
    id,
    what,
    shape: head.shape,
    width,
    rise: head.rise,
    springingZ,
    depth,
    ribs,
    spacing: depth / (ribs - 1),
    ribWidth: outline.width,
    ribRise: outline.rise,
    board,
    tube: arc && ribArc(arc, springingZ, rules.lagging + rules.tube / 2),
    strips,
  };
}

/** A head's arc moved inward by `inset`, from the springing to the springing, or to the apex of a pointed head. */
export function ribArc({ past, centreZ, radius }: HeadArc, springingZ: number, inset: number): RibArc {
  const r = radius - inset;
  const half = past > 0;
  const angleRad = half ? acos(Math.min(1, past / r)) : 2 * acos(Math.max(-1, (springingZ - centreZ) / r));
  return {
    radius: r,
    angleRad,
    length: r * angleRad,
    chord: 2 * r * sin(angleRad / 2),
    rise: r * (1 - cos(angleRad / 2)),
    pieces: half ? 2 : 1,
  };
}

function ribOutline({ past, centreZ, radius }: HeadArc, springingZ: number, inset: number) {
  const r = radius - inset;
  const down = springingZ - centreZ;
  return {
    width: 2 * (Math.sqrt(r * r - down * down) - past),
    rise: Math.sqrt(r * r - past * past) - down,
  };
}

/** Strips of equal width side by side over the soffit, each as long as the longer of its edges asks. */
function stripsOf(section: Section, depthAt: Depth, width: number): LaggingStrip[] {
  const { arc } = section;
  // Along one side, from the crown to the springing.
  const side = arc ? arcSide(arc, section.springingZ) : { length: section.width / 2, at: flatSide(section) };
  const pointed = arc !== null && arc.past > 0;
  const total = Math.max(1, Math.ceil((pointed ? 1 : 2) * (side.length / width) - WHOLE));
  const step = (pointed ? side.length : 2 * side.length) / total;
  const middle = !pointed && total % 2 === 1;
  const length = (from: number, to: number) =>
    Math.max(...[from, (from + to) / 2, to].map((x) => depthAt(...side.at(Math.min(side.length, Math.abs(x))))));
  const strips: LaggingStrip[] = [];
  if (middle) strips.push({ number: 1, at: side.at(0), length: length(-step / 2, step / 2), width: step, pieces: 1 });
  const pairs = pointed ? total : (total - (middle ? 1 : 0)) / 2;
  for (let k = 0; k < pairs; k++) {
    const from = k * step + (middle ? step / 2 : 0);
    strips.push({
      number: strips.length + 1,
      at: side.at(from + step / 2),
      length: length(from, from + step),
      width: step,
      pieces: 2,
    });
  }
  return strips;
}

const flatSide =
  (section: Section) =>
  (x: number): Vec2 => [x, section.crownZ];

function arcSide({ past, centreZ, radius }: HeadArc, springingZ: number) {
  // Angle from level at the crown and at the springing, about the centre of the right side's arc.
  const top = acos(Math.min(1, past / radius));
  const low = Math.PI / 2 - acos(Math.max(-1, (springingZ - centreZ) / radius));
  return {
    length: radius * (top - low),
    at: (x: number): Vec2 => {
      const angle = top - x / radius;
      return [radius * cos(angle) - past, centreZ + radius * sin(angle)];
    },
  };
}
