import { tan } from '../../math/elementary.js';
import type { ArchSetout } from '../../setout/arch.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import type { PassageSetout } from '../../setout/passage.js';
import { bedJoints } from './bands.js';
import type { CutLine } from './cut-lines.js';
import { leanAt, type RoofLevel, SHARP_RAD } from './levels.js';
import { carriedFrom, roofPegs, type StandingPegs, socketDepth, wallPegs } from './peg-places.js';
import type { PrintSizes } from './sizes.js';

/** A level at which a part too high for the printer is parted: a bed joint of one dome, through all that stands there. */
export interface HeightCut {
  readonly z: number;
  /** The dome whose joint it is, and the course below it. */
  readonly joint: { readonly dome: string; readonly course: number | null };
  /** By dome; `null` where the cut passes above or below its walls. */
  readonly pegs: readonly (StandingPegs | null)[];
}

/** Pegs that hold a piece without turning. */
const PEGS = 3;
/** Slopes of outlines are taken over so many thinnest walls. */
const SLOPE_OVER = 0.25;

/** A level that a part may be parted at: its pegs, found when they are asked for, and how far down they are carried. */
interface Candidate extends Omit<HeightCut, 'pegs'> {
  readonly foot: number;
  readonly pegsOf: () => HeightCut['pegs'];
}

/** A part as it stands: what it is parted into must be no higher than the printer reaches. */
interface Stack {
  readonly bottom: number;
  readonly top: number;
  readonly candidates: readonly Candidate[];
}

/**
 * Levels at which what stands on the plate is parted, the lowest first; none where the printer reaches its top; `null`
 * where no joint gets it there. A cut leaves no edge sharper than a wall may be and keeps the thinnest wall from heads,
 * sills and the pegs of roofs.
 * @param roofs levels at which the domes' roofs come off
 * @param lines upright cuts, which pegs keep away from
 */
export function baseCuts(
  setout: HouseSetout,
  roofs: readonly (RoofLevel | null)[],
  { bottom, top: ground }: { readonly bottom: number; readonly top: number },
  lines: readonly CutLine[],
  sizes: PrintSizes,
): HeightCut[] | null {
  const { domes, arches, passages } = setout;
  const walls = domes.map((dome, i) => wallOf(dome, roofs[i] ?? null, sizes));
  const top = Math.max(...walls.map((wall) => wall.end), ...[...arches, ...passages].map((way) => way.topZ));
  if (top - bottom <= sizes.bed[2]) return [];
  // Of all domes: a cut along the side of a groove leaves a lip too thin to print, so near joints are moved to the cut.
  const joints = jointsOf(domes, sizes);
  const sound = joints.filter(
    ({ z }) =>
      z >= Math.max(0, ground) + sizes.thin &&
      [...arches, ...passages].every((way) => cutsWell(way, z, sizes)) &&
      joints.every((joint) => !joint.sloped || Math.abs(joint.z - z) >= sizes.groove.width) &&
      walls.every((wall) => z >= wall.end + sizes.thin || isSound(wall, z, sizes)),
  );
  const candidates = sound.map(({ z, joint }): Candidate => {
    const crossed = walls.map((wall) => z < wall.end);
    const pegsOf = () => domes.map((dome, i) => (crossed[i] ? wallPegs(setout, dome, z, sizes, lines) : null));
    const feet = domes.flatMap((dome, i) => (crossed[i] ? [carriedFrom(dome, z, sizes)] : []));
    return { z, joint, pegsOf, foot: Math.min(...feet) };
  });
  return parted({ bottom, top, candidates: candidates.filter(({ foot }) => foot >= 0) }, sizes);
}

/** The same for a roof that comes off at a level. */
export function roofCuts(
  setout: HouseSetout,
  dome: DomeSetout,
  { z: bottom }: RoofLevel,
  lines: readonly CutLine[],
  sizes: PrintSizes,
): HeightCut[] | null {
  const top = dome.topZ;
  if (top - bottom <= sizes.bed[2]) return [];
  const wall = wallOf(dome, null, sizes);
  const candidates = jointsOf([dome], sizes)
    .filter(({ z, sloped }) => z > bottom && !sloped && isSound(wall, z, sizes))
    .map(({ z, joint }): Candidate => {
      const pegsOf = () =>
        setout.domes.map((other) => (other.id === dome.id ? roofPegs(setout, dome, z, sizes, lines) : null));
      return { z, joint, pegsOf, foot: carriedFrom(dome, z, sizes) };
    });
  return parted({ bottom, top, candidates }, sizes);
}

function jointsOf(domes: readonly DomeSetout[], sizes: PrintSizes) {
  return domes.flatMap((dome) =>
    bedJoints(dome, sizes).map(({ z, course, sloped }) => ({
      z: Math.fround(z),
      sloped,
      joint: { dome: dome.id, course },
    })),
  );
}

/** As few cuts as joints give, each as high as the printer reaches and, among those in its upper half, on most pegs. */
function parted({ bottom, top, candidates }: Stack, sizes: PrintSizes): HeightCut[] | null {
  const reach = sizes.bed[2];
  const deep = socketDepth(sizes);
  const cuts: HeightCut[] = [];
  let from = bottom;
  while (top - from > reach) {
    const above = cuts.length === 0 ? from : from + deep + sizes.thin;
    const reached = candidates
      .filter(({ z, foot }) => foot >= above && z + sizes.peg.length - from <= reach)
      .sort((a, b) => b.z - a.z);
    const [highest] = reached;
    if (!highest || highest.z <= from) return null;
    const upper = reached.filter(({ z }) => z - from >= (highest.z - from) / 2);
    let best: HeightCut | null = null;
    for (const { z, joint, pegsOf } of upper) {
      const cut = { z, joint, pegs: pegsOf() };
      if (!best || fewestPegs(cut) > fewestPegs(best)) best = cut;
      if (fewestPegs(best) >= PEGS) break;
    }
    cuts.push(best as HeightCut);
    from = (best as HeightCut).z;
  }
  return cuts;
}

const fewestPegs = ({ pegs }: HeightCut): number => Math.min(...pegs.flatMap((own) => (own ? [own.at.length] : [])));

/** A dome's wall as far as it stands: where it ends, pegs and all, and up to where it may be parted. */
interface StandingWall {
  readonly dome: DomeSetout;
  readonly end: number;
  readonly most: number;
}

function wallOf(dome: DomeSetout, roof: RoofLevel | null, sizes: PrintSizes): StandingWall {
  const { thin, peg } = sizes;
  if (roof) return { dome, end: roof.z + peg.length, most: carriedFrom(dome, roof.z, sizes) - thin };
  const top = dome.curb ? Math.min(dome.curb.bedOuter[1], dome.shell.at(dome.curb.bedS).z) : dome.topZ;
  return { dome, end: dome.topZ, most: top - thin };
}

/** Whether a level cut leaves a wall with edges and remains as thick as walls are. */
function isSound({ dome, most }: StandingWall, z: number, sizes: PrintSizes): boolean {
  const { thin } = sizes;
  if (z > most || z + socketDepth(sizes) + 2 * thin > dome.topZ || leanAt(dome, z) > SHARP_RAD) return false;
  const { skewback, springingZ } = dome;
  return !skewback || z <= springingZ - thin || z >= Math.max(skewback.shoulderZ, skewback.bed[1], springingZ) + thin;
}

/** Whether a level cut keeps clear of an opening's sill and head, and of where its outlines lean in as a vault. */
function cutsWell(way: ArchSetout | PassageSetout, z: number, { thin }: PrintSizes): boolean {
  const { section, topZ } = way;
  const { sill, crownZ } = section;
  const isFlush = 'faceV' in way && way.faceV === null;
  const base = isFlush ? sill : 0;
  if (z <= base - thin || z >= (isFlush ? crownZ : topZ) + thin) return true;
  if (z > crownZ - thin || Math.abs(z - sill) < thin) return false;
  const half = SLOPE_OVER * thin;
  const steep = tan(SHARP_RAD) * 2 * half;
  const outlines = [
    ...(z > sill ? [(h: number) => way.clearHalfAt(h)] : []),
    ...(isFlush ? [] : [(h: number) => way.outerHalfAt(h)]),
  ];
  return outlines.every((at) => Math.abs(at(z - half) - at(z + half)) <= steep);
}
