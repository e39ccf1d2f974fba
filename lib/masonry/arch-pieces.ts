import { atan2, hypot } from '../math/elementary.js';
import { integrate, integrateSoftEnds } from '../math/quadrature.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { type ArchJoint, archJoints, onOutline } from './arch-joints.js';
import type { Edge } from './dimensions.js';
import { type Depth, domeBreaks, onSurface, sectionBreaks } from './prism.js';

/** What a piece of an arch is: the ring cast in one, or one of its stones. */
export type ArchPieceKind = 'ring' | 'springer' | 'voussoir' | 'keystone' | 'skewback';

/** A line of the section that ends a piece: so far on the upper side of a joint's middle. */
export interface PieceEnd {
  readonly joint: ArchJoint;
  readonly beside: number;
}

/**
 * One stone of an arch laid of voussoirs, or a ring cast in one. `lower` and `upper` end it in the right half of the section; without a lower
 * one it stands on the level of the springing, without an upper one it goes on over the middle. Those to the left are
 * mirror images.
 */
export interface ArchPiece {
  readonly mark: string;
  readonly archId: string;
  readonly kind: ArchPieceKind;
  /** Seen from outside. */
  readonly side: 'left' | 'middle' | 'right';
  /** Stones of one form are mirror images: 1 the springers, the keystone's number the highest; 0 for what is no voussoir. */
  readonly form: number;
  readonly lower: PieceEnd | null;
  readonly upper: PieceEnd | null;
  /** mm³ */
  readonly volume: number;
}

/** What a stone is cast in; mirror images share it. */
export function archForm({ archId, kind, form }: Pick<ArchPiece, 'archId' | 'kind' | 'form'>): string {
  return kind === 'ring' || kind === 'skewback' ? `${archId} ${kind}` : `${archId} ${form}`;
}

export interface ArchPieces {
  /** From left to right seen from outside. */
  readonly pieces: readonly ArchPiece[];
  /** Mortar between voussoirs and under the springers, mm³. */
  readonly joints: number;
}

/** The stones of an arch, or its ring cast in one; each measured by itself. */
export function archPieces(arch: ArchSetout, joint: number): ArchPieces {
  const count = arch.opening.arch.voussoirs;
  if (count === null) {
    const whole = { kind: 'ring', side: 'middle', form: 0, lower: null, upper: null } as const;
    const ring: ArchPiece = {
      mark: `${arch.id}-ring`,
      archId: arch.id,
      ...whole,
      volume: 2 * regionVolume(arch, whole),
    };
    return { pieces: [ring], joints: 0 };
  }
  const lines = archJoints(arch.section, count);
  const key = lines.length;
  const pieces: ArchPiece[] = [];
  const pair = (
    kind: ArchPieceKind,
    name: (side: 0 | 1) => string,
    form: number,
    ends: Pick<ArchPiece, 'lower' | 'upper'>,
  ) => {
    const volume = regionVolume(arch, ends);
    // Outside, the right half of the section, seen from inside, is the left.
    pieces.unshift({ mark: name(0), archId: arch.id, kind, side: 'left', form, ...ends, volume });
    pieces.push({ mark: name(1), archId: arch.id, kind, side: 'right', form, ...ends, volume });
  };
  const middle = {
    // The joint at the springing lies on the jamb's bed, all others on both sides of their lines.
    lower: { joint: lines[key - 1] as ArchJoint, beside: key === 1 ? joint : joint / 2 },
    upper: null,
  };
  pieces.push({
    mark: `${arch.id}-v${key}`,
    archId: arch.id,
    kind: 'keystone',
    side: 'middle',
    form: key,
    ...middle,
    volume: 2 * regionVolume(arch, middle),
  });
  for (let k = key - 2; k >= 0; k--) {
    const ends = {
      lower: { joint: lines[k] as ArchJoint, beside: k === 0 ? joint : joint / 2 },
      upper: { joint: lines[k + 1] as ArchJoint, beside: -joint / 2 },
    };
    pair(k === 0 ? 'springer' : 'voussoir', (side) => `${arch.id}-v${side === 0 ? k + 1 : count - k}`, k + 1, ends);
  }
  const first = lines[0] as ArchJoint;
  if (first.out[1] > 0)
    pair('skewback', (side) => `${arch.id}-s${side + 1}`, 0, { lower: null, upper: { joint: first, beside: 0 } });
  const mortar = lines.map((line, k) =>
    regionVolume(arch, {
      lower: { joint: line, beside: k === 0 ? 0 : -joint / 2 },
      upper: { joint: line, beside: k === 0 ? joint : joint / 2 },
    }),
  );
  return { pieces, joints: 2 * mortar.reduce((sum, v) => sum + v, 0) };
}

/** How deep the masonry of an arch is along its bearing. */
function archDepth({ dome, faceV }: ArchSetout): Depth {
  const inner = onSurface(dome, 0);
  const outer: Depth = faceV === null ? onSurface(dome, dome.thickness) : () => faceV;
  return (u, z) => outer(u, z) - inner(u, z);
}

/** Stretch of a level line that a piece takes in the right half of the section; empty when the first is larger. */
function sliceOf(arch: ArchSetout, { lower, upper }: Pick<ArchPiece, 'lower' | 'upper'>): (z: number) => Vec2 {
  const { section } = arch;
  return (z) => {
    let from = section.halfWidthAt(z);
    let to = arch.outerHalfAt(z);
    if (lower) {
      const { at, out } = lower.joint;
      const over = (z - at[1]) * out[0] - lower.beside;
      if (out[1] > 0) to = Math.min(to, at[0] + over / out[1]);
      else if (over < 0) to = from;
    }
    if (upper) {
      const { at, out } = upper.joint;
      const over = (z - at[1]) * out[0] - upper.beside;
      if (out[1] > 0) from = Math.max(from, at[0] + over / out[1]);
      else if (over > 0) to = from;
    }
    return [from, to];
  };
}

/** Volume of what lies in the right half of the section, mm³. */
function regionVolume(arch: ArchSetout, ends: Pick<ArchPiece, 'lower' | 'upper'>): number {
  const { section, ring, dome } = arch;
  const slice = sliceOf(arch, ends);
  const depth = archDepth(arch);
  const corners = [ends.lower, ends.upper].flatMap((end) =>
    end
      ? [
          ...[0, ring].map((grow) => onOutline(section, end.joint, end.beside, grow)[1]),
          onJambLine(arch, end),
          // A level joint starts between the outlines' ends.
          end.joint.at[1] + end.beside * end.joint.out[0],
        ]
      : [],
  );
  const [low, high] = [section.springingZ, arch.topZ];
  const breaks = [low, high, ...corners, ...sectionBreaks(section, [0, ring]), ...domeBreaks(dome)];
  const levels = [...new Set(breaks.filter((z) => z >= low && z <= high))].sort((a, b) => a - b);
  const across = (z: number): number => {
    const [from, to] = slice(z);
    return to > from ? integrate((u) => depth(u, z), from, to, 8) : 0;
  };
  let sum = 0;
  for (let k = 0; k + 1 < levels.length; k++)
    sum += integrateSoftEnds(across, levels[k] as number, levels[k + 1] as number, 16);
  return sum;
}

/** Height at which a line of the section leaves the jambs' outer face. */
function onJambLine({ section, ring }: ArchSetout, { joint: { at, out }, beside }: PieceEnd): number {
  const u = section.width / 2 + ring;
  const [startU, startZ] = [at[0] - beside * out[1], at[1] + beside * out[0]];
  return out[0] > 0 ? startZ + ((u - startU) * out[1]) / out[0] : startZ;
}

/** Sizes of a stone in the section and along the bearing; lengths mm, angle radians. */
export interface ArchPieceSizes {
  /** `null` where it has none: of a skewback. */
  readonly soffit: Edge | null;
  readonly back: Edge;
  /** Between its two joints; of a skewback, between its joint and level; 0 of a ring. */
  readonly angleRad: number;
  /** Edges along the bearing, from the room to the face: on soffit and back, at the lower and the upper end. */
  readonly depth: {
    readonly soffitLower: number;
    readonly soffitUpper: number;
    readonly backLower: number;
    readonly backUpper: number;
  };
}

export function archPieceSizes(arch: ArchSetout, { kind, side, lower, upper }: ArchPiece): ArchPieceSizes {
  const { section, ring } = arch;
  const corner = (end: PieceEnd | null, grow: number, without: Vec2): Vec2 =>
    end ? onOutline(section, end.joint, end.beside, grow) : without;
  const foot = (grow: number): Vec2 => [section.width / 2 + grow, section.springingZ];
  const shoulder = (grow: number): Vec2 => [section.width / 2 + grow, section.shoulderZ(grow)];
  const crown = (grow: number): Vec2 => [0, section.topZ(grow)];
  const soffit = [corner(lower, 0, foot(0)), corner(upper, 0, crown(0))] as const;
  const back = [corner(lower, ring, shoulder(ring)), corner(upper, ring, crown(ring))] as const;
  const edge = ([a, b]: readonly [Vec2, Vec2], grow: number): Edge => {
    const { arc } = section;
    const angleOf = ([u, z]: Vec2) => (arc ? atan2(z - arc.centreZ, u + arc.past) : 0);
    const own = arc ? (arc.radius + grow) * (angleOf(b) - angleOf(a)) : hypot(b[0] - a[0], b[1] - a[1]);
    return side === 'middle' ? { arc: 2 * own, chord: 2 * a[0] } : { arc: own, chord: hypot(b[0] - a[0], b[1] - a[1]) };
  };
  const slope = (end: PieceEnd | null) => (end ? atan2(end.joint.out[1], end.joint.out[0]) : 0);
  const angle = upper ? slope(upper) - slope(lower) : lower ? Math.PI - 2 * slope(lower) : 0;
  const depth = archDepth(arch);
  return {
    soffit: kind === 'skewback' ? null : edge(soffit, 0),
    back: edge(back, ring),
    angleRad: angle,
    depth: {
      soffitLower: depth(...soffit[0]),
      soffitUpper: depth(...soffit[1]),
      backLower: depth(...(lower ? back[0] : foot(ring))),
      backUpper: depth(...back[1]),
    },
  };
}
