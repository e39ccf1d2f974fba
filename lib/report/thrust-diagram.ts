import { figureText } from '../base/reader-units.js';
import * as texts from '../base/texts/report.js';
import { formatLength, type LengthUnit } from '../base/units.js';
import type { Diagram, DiagramShape } from '../documents/report.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { FootingSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import type { DomeStatics } from '../statics/results.js';
import { label, line, moved, pageFor } from './page.js';
import { footingOutline, wallOutline } from './section-outline.js';

const WIDTH = 560;
const STEPS = 60;

/** The line of thrust in half a section of the dome, wall and footing with it. */
export function thrustDiagram(
  dome: DomeSetout,
  footing: FootingSetout | null,
  found: DomeStatics,
  units: LengthUnit,
): Diagram {
  const { thrust, tie, cutZ } = found;
  const { line: points } = thrust;
  const outer = Math.max(dome.springingRadius + dome.thickness, footing?.outerRadius ?? 0);
  const low = Math.min(0, footing?.bottomZ ?? 0);
  const page = pageFor(WIDTH, [0, outer * 1.12], [low, dome.topZ], 10);
  const shapes: DiagramShape[] = [
    line(page, 'axis', [
      [0, low],
      [0, dome.topZ],
    ]),
    ...(footing ? [line(page, 'masonry', footingOutline(footing), true)] : []),
    line(page, 'masonry', wallOutline(dome), true),
    line(page, 'core', middleHalf(dome), true),
    line(page, 'guide', [
      [0, 0],
      [outer * 1.12, 0],
    ]),
    label(moved(page.place([0, 0]), 8, -6), 'floor'),
  ];
  if (cutZ > 0) {
    shapes.push(
      line(page, 'guide', [
        [0, cutZ],
        [dome.springingRadius * 0.6, cutZ],
      ]),
      label(moved(page.place([0, cutZ]), 8, -6), texts.ringsClosedAbove(formatLength(cutZ, units))),
    );
  }
  if (tie) {
    const at: Vec2 = [dome.radiusAt(Math.min(tie.z, dome.crownZ), dome.thickness / 2), tie.z];
    shapes.push({ kind: 'dot', style: 'tension', at: page.place(at) });
    // Outside the wall, where no line of thrust runs.
    const out = tie.place === 'footing' ? outer : dome.outerRadiusAt(tie.z);
    shapes.push(label(moved(page.place([out, tie.z]), 8, 4), 'tie'));
  }
  // Above the axis's first sections the line may run beyond the axis, where lunes shrink to nothing.
  const drawn = points.filter((p) => p.r >= 0).map((p): Vec2 => [p.r, p.z]);
  if (drawn.length > 1) shapes.push(line(page, 'thrust', drawn));
  return {
    title: texts.lineOfThrust(dome.id),
    caption: captionOf(found, units),
    width: page.width,
    height: page.height,
    shapes,
  };
}

function captionOf({ thrust, id }: DomeStatics, units: LengthUnit): string {
  if (thrust.line.length === 0) return texts.noThrustFits(id, thrust.loads);
  const factor = texts.geometricFactor(thrust.factor.toFixed(2));
  const least =
    thrust.least === null ? texts.noThrustFitsIntoWall : texts.leastThrustAtFoot(figureText(thrust.least, 'kN', units));
  return texts.thrustCaption(thrust.loads, factor, least);
}

/** The middle half of the wall in (r, z), closed. */
function middleHalf(dome: DomeSetout): Vec2[] {
  const { shell, curb, thickness: t, springingRadius: r } = dome;
  const end = curb?.bedS ?? shell.length;
  const at = (depth: number) =>
    Array.from({ length: STEPS + 1 }, (_, i): Vec2 => spanPoint(shell, (end * i) / STEPS, depth)).filter(
      (p) => p[0] >= 0,
    );
  return [[r + t / 4, 0], ...at(t / 4), ...at((3 * t) / 4).reverse(), [r + (3 * t) / 4, 0]];
}
