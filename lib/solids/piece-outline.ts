import { onOutline } from '../masonry/arch-joints.js';
import type { ArchPiece } from '../masonry/arch-pieces.js';
import { atan2, cos, sin } from '../math/elementary.js';
import type { Section } from '../math/section.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { type Outline, outlineOf, type Stretch } from './outline.js';
import { arcSteps, steps } from './sections.js';

/** A stone of an arch in the section, its arcs in chords; (u, z), counter-clockwise. */
export function pieceOutline({ section, ring }: ArchSetout, piece: ArchPiece, sagitta: number): Outline {
  const right = rightHalf(section, ring, piece, sagitta);
  if (piece.side === 'middle') {
    const [soffit, back] = right;
    const foot: Vec2 = [section.width / 2 + ring, section.springingZ];
    if (!piece.lower)
      return outlineOf(
        ['bed', [soffit[0] as Vec2]],
        ['back', [foot, ...back, ...mirrored(back).slice(1)]],
        ['bed', [mirror(foot)]],
        ['soffit', [...soffit.map(mirror), ...[...soffit].reverse().slice(1, -1)]],
      );
    return outlineOf(
      ['joint', [soffit[0] as Vec2]],
      ['back', [...back, ...mirrored(back).slice(1, -1)]],
      ['joint', [mirror(back[0] as Vec2)]],
      ['soffit', [...soffit.map(mirror), ...[...soffit].reverse().slice(1, -1)]],
    );
  }
  const stretches = stonesStretches(section, ring, piece, right);
  // Outside left is the right half of the section.
  return outlineOf(...(piece.side === 'left' ? stretches : turnedOver(stretches)));
}

const mirror = ([u, z]: Vec2): Vec2 => [-u, z];
/** The mirror image of a run of points, from its end. */
const mirrored = (points: readonly Vec2[]): Vec2[] => [...points].reverse().map(mirror);

/** Soffit and back of a stone in the right half, from its lower end to its upper one or the middle. */
function rightHalf(
  section: Section,
  ring: number,
  { lower, upper }: ArchPiece,
  sagitta: number,
): readonly [soffit: Vec2[], back: Vec2[]] {
  const top = (grow: number): Vec2 => [0, section.topZ(grow)];
  const at = (end: ArchPiece['lower'], grow: number): Vec2 =>
    end ? onOutline(section, end.joint, end.beside, grow) : top(grow);
  const line = (grow: number) => {
    const from = lower ? at(lower, grow) : shoulderOf(section, grow);
    return arcBetween(section, grow, from, at(upper, grow), sagitta);
  };
  return [line(0), line(ring)];
}

const shoulderOf = (section: Section, grow: number): Vec2 => [section.width / 2 + grow, section.shoulderZ(grow)];

function arcBetween({ arc }: Section, grow: number, from: Vec2, to: Vec2, sagitta: number): Vec2[] {
  if (!arc) return [from, to];
  const radius = arc.radius + grow;
  const angleOf = ([u, z]: Vec2) => atan2(z - arc.centreZ, u + arc.past);
  const [start, end] = [angleOf(from), angleOf(to)];
  const between = steps(start, end, arcSteps(radius, end - start, sagitta)).slice(1, -1);
  return [from, ...between.map((a): Vec2 => [radius * cos(a) - arc.past, arc.centreZ + radius * sin(a)]), to];
}

function stonesStretches(
  section: Section,
  ring: number,
  piece: ArchPiece,
  [soffit, back]: readonly [Vec2[], Vec2[]],
): Stretch[] {
  if (piece.lower)
    return [
      ['joint', soffit.slice(0, 1)],
      ['back', back.slice(0, -1)],
      ['joint', back.slice(-1)],
      ['soffit', soffit.slice(1).reverse()],
    ];
  const half = section.width / 2;
  const spring: Vec2 = [half, section.springingZ];
  return [
    ['bed', [spring]],
    ['back', [[half + ring, section.springingZ], ...back.slice(0, -1)]],
    ['joint', back.slice(-1)],
  ];
}

/** The mirror image: each edge keeps its name, and the way round is the same. */
function turnedOver(stretches: readonly Stretch[]): Stretch[] {
  const corners = stretches.flatMap(([name, points]) => points.map((point) => ({ name, point })));
  const count = corners.length;
  return corners.map((_, k): Stretch => {
    const own = corners[(count - k) % count] as (typeof corners)[number];
    const before = corners[(2 * count - k - 1) % count] as (typeof corners)[number];
    return [before.name, [mirror(own.point)]];
  });
}
