import { formatLength, type WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { CUT_BESIDE, CUT_POINT } from '../base/tolerances.js';
import type { Primitive, TextPrimitive } from '../documents/drawing.js';
import { circleEdge, type Edge } from '../math/curves.js';
import { cos, sin } from '../math/elementary.js';
import { bordersOf, regionOf } from '../math/planar.js';
import { DEG, length2, sub2, type Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { earlierThan, type HouseSetout } from '../setout/house.js';
import type { Layout } from './layout.js';
import { loopOf } from './paths.js';

/** Height under which floor counts as low: 2.1 m, in feet 7 ft; common practice, no source. */
export const headroomOf = (units: WrittenUnits): number => (units === 'metric' ? 2100 : 2133.6);

/** Height of the text on the line, paper mm. */
const LABEL = 1.8;

/** Radius of the finished intrados at the headroom; 0 where a dome is lower. */
function headroomRadius(house: HouseSetout, dome: DomeSetout, z: number): number {
  const radius = dome.radiusAt(z, -house.house.wall.renderInside);
  return Number.isNaN(radius) ? 0 : Math.max(radius, 0);
}

/** Round the floor that has full headroom under the finished intrados, less what earlier domes take. */
function headroomLoops(house: HouseSetout, dome: DomeSetout, z: number): Edge[][] {
  const radius = headroomRadius(house, dome, z);
  if (radius === 0) return [];
  const earlier = earlierThan(house, dome);
  const edges = [circleEdge(dome.at, radius), ...earlier.map((d) => circleEdge(d.at, d.outerRadiusAt(z) || 1))];
  const inside = (p: Vec2) =>
    length2(sub2(p, dome.at)) < radius && !earlier.some((d) => length2(sub2(p, d.at)) < d.outerRadiusAt(z));
  const borders = bordersOf(edges, (p) => (inside(p) ? 'high' : null), { tolerance: CUT_POINT, beside: CUT_BESIDE });
  return regionOf(borders, () => true, CUT_POINT);
}

/** The headroom line of every dome's floor. */
export const headroomLines = (house: HouseSetout, z: number): Primitive[] =>
  house.domes.flatMap((dome) =>
    headroomLoops(house, dome, z).map(
      (loop): Primitive => ({ kind: 'path', layer: 'overhead', segments: loopOf(loop), closed: true }),
    ),
  );

/** The height written inside the line where there is room; notes tell of the line in any case. */
export function addHeadroomWords(house: HouseSetout, z: number, layout: Layout): void {
  const text = texts.headroomAt(formatLength(z, layout.units));
  for (const dome of house.domes) {
    const radius = headroomRadius(house, dome, z) - layout.mm(LABEL + 1.2);
    if (radius <= 0) continue;
    const tries = Array.from({ length: 24 }, (_, i): TextPrimitive[] => {
      const turn = (i * 15 + 7.5) * DEG;
      const deg = (i * 15 + 7.5 + 270) % 360;
      const upside = deg > 90 && deg < 270;
      const r = upside ? radius + layout.mm(LABEL) : radius;
      const at: Vec2 = [dome.at[0] + r * cos(turn), dome.at[1] + r * sin(turn)];
      return [
        {
          kind: 'text',
          layer: 'text',
          at,
          text,
          heightMm: LABEL,
          anchor: 'centre',
          rotationDeg: upside ? deg - 180 : deg,
        },
      ];
    });
    layout.placeFree(tries);
  }
}

export const headroomWords = (house: HouseSetout, z: number, units: WrittenUnits): string => {
  const low = house.domes.filter((d) => headroomRadius(house, d, z) === 0).map((d) => d.id);
  const tail = low.length > 0 ? texts.lowerThroughout(low.join(', '), low.length) : '';
  return texts.dashedWithTwoDots(formatLength(z, units), tail);
};
