import { atan, cos, hypot, sin } from '../../math/elementary.js';
import { integrate } from '../../math/quadrature.js';
import { type Edge, meridianSagitta } from '../dimensions.js';
import type { FitLimits } from './limits.js';
import { seatOf } from './place.js';
import { EDGES, type EdgeName } from './site.js';
import { type Mould, perpendAt } from './window.js';

/** Inner sizes of a mould: of the block as cast, before it shrinks. Lengths mm, angles radians. */
export interface MouldDimensions {
  /** Edges of one face along the course, at lower bed, mid-height and upper bed. */
  readonly intrados: FaceDimensions;
  readonly extrados: FaceDimensions;
  readonly thickness: number;
  /** Angle between lower and upper bed, both square to the faces. */
  readonly bedAngleRad: number;
  /** How far a head leans from square: across the wall, wider outside; and up the face, narrower at the top. */
  readonly headAcrossRad: number;
  readonly headUpRad: number;
  /** mm³ */
  readonly volume: number;
}

export interface FaceDimensions {
  readonly edges: Readonly<Record<EdgeName, Edge>>;
  /** From bed to bed along the middle of the face, following its curve. */
  readonly height: number;
  /** Straight from corner to corner. */
  readonly diagonal: number;
  /** Rise of the curve over its chord: along the lower and upper edge, and up the middle. */
  readonly sagittaLower: number;
  readonly sagittaUpper: number;
  readonly sagittaUp: number;
}

/** Sizes of the dry block over one less the shrinkage. */
export function mouldDimensions(mould: Mould, limits: Pick<FitLimits, 'faces' | 'shrinkage'>): MouldDimensions {
  const { parent, slope, lean } = mould;
  const { thickness, at } = parent;
  const grow = 1 / (1 - limits.shrinkage);
  const { normalRad } = at.middle;
  return {
    intrados: faceDimensions(mould, 0, grow),
    extrados: faceDimensions(mould, thickness, grow),
    thickness: thickness * grow,
    bedAngleRad: at.upper.normalRad - at.lower.normalRad,
    headAcrossRad: atan(slope * cos(normalRad)),
    headUpRad: atan(slope * sin(normalRad) - lean),
    volume: (limits.faces === 'flat' ? flatVolume(mould) : curvedVolume(mould)) * grow * grow * grow,
  };
}

function faceDimensions(mould: Mould, depth: number, grow: number): FaceDimensions {
  const { span, course, thickness, at } = mould.parent;
  const corner = (edge: EdgeName) => perpendAt(mould, seatOf(mould.parent, edge, depth));
  const edge = (name: EdgeName): Edge => {
    const { r } = seatOf(mould.parent, name, depth);
    const { across, angleRad } = corner(name);
    return { arc: 2 * r * angleRad * grow, chord: 2 * across * grow };
  };
  const sagitta = (name: EdgeName) => (seatOf(mould.parent, name, depth).r - corner(name).distance) * grow;
  const [low, high] = [corner('lower'), corner('upper')];
  const rise = at.upper.z - at.lower.z + depth * (at.upper.normal[1] - at.lower.normal[1]);
  const { bed, to } = course;
  return {
    edges: Object.fromEntries(EDGES.map((name) => [name, edge(name)])) as Record<EdgeName, Edge>,
    height: (to - bed + depth * (at.upper.normalRad - at.lower.normalRad)) * grow,
    diagonal: hypot(low.across + high.across, high.distance - low.distance, rise) * grow,
    sagittaLower: sagitta('lower'),
    sagittaUpper: sagitta('upper'),
    sagittaUp: meridianSagitta(span, bed, to, Math.min(depth, thickness)) * grow,
  };
}

/** Between the parent's faces and beds, as surfaces of revolution, out to the perpends. */
function curvedVolume(mould: Mould): number {
  const { span, course, thickness, at } = mould.parent;
  const { middle } = at;
  return integrate(
    (s) => {
      const p = span.at(s);
      const [c, z] = [cos(p.normalRad), sin(p.normalRad)];
      return integrate(
        (d) => {
          const r = p.r + d * c;
          const up = (p.z + d * z - middle.z) * middle.normal[0] - (r - middle.r) * middle.normal[1];
          return 2 * perpendAt(mould, { r, up }).angleRad * r * (1 + p.curvature * d);
        },
        0,
        thickness,
        6,
      );
    },
    course.bed,
    course.to,
    12,
  );
}

/** Of the polyhedron between the eight corners: its run is linear over the quadrilateral in the middle plane. */
function flatVolume(mould: Mould): number {
  const { parent, slope, lean } = mould;
  const { middle } = parent.at;
  const corner = (edge: EdgeName, depth: number): readonly [number, number] => {
    const seat = seatOf(parent, edge, depth);
    const { normal, z } = parent.at[edge];
    return [perpendAt(mould, seat).distance, z + depth * normal[1]];
  };
  const t = parent.thickness;
  const [a, b, c, d] = [corner('lower', 0), corner('lower', t), corner('upper', t), corner('upper', 0)];
  const run = ([r, z]: readonly [number, number]) =>
    2 * (slope * r + lean * ((z - middle.z) * middle.normal[0] - (r - middle.r) * middle.normal[1]));
  const triangle = (p: readonly [number, number], q: readonly [number, number], o: readonly [number, number]) =>
    (Math.abs((q[0] - p[0]) * (o[1] - p[1]) - (q[1] - p[1]) * (o[0] - p[0])) / 2) * ((run(p) + run(q) + run(o)) / 3);
  return triangle(a, b, c) + triangle(a, c, d);
}
