import { SIGHT_CHANGE, UNDER_FLOOR_SHARE } from '../base/tolerances.js';
import type { Primitive } from '../documents/drawing.js';
import { circleEdge, type Edge, lineEdge } from '../math/curves.js';
import { rangesWhere } from '../math/curves-ranges.js';
import { alongBearing, type Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import { perpendBearings } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import { fromArchFrame } from './arch-places.js';
import { baseOutline } from './base-edges.js';
import { type Cut, cutOf, cutPrimitives } from './cut.js';
import { hiddenParts, seenParts } from './feature.js';
import { spanOf } from './joints.js';
import { houseEdges } from './level-figure.js';
import { inEarlier, partAt } from './parts.js';
import { quickHouse } from './quick-house.js';
import { rayHouse } from './ray-house.js';
import { downSight } from './sight.js';
import { sliceLevel } from './slice-level.js';
import { StrokeBook } from './stroke-book.js';

export interface PlanFigure {
  readonly primitives: readonly Primitive[];
  readonly cut: Cut;
}

/** The house cut level at `cutZ`, what is seen below, what is hidden in the ground, what lies overhead. */
export function planFigure(house: HouseSetout, cutZ: number): PlanFigure {
  const quick = quickHouse(house);
  const inStrip = rayHouse(quick, [0, 1]);
  const cut = cutOf(sliceLevel(house, cutZ), ([x, y]) => partAt(inStrip([x, y]).house, [x, y, cutZ]));
  const sight = downSight(quick, cutZ);
  const book = new StrokeBook();
  book.take(cut.borders.map((b) => b.edge));
  const edges = houseEdges(quick).filter((f) => f.kind === 'edge');
  for (const f of edges) book.write('visible', seenParts(f, sight));
  if (cutZ > 0) for (const f of edges) if (f.dashed) book.write('hidden', hiddenParts(f, sight));
  book.write('hidden', hiddenBase(house));
  book.write('hidden', underCut(house, cutZ));
  book.write('overhead', overhead(house, cutZ));
  book.write(
    'joint',
    house.domes.flatMap((dome) => perpendsAcross(quick, dome, cutZ)),
  );
  return { primitives: [...cutPrimitives(cut), ...book.primitives()], cut };
}

function hiddenBase(house: HouseSetout): Edge[] {
  const bottom = Math.min(...house.footings.map((f) => f.bottomZ), ...house.slabs.map((s) => s.bottomZ));
  return Number.isFinite(bottom) ? baseOutline(house, bottom * (1 - UNDER_FLOOR_SHARE)).flat() : [];
}

/** Oculus and curb, and the clear width of openings whose sill lies above the cut. */
function overhead(house: HouseSetout, cutZ: number): Edge[] {
  const oculi = house.domes.flatMap((d): Edge[] =>
    d.curb && d.curb.bedOuter[1] > cutZ
      ? [d.curb.clearRadius, d.curb.bedOuter[0]].map((radius) => circleEdge(d.at, radius))
      : [],
  );
  return [...oculi, ...house.arches.filter((a) => a.section.sill >= cutZ).flatMap((a) => clearSides(a, cutZ))];
}

/** The clear width of openings whose head lies below the cut. */
const underCut = (house: HouseSetout, cutZ: number): Edge[] =>
  house.arches
    .filter(({ section }) => section.crownZ <= cutZ)
    .flatMap((a) => clearSides(a, (a.section.sill + a.section.crownZ) / 2));

function clearSides(arch: ArchSetout, cutZ: number): Edge[] {
  const { dome, clear, faceV } = arch;
  const half = arch.section.width / 2;
  const on = (r: number) => Math.sqrt(r * r - half * half);
  const outer = faceV ?? on(dome.outerRadiusAt(cutZ));
  const end =
    clear.kind === 'through' ? outer : clear.kind === 'plane' ? clear.v : on(dome.radiusAt(cutZ, clear.depth));
  return [half, -half].map((u) =>
    lineEdge(fromArchFrame(arch, u, on(dome.radiusAt(cutZ))), fromArchFrame(arch, u, end)),
  );
}

/** Perpends of the cut course: narrow lines across the wall. */
function perpendsAcross(house: HouseSetout, dome: DomeSetout, cutZ: number): Edge[] {
  const course = dome.courses.find((c) => {
    const [low, high] = [c.from, c.to].map((s) => spanPoint(spanOf(dome, c), s, dome.thickness / 2)[1]) as [
      number,
      number,
    ];
    return low <= cutZ && cutZ < high;
  });
  if (!course) return [];
  const [inner, outer] = [dome.radiusAt(cutZ), dome.outerRadiusAt(cutZ)];
  const near = (a: number, b: number) => Math.abs(a - b) < SIGHT_CHANGE;
  return perpendBearings(course).flatMap((rad) => {
    const along = alongBearing(rad);
    const at = (r: number): Vec2 => [dome.at[0] + r * along[0], dome.at[1] + r * along[1]];
    const holds = (r: number) => {
      const [x, y] = at(r);
      return partAt(house, [x, y, cutZ]) === 'blocks' && !inEarlier(house, dome, [x, y, cutZ]);
    };
    return rangesWhere(holds, inner, outer, 8, near).map(([a, b]) => lineEdge(at(a), at(b)));
  });
}
