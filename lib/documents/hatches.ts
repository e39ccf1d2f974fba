import { cos, sin } from '../math/elementary.js';
import { DEG, dot2, type Vec2 } from '../math/vec.js';
import type { HatchPattern } from './drawing.js';

/** Parallel lines, paper mm, before they are turned by `angleDeg`: each next one lies `spacing` to the left and `shift` on. */
export interface LineFamily {
  readonly angleDeg: number;
  /** A point of one line, along and left of it, in the turned frame. */
  readonly base: Vec2;
  readonly spacing: number;
  readonly shift: number;
  /** Marks positive, gaps negative; empty when unbroken. */
  readonly dashes: readonly number[];
}

const family = (
  angleDeg: number,
  base: Vec2,
  spacing: number,
  shift = 0,
  dashes: readonly number[] = [],
): LineFamily => ({
  angleDeg,
  base,
  spacing,
  shift,
  dashes,
});

const WEAVE = 4.8;
const weave = [0, 0.375, 0.75].map((x) => WEAVE * x);

/** Lines of a pattern, and the name, turn and size under which DXF readers know the same lines. */
export interface HatchPart {
  readonly families: readonly LineFamily[];
  readonly dxf: {
    readonly name: string;
    readonly turnDeg: number;
    /** Paper mm per unit mm of the named pattern. */
    readonly size: number;
  };
}

/** Slanting lines. Some readers of DXF draw by name alone and know few names: this is one that they all know. */
const slanting = (angleDeg: 45 | 135, spacing: number): HatchPart => ({
  families: [family(angleDeg, [0, 0], spacing)],
  dxf: { name: 'ANSI31', turnDeg: angleDeg - 45, size: spacing / 3.175 },
});

/**
 * What a cut material looks like on paper, in parts that lie over each other. Slanting lines for masonry, narrower ones
 * the other way for cast pieces, crossing ones for concrete are common practice, no source; a view explains them in its
 * legend.
 */
export const HATCHES: Readonly<Record<Exclude<HatchPattern, 'solid'>, readonly HatchPart[]>> = {
  blockwork: [slanting(45, 1.8)],
  cast: [slanting(135, 1.1)],
  concrete: [slanting(45, 2.6), slanting(135, 2.6)],
  earth: [
    {
      families: [
        ...weave.map((x) => family(45, [0, x], WEAVE, WEAVE, [WEAVE, -WEAVE])),
        ...weave.map((x) => family(135, [WEAVE * 0.875, -(x + WEAVE * 0.125)], WEAVE, WEAVE, [WEAVE, -WEAVE])),
      ],
      dxf: { name: 'EARTH', turnDeg: 45, size: WEAVE / 6.35 },
    },
  ],
};

/** All lines of a pattern. */
export const familiesOf = (pattern: Exclude<HatchPattern, 'solid'>): LineFamily[] =>
  HATCHES[pattern].flatMap((part) => part.families);

/** A family as it lies in the model at `1 : scale`: a base point, the step to the next line, and dashes, model mm. */
export interface PlacedFamily {
  readonly angleDeg: number;
  readonly base: Vec2;
  readonly step: Vec2;
  readonly dashes: readonly number[];
}

export function placeFamily(f: LineFamily, scale: number): PlacedFamily {
  const [c, s] = [cos(f.angleDeg * DEG) * scale, sin(f.angleDeg * DEG) * scale];
  const turn = (along: number, left: number): Vec2 => [along * c - left * s, along * s + left * c];
  return {
    angleDeg: f.angleDeg,
    base: turn(f.base[0], f.base[1]),
    step: turn(f.shift, f.spacing),
    dashes: f.dashes.map((d) => d * scale),
  };
}

/** A line of a hatch with the phase of its dashes: the distance from `from` back to the beginning of a first mark. */
export interface HatchLine {
  readonly from: Vec2;
  readonly to: Vec2;
  readonly dashes: readonly number[];
  readonly phase: number;
}

/** All lines of a pattern that cross a box, model mm; a writer clips them to the hatched area. */
export function hatchLines(
  pattern: Exclude<HatchPattern, 'solid'>,
  box: { readonly min: Vec2; readonly max: Vec2 },
  scale: number,
): HatchLine[] {
  const corners: Vec2[] = [box.min, [box.max[0], box.min[1]], box.max, [box.min[0], box.max[1]]];
  return familiesOf(pattern).flatMap((f) => {
    const { base, step, dashes } = placeFamily(f, scale);
    const along: Vec2 = [cos(f.angleDeg * DEG), sin(f.angleDeg * DEG)];
    const left: Vec2 = [-along[1], along[0]];
    const spacing = f.spacing * scale;
    const lefts = corners.map((p) => dot2(p, left) - dot2(base, left));
    const reach = corners.map((p) => dot2(p, along));
    const [near, far] = [Math.min(...reach), Math.max(...reach)];
    const period = dashes.reduce((sum, d) => sum + Math.abs(d), 0);
    const lines: HatchLine[] = [];
    for (let k = Math.ceil(Math.min(...lefts) / spacing); k <= Math.max(...lefts) / spacing; k++) {
      const origin: Vec2 = [base[0] + k * step[0], base[1] + k * step[1]];
      const at = dot2(origin, along);
      const point = (t: number): Vec2 => [origin[0] + (t - at) * along[0], origin[1] + (t - at) * along[1]];
      const phase = period > 0 ? near - at - period * Math.floor((near - at) / period) : 0;
      lines.push({ from: point(near), to: point(far), dashes, phase });
    }
    return lines;
  });
}
