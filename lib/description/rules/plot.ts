import * as texts from '../../base/texts/problems-site.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import { pointApart, segmentsApart } from '../../math/segments.js';
import type { Vec2 } from '../../math/vec.js';
import type { Footing } from '../house.js';
import type { ProblemList } from '../problem-list.js';
import type { DomeBody } from './body.js';
import { cornersOf, type Strip } from './runs.js';
import { barrelStrip, type Opened, type Passed, passageStrip } from './ways.js';
import { atLeast } from './words.js';

type Polygon = readonly Vec2[];

/** Domes, barrels and passages with their footing stay on the plot. */
export function checkPlot(
  plot: Polygon,
  footing: Footing | null,
  thickness: number,
  bodies: readonly DomeBody[],
  opened: readonly Opened[],
  passed: readonly Passed[],
  units: LengthUnit,
  problems: ProblemList,
): void {
  const margin = footing ? Math.max(0, (footing.width - thickness) / 2) : 0;
  const withFooting = margin > 0 ? texts.withItsFooting : '';
  for (const { dome, path, at, footRadius } of bodies) {
    const over = footRadius + margin - inside(plot, at);
    if (over <= 0) continue;
    const message = texts.domeCrossesBoundary(dome.id, withFooting, formatLength(over, units));
    const mend = texts.moveItInward(atLeast(over, units));
    problems.add('outside-plot', [...path, 'at'], message, mend);
  }
  for (const barrel of opened) {
    const strip = barrelStrip(barrel);
    if (!strip || holds(plot, strip, margin)) continue;
    const message = texts.barrelCrossesBoundary(barrel.opening.id, withFooting);
    const mend = texts.turnOpeningGive;
    problems.add('outside-plot', [...barrel.path, 'bearing'], message, mend);
  }
  for (const passage of passed) {
    const strip = passageStrip(passage);
    if (!strip || holds(plot, strip, margin)) continue;
    const message = texts.passageCrossesBoundary(passage.passage.id, withFooting);
    problems.add('outside-plot', [...passage.path, 'between'], message, texts.moveItsDomes);
  }
}

const sidesOf = (plot: Polygon): (readonly [Vec2, Vec2])[] =>
  plot.map((corner, i) => [corner, plot[(i + 1) % plot.length] as Vec2]);

/** Distance of a point from the boundary, negative outside. */
function inside(plot: Polygon, p: Vec2): number {
  let within = false;
  let least = Number.POSITIVE_INFINITY;
  for (const [a, b] of sidesOf(plot)) {
    least = Math.min(least, pointApart(p, a, b));
    if (a[1] > p[1] !== b[1] > p[1] && p[0] < a[0] + ((p[1] - a[1]) / (b[1] - a[1])) * (b[0] - a[0])) within = !within;
  }
  return within ? least : -least;
}

/** Whether a strip, wider by `margin` and that much longer outward, lies within the plot. */
function holds(plot: Polygon, strip: Strip, margin: number): boolean {
  const corners = cornersOf({ ...strip, half: strip.half + margin, to: strip.to + margin });
  return corners.every(
    (p, i) =>
      inside(plot, p) >= 0 && sidesOf(plot).every(([a, b]) => segmentsApart(p, corners[(i + 1) % 4] as Vec2, a, b) > 0),
  );
}
