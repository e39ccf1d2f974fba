import { ROOT } from '../base/tolerances.js';
import { cos, hypot, sin } from '../math/elementary.js';
import { gauss } from '../math/quadrature.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { type MeridianSpan, spanPoint } from '../setout/span.js';
import type { Block, Reach } from './block.js';
import { bearingColumn, columnRuns } from './column.js';
import type { Cutter } from './cutter.js';
import { headAngle, movedBack, type PlacedBlock, placedInCourse, singleForm } from './placed.js';

export const NO_REACH: Reach = { beds: 0, faces: 0 };

/**
 * A line along the course on one of its surfaces: thickness of what reaches over it times its breadth, as an even
 * polynomial of the angle from the block's middle plane: k0 + k1 ψ² + k2 ψ⁴.
 */
interface ReachLine {
  readonly r: number;
  readonly z: number;
  readonly half: number;
  readonly part: keyof Reach;
  readonly terms: readonly [number, number, number];
}

/** Orders of the rules across the wall and up the face. */
const ACROSS = 5;
const UP = 8;

/** Where a block reaches over its course's surfaces; the same for all blocks of one course and length. */
export interface ReachLines {
  readonly lines: readonly ReachLine[];
}

type Surface = 'lower' | 'upper' | 'inner' | 'outer';

/** Lines along which the reach of a block is summed up; none where its beds and faces are its course's own. */
export function reachLines(dome: DomeSetout, block: Block, placed: PlacedBlock): ReachLines {
  if (placed.atHome) return { lines: [] };
  const span = dome[block.part];
  const over = overs(placed);
  const { bed, top } = block;
  const t = dome.thickness;
  const lines: ReachLine[] = [];
  const add = (part: keyof Reach, s: number, depth: number, weight: (psi: number, r: number, z: number) => number) => {
    const [r, z] = spanPoint(span, s, depth);
    const half = headAngle(placed.head, r, z);
    lines.push({ r, z, half, part, terms: evenTerms((psi) => weight(psi, r, z), half) });
  };
  const wide = gauss(ACROSS);
  const high = gauss(UP);
  for (const [surface, s, way] of [
    ['lower', bed, 1],
    ['upper', top, -1],
  ] as const) {
    const lean = way * span.at(s).normal[1];
    for (const [k, node] of wide.nodes.entries()) {
      const weight = (wide.weights[k] as number) * t;
      add('beds', s, node * t, (psi, r, z) => {
        const g = over[surface](psi, r, z);
        // The middle of what lies under a lower bed is farther from the axis than the bed.
        return weight * g * (r + (lean * g) / 2);
      });
    }
  }
  for (const [surface, depth, way] of [
    ['inner', 0, -1],
    ['outer', t, 1],
  ] as const) {
    for (const [k, node] of high.nodes.entries()) {
      const s = bed + (top - bed) * node;
      const { curvature, normal } = span.at(s);
      const weight = (high.weights[k] as number) * (top - bed);
      add('faces', s, depth, (psi, r, z) => {
        const g = over[surface](psi, r, z);
        const middle = depth + (way * g) / 2;
        return weight * g * (r + (middle - depth) * normal[0]) * (1 + curvature * middle);
      });
    }
    // Along the edges both reach over: what lies there belongs to neither alone.
    for (const [bedSurface, s] of [
      ['lower', bed],
      ['upper', top],
    ] as const)
      add('faces', s, depth, (psi, r, z) => over[surface](psi, r, z) * over[bedSurface](psi, r, z) * r);
  }
  return { lines };
}

/** What of the reach the cutters leave, of a block about the bearing `middleRad`. */
export function reachLeft({ lines }: ReachLines, middleRad: number, cutters: readonly Cutter[]): Reach {
  const sum = { beds: 0, faces: 0 };
  for (const { r, z, half, part, terms } of lines) {
    const column = bearingColumn(r, z, 1, [middleRad - half, middleRad + half]);
    for (const [from, to] of columnRuns(column, cutters))
      sum[part] += overRun(terms, to - middleRad) - overRun(terms, from - middleRad);
  }
  return sum;
}

function overRun([k0, k1, k2]: ReachLine['terms'], psi: number): number {
  const square = psi * psi;
  return psi * (k0 + square * (k1 / 3 + (square * k2) / 5));
}

/** The even polynomial through f at 0, half way and the end. */
function evenTerms(f: (psi: number) => number, half: number): [number, number, number] {
  const [f0, f1, f2] = [f(0), f(half / 2), f(half)];
  const [a, b] = [(half * half) / 4, half * half];
  const [d1, d2] = [(f1 - f0) / a, (f2 - f0) / b];
  const k2 = (d2 - d1) / (b - a);
  return [f0, d1 - k2 * a, k2];
}

/** How a course's single blocks lie beside the course's own beds and faces; greatest distances, mm, at least 0. */
export interface CourseMiss {
  /** Beds reach so far into the bed joints, and stay so far back from them. */
  readonly bedOver: number;
  readonly bedUnder: number;
  readonly faceMiss: number;
}

/** The same at corners and middles of edges, of flat faces at corners alone; of two moulds the greater. */
export function courseMiss(house: HouseSetout, dome: DomeSetout, course: Course): CourseMiss {
  const [first, second] = [false, true].map((own) => missOf(house, dome, course, own && !!course.mix)) as [
    CourseMiss,
    CourseMiss,
  ];
  const most = (part: keyof CourseMiss) => Math.max(first[part], second[part]);
  return { bedOver: most('bedOver'), bedUnder: most('bedUnder'), faceMiss: most('faceMiss') };
}

function missOf(house: HouseSetout, dome: DomeSetout, course: Course, second: boolean): CourseMiss {
  const placed = placedInCourse(house, dome, course, singleForm(course, second));
  if (placed.atHome) return { bedOver: 0, bedUnder: 0, faceMiss: 0 };
  const span = dome[course.part];
  const over = overs(placed);
  const shares = house.house.blocks.faces === 'flat' ? [1] : [0, 1];
  const [beds, faces]: [number[], number[]] = [[], []];
  for (const [s, bed] of [
    [course.bed, over.lower],
    [course.to, over.upper],
  ] as const) {
    for (const [depth, face] of [
      [0, over.inner],
      [dome.thickness, over.outer],
    ] as const) {
      const [r, z] = spanPoint(span, s, depth);
      const half = headAngle(placed.head, r, z);
      beds.push(...shares.map((share) => bed(share * half, r, z)));
      faces.push(...shares.map((share) => Math.abs(face(share * half, r, z))));
    }
  }
  return { bedOver: Math.max(0, ...beds), bedUnder: Math.max(0, ...beds.map((b) => -b)), faceMiss: Math.max(...faces) };
}

/** How far the placed block reaches over each surface of its course, at the angle ψ on the circle (r, z) of that surface. */
function overs(placed: PlacedBlock): Record<Surface, (psi: number, r: number, z: number) => number> {
  const { span, bed, top, thickness, motion } = placed;
  const seen = (psi: number, r: number, z: number): readonly [r: number, z: number] => {
    const [distance, height] = movedBack(motion, r * cos(psi), z);
    return [hypot(distance, r * sin(psi)), height];
  };
  const above = (s: number) => {
    const { r, z, normal } = span.at(s);
    return ([atR, atZ]: readonly [number, number]) => (atZ - z) * normal[0] - (atR - r) * normal[1];
  };
  const [overBed, overTop] = [above(bed), above(top)];
  const middle = (bed + top) / 2;
  return {
    lower: (psi, r, z) => overBed(seen(psi, r, z)),
    upper: (psi, r, z) => -overTop(seen(psi, r, z)),
    inner: (psi, r, z) => depthAt(span, middle, seen(psi, r, z)),
    outer: (psi, r, z) => thickness - depthAt(span, middle, seen(psi, r, z)),
  };
}

/** Distance of a point (r, z) outside a span, along the normal that passes through it; sought from arc length `near`. */
function depthAt(span: MeridianSpan, near: number, [r, z]: readonly [number, number]): number {
  let s = near;
  for (let step = 0; step < 20; step++) {
    const p = span.at(s);
    const [dr, dz] = [r - p.r, z - p.z];
    const depth = dr * p.normal[0] + dz * p.normal[1];
    const along = (dz * p.normal[0] - dr * p.normal[1]) / (1 + p.curvature * depth);
    s += along;
    if (Math.abs(along) < ROOT * 1e4) return depth;
  }
  throw new RangeError('no normal of the meridian passes through a point beside it');
}
