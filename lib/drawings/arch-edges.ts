import { CREASE_RAD } from '../base/tolerances.js';
import { type Edge, edgeAt } from '../math/curves.js';
import { sectionOutline } from '../math/section.js';
import type { Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { fromArchFrame, type Prism } from './arch-places.js';
import { edgeFeature, type Feature, jointFeature } from './feature.js';
import { type SpaceCurve, spaceLine, standing } from './space-curve.js';

/** Distance from the axis of the surface that a section is followed to, by height. */
type RadiusAt = (z: number) => number;

/** Edges of an opening: its outlines on face, extrados and intrados, and the creases that run outward along it. */
export function archEdges(arch: ArchSetout): Feature[] {
  const { dome, section, ring, faceV, baseZ, clear } = arch;
  const intrados: RadiusAt = (z) => dome.radiusAt(z);
  const extrados: RadiusAt = (z) => dome.outerRadiusAt(z);
  const clearOutline = outlineOf(arch, 0, section.sill);
  const outerOutline = outlineOf(arch, ring, baseZ);
  const features: Feature[] = [
    ...onSurface(arch, clearOutline, intrados, section.sill).map((c) => edgeFeature(c)),
    ...onSurface(arch, outerOutline, intrados, baseZ).map((c) => jointFeature(c)),
  ];
  if (faceV === null) {
    features.push(...onSurface(arch, outerOutline, extrados, 0).map((c) => jointFeature(c)));
    if (clear.kind === 'through')
      features.push(...onSurface(arch, clearOutline, extrados, -1).map((c) => edgeFeature(c)));
  } else {
    features.push(
      ...inPlane(arch, outerOutline, faceV),
      ...onSurface(arch, outerOutline, extrados, 0).map((c) => edgeFeature(c)),
    );
    if (clear.kind === 'through') features.push(...inPlane(arch, clearOutline, faceV));
    features.push(...creases(arch, ring, 0, extrados, () => faceV));
  }
  if (clear.kind === 'parallel') {
    const back: RadiusAt = (z) => dome.radiusAt(z, clear.depth);
    features.push(...onSurface(arch, clearOutline, back, -1).map((c) => edgeFeature(c)));
    features.push(...creases(arch, 0, section.sill, intrados, (u, z) => onRadius(back(z), u)));
  } else if (clear.kind === 'plane') {
    features.push(...inPlane(arch, clearOutline, clear.v));
    features.push(...creases(arch, 0, section.sill, intrados, () => clear.v));
  } else {
    const out = faceV === null ? (u: number, z: number) => onRadius(extrados(z), u) : () => faceV;
    features.push(...creases(arch, 0, section.sill, intrados, out));
  }
  return features;
}

export const outlineOf = (arch: Prism, grow: number, from: number): Edge[] => sectionOutline(arch.section, grow, from);

export const onRadius = (r: number, u: number): number => Math.sqrt(r * r - u * u);

/** The outline in the upright plane at distance v. */
const inPlane = (arch: ArchSetout, outline: readonly Edge[], v: number): Feature[] =>
  outline.map((e) => edgeFeature(standing(e, fromArchFrame(arch, 0, v), arch.across)));

/** The outline on a surface of revolution; a foot at the floor, where the floor runs on, is no edge. */
function onSurface(arch: ArchSetout, outline: readonly Edge[], radiusAt: RadiusAt, floor: number): SpaceCurve[] {
  return outline
    .filter((e) => !(e.kind === 'line' && e.from[1] === e.to[1] && e.from[1] === 0 && floor === 0))
    .map((e) => ({
      kind: 'free',
      from: 0,
      to: 1,
      at: (t: number): Vec3 => {
        const [u, z] = edgeAt(e, t);
        const [x, y] = fromArchFrame(arch, u, onRadius(radiusAt(z), u));
        return [x, y, z];
      },
    }));
}

/** Lines along the bearing: feet of the jambs, corners where a head doesn't run on from its jamb, a pointed crown. */
function creases(
  arch: ArchSetout,
  grow: number,
  from: number,
  inner: RadiusAt,
  outer: (u: number, z: number) => number,
): Feature[] {
  return creasePlaces(arch, grow, from).flatMap(([u, z]) => outward(arch, u, z, onRadius(inner(z), u), outer(u, z)));
}

/** Where such lines pass a section: (u, z). */
export function creasePlaces({ section }: Prism, grow: number, from: number): (readonly [number, number])[] {
  const half = section.width / 2 + grow;
  const corner = section.shoulderZ(grow);
  const { arc } = section;
  const bends = arc === null || (corner - arc.centreZ) / (half + arc.past) > CREASE_RAD;
  return [
    [half, from],
    [-half, from],
    ...(bends
      ? ([
          [half, corner],
          [-half, corner],
        ] as const)
      : []),
    ...(arc && arc.past > 0 ? ([[0, section.topZ(grow)]] as const) : []),
  ];
}

/** Along the crown of a barrel whose head is round: no crease, but the uppermost line that a level look sees. */
export function barrelCrown(arch: ArchSetout): Feature[] {
  const { section, ring, faceV, dome } = arch;
  if (faceV === null || section.arc === null || section.arc.past > 0) return [];
  const z = section.topZ(ring);
  return outward(arch, 0, z, dome.outerRadiusAt(z), faceV);
}

/** A line along a prism at (u, z), if it has a length. */
export function outward(arch: Prism, u: number, z: number, from: number, to: number): Feature[] {
  if (!(to > from)) return [];
  const at = (v: number): Vec3 => {
    const [x, y] = fromArchFrame(arch, u, v);
    return [x, y, z];
  };
  return [edgeFeature(spaceLine(at(from), at(to)))];
}
