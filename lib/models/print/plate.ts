import { FOOT_MM } from '../../base/units.js';
import { add2, alongBearing, DEG, dot2, perp2, scale2, type Vec2 } from '../../math/vec.js';
import type { HouseSetout } from '../../setout/house.js';
import { baseHalf } from '../../setout/material.js';
import { frameOf, groundUnder } from '../../solids/arch-bodies.js';
import { disc } from '../../solids/ground-bodies.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { type Outline, outlineOf } from '../../solids/outline.js';
import { passageFrame } from '../../solids/passage-bodies.js';
import type { Site } from '../../solids/site.js';
import { type CutLine, linesOf } from './cut-lines.js';
import { strokeBetween, textStrokes, textWidth } from './letters.js';
import type { PrintPlan } from './plan.js';
import type { PrintSizes } from './sizes.js';

/** The ground under a model: a plate at ground level with the footing's outline, north and the scale on it. */
export interface Plate {
  readonly min: Vec2;
  readonly max: Vec2;
  readonly bottom: number;
  readonly top: number;
}

/** Lengths of scale bars, in the unit of the house. */
const BARS = [1, 2, 5, 10, 20, 50, 100] as const;
const BAR_PARTS = 5;
/** Every other part of a bar steps aside by this share of its width, so that parts still hang together. */
const BAR_STEP = 0.75;
/** Height of marks above the plate, in nozzle widths. */
const RAISED = 2;
/** Letters are so many stroke widths high at least. */
const STROKES_HIGH = 4.5;

/** Where the plate lies; marks stand in a strip along its southern edge. */
export function plateOf(setout: HouseSetout, sizes: PrintSizes): Plate {
  const projection = Math.max(0, setout.footings[0]?.projection ?? 0);
  const discs = setout.domes.map((dome) => ({
    at: dome.at,
    far: dome.springingRadius + dome.thickness + projection,
  }));
  const faces = setout.arches.flatMap((arch) => {
    if (arch.faceV === null) return [];
    const half = baseHalf(arch, projection);
    return [half, -half].map((u) => ({
      at: add2(arch.dome.at, add2(scale2(arch.along, (arch.faceV as number) + projection), scale2(arch.across, u))),
      far: 0,
    }));
  });
  const all = [...discs, ...faces];
  const { margin, thickness } = sizes.plate;
  const side = (axis: 0 | 1, sign: 1 | -1) => sign * (Math.max(...all.map((d) => sign * d.at[axis] + d.far)) + margin);
  const { ground } = setout.house.site;
  return {
    min: [side(0, -1), side(1, -1) - letterHeight(sizes) - 2 * margin],
    max: [side(0, 1), side(1, 1)],
    bottom: Math.min(ground, 0) - thickness,
    top: ground,
  };
}

const letterHeight = ({ plate, thin }: PrintSizes): number => Math.max(plate.mark, STROKES_HIGH * thin);

/** The plate with the groove along the footing's outline, and what stands on it as marks. */
export function plateBodies(
  scope: SolidScope,
  setout: HouseSetout,
  sites: readonly Site[],
  { plate, sizes, base }: Pick<PrintPlan, 'plate' | 'sizes' | 'base'>,
): Solid[] {
  const { min, max, bottom, top } = plate;
  const lines = linesOf(base);
  const corners: Vec2[] = [min, [max[0], min[1]], max, [min[0], max[1]]];
  const body = scope.slab('plate', outlineOf(['plate', corners]), [bottom, top]);
  const outline = footingOutline(scope, setout, sites, plate, sizes);
  const raised = [top - sizes.thin / 2, top + RAISED * sizes.nozzle] as const;
  const marks = [...scaleMarks(setout, plate, sizes), ...northMark(setout, plate, sizes)].filter((mark) =>
    lines.every((line) => isCutWide(mark, line, sizes)),
  );
  return [scope.subtract('plate', body, outline), ...marks.map((mark) => scope.slab('mark', mark, raised))];
}

/** Whether a cut leaves a mark alone, or parts it into pieces that are wide enough to print. */
function isCutWide({ points }: Outline, { normal, offset }: CutLine, { thin }: PrintSizes): boolean {
  const away = points.map((p) => dot2(p, normal) - offset);
  const [low, high] = [Math.min(...away), Math.max(...away)];
  return low >= thin || high <= -thin || (low <= -2 * thin && high >= 2 * thin);
}

/** A groove in the plate along the edge of the footing, which lies under the ground. */
function footingOutline(
  scope: SolidScope,
  { footings, arches, passages }: HouseSetout,
  sites: readonly Site[],
  { top }: Plate,
  { groove }: PrintSizes,
): Solid[] {
  const [footing] = footings;
  if (!footing) return [];
  const names = { bottom: 'footing', side: 'footing', top: 'footing' };
  const grown = (grow: number): Solid => {
    const levels = [top - groove.depth, top + groove.depth] as const;
    const projection = footing.projection + grow;
    const discs = sites.map(({ dome, facets, footing: own }) =>
      scope.revolve('footing', disc((own?.outerRadius ?? 0) + grow, ...levels, names), facets.segments, dome.at),
    );
    const strips = [
      ...arches.flatMap((arch) =>
        arch.faceV === null
          ? []
          : [{ id: arch.id, frame: frameOf(arch), half: baseHalf(arch, projection), to: arch.faceV + projection }],
      ),
      ...passages.map((p) => ({
        id: p.id,
        frame: passageFrame(p),
        half: baseHalf(p, projection),
        to: p.distance,
      })),
    ];
    return scope.union('footing', [...discs, ...strips.map((strip) => groundUnder(scope, strip, levels, names))]);
  };
  return [scope.subtract('footing', grown(groove.width / 2), [grown(-groove.width / 2)])];
}

/** `1:50` and a bar of round length, from the south-western corner on. */
function scaleMarks({ house }: HouseSetout, { min, max }: Plate, sizes: PrintSizes): Outline[] {
  const { thin, scale, plate } = sizes;
  const height = letterHeight(sizes);
  const at: Vec2 = [min[0] + plate.margin, min[1] + plate.margin];
  const title = `1:${Number(scale.toPrecision(6))}`;
  const feet = house.units === 'ft' || house.units === 'in';
  const unit = feet ? FOOT_MM : 1000;
  const start: Vec2 = [at[0] + textWidth(title, height) + 2 * plate.margin, at[1] + height / 2];
  const room = max[0] - start[0] - 3 * height - 2 * plate.margin;
  const words = (length: number) => `${length}${feet ? 'ft' : 'm'}`;
  const fitting = BARS.filter(
    (length) =>
      length * unit + plate.margin + textWidth(words(length), height) < room && (length * unit) / BAR_PARTS > thin,
  );
  const length = fitting.at(-1);
  const strokes = textStrokes(title, at, height, thin);
  if (length === undefined) return strokes;
  const part = (length * unit) / BAR_PARTS;
  const bar = Array.from({ length: BAR_PARTS }, (_, i): Outline => {
    const [x, y] = [start[0] + i * part, start[1] + (i % 2 === 0 ? 0 : -BAR_STEP * thin)];
    return outlineOf([
      'mark',
      [
        [x, y],
        [x + part, y],
        [x + part, y + thin],
        [x, y + thin],
      ],
    ]);
  });
  return [
    ...strokes,
    ...bar,
    ...textStrokes(words(length), [start[0] + length * unit + plate.margin, at[1]], height, thin),
  ];
}

/** An arrow to true north with its letter, in the south-eastern corner. */
function northMark({ house }: HouseSetout, { min, max }: Plate, sizes: PrintSizes): Outline[] {
  const { thin, plate } = sizes;
  const height = letterHeight(sizes);
  const along = alongBearing(house.site.northDeg * DEG);
  const middle: Vec2 = [max[0] - plate.margin - height / 2, min[1] + plate.margin + height / 2];
  const at = (forward: number, aside: number): Vec2 =>
    add2(middle, add2(scale2(along, forward * height), scale2(perp2(along), aside * height)));
  const head = outlineOf(['mark', [at(0.75, 0), at(0.1, 0.4), at(0.1, -0.4)]]);
  const shaft = strokeBetween(at(-0.5, 0), at(0.2, 0), thin);
  const letter: Vec2 = [middle[0] - 2 * height, min[1] + plate.margin];
  return [head, shaft, ...textStrokes('N', letter, height, thin)];
}
