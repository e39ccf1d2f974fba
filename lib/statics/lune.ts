import { BESIDE_TIE } from '../base/tolerances.js';
import { acos, cos, sin } from '../math/elementary.js';
import { monotoneRoot } from '../math/roots.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { FootingSetout } from '../setout/house.js';
import { type SpanPoint, spanPoint } from '../setout/span.js';
import { alongArc, betweenCurves, layerAt, NO_WEIGHT, ringWeights, sumWeights, type Weights } from './layers.js';
import type { UnitLoads } from './loads.js';
import { pressureOf } from './loads.js';

/** A section across a dome's wall normal to its meridian, with what one radian of the masonry above it weighs. */
export interface LuneSection {
  readonly part: 'shell' | 'stem' | 'footing';
  /** Arc length on the shell's intrados; 0 below it. */
  readonly s: number;
  readonly middle: Vec2;
  /** From the middle to the outer face. */
  readonly half: Vec2;
  /** Elevation of the outward normal; 0 below the shell. */
  readonly normalRad: number;
  readonly dead: Weights;
  readonly snow: Weights;
  /** Heights between which the ring of a course, at its middle, can push outward; `null` between such places. */
  readonly ring: readonly [number, number] | null;
}

/** One radian of a dome, cut by sections from the crown or curb down to the footing's base. kN, mm. */
export interface Lune {
  readonly dome: DomeSetout;
  readonly sections: readonly LuneSection[];
  /** Weights above the first section: the curb and what lies on it. */
  readonly top: { readonly dead: Weights; readonly snow: Weights };
  /** What all of it weighs without footing and snow. */
  readonly total: { readonly masonry: number; readonly render: number };
  readonly crown: (share: number) => readonly [number, number];
  /** Of render outside, on which snow lies and wind blows. */
  readonly renderOutside: number;
}

/** Where a section of shell or stem wall ends on the outside, render included. */
export function surfacePoint({ dome, renderOutside }: Lune, { middle, half }: LuneSection): Vec2 {
  const out = 1 + (2 * renderOutside) / dome.thickness;
  return [middle[0] + out * half[0], middle[1] + out * half[1]];
}

export interface LuneOptions {
  /** Sections of the shell. */
  readonly sections?: number;
  readonly renderInside: number;
  readonly renderOutside: number;
  readonly footing: FootingSetout | null;
  /** Height of a ring tie: sections are cut just above and just below it. */
  readonly tieZ?: number;
}

/** So many that finer sections move no factor by 1e-4: over 200, which one of the samples' domes still missed by a hair. */
const SHELL_SECTIONS = 240;
const STEM_STEP = 100;

/** Cuts a dome into sections and adds up what lies above each. */
export function luneOf(dome: DomeSetout, loads: UnitLoads, options: LuneOptions): Lune {
  const { thickness: t } = dome;
  const { renderInside, renderOutside } = options;
  const masonryAt = (p: SpanPoint) => layerAt(p, 0, t, loads.masonry);
  const renderAt = (p: SpanPoint) =>
    sumWeights(layerAt(p, -renderInside, 0, loads.render), layerAt(p, t, t + renderOutside, loads.render));
  const snowAt = (p: SpanPoint) => snowLayer(p, t + renderOutside, loads);
  const at = (s: number) => dome.shell.at(s);

  let masonry = curbWeights(dome, loads.masonry);
  let render = NO_WEIGHT;
  let snow = curbSnow(dome, renderOutside, loads);
  const top = { dead: masonry, snow };
  const sections: LuneSection[] = [];
  const rings = new Set(ringStations(dome));
  const stations = stationsOf(dome, loads, options, rings);
  stations.forEach((s, i) => {
    const before = stations[i - 1];
    if (before !== undefined) {
      masonry = sumWeights(masonry, alongArc(at, masonryAt, s, before));
      render = sumWeights(render, alongArc(at, renderAt, s, before));
      snow = sumWeights(snow, alongArc(at, snowAt, s, before));
    }
    const p = at(s);
    const [c, up] = [cos(p.normalRad), sin(p.normalRad)];
    const half: Vec2 = [(t / 2) * c, (t / 2) * up];
    const middle: Vec2 = [p.r + half[0], p.z + half[1]];
    const ring = rings.has(s) ? ([p.z, p.z + 2 * half[1]] as const) : null;
    sections.push({
      part: 'shell',
      s,
      normalRad: p.normalRad,
      middle,
      half,
      dead: sumWeights(masonry, render),
      snow,
      ring,
    });
  });

  if (dome.skewback) {
    masonry = sumWeights(masonry, skewbackWedge(dome, dome.thickness, loads.masonry));
    render = sumWeights(
      render,
      skewbackWedge(dome, dome.thickness + renderOutside, loads.render),
      skewbackWedge(dome, dome.thickness, -loads.render),
    );
  }
  const inner = dome.springingRadius;
  const wall = (from: number, to: number, z: number, unit: number) =>
    ringWeights([inner + from, inner + to], [z, dome.springingZ], unit);
  const stemMasonry = (z: number) => sumWeights(masonry, wall(0, t, z, loads.masonry));
  const stemRender = (z: number) =>
    sumWeights(render, wall(-renderInside, 0, z, loads.render), wall(t, t + renderOutside, z, loads.render));
  const steps = Math.max(1, Math.ceil(dome.springingZ / STEM_STEP));
  const levels = Array.from({ length: steps + 1 }, (_, i) => dome.springingZ * (1 - i / steps));
  for (const z of withTie(dome.skewback ? levels : levels.slice(1), options.tieZ, dome.springingZ)) {
    const dead = sumWeights(stemMasonry(z), stemRender(z));
    const middle: Vec2 = [inner + t / 2, z];
    sections.push({ part: 'stem', s: 0, normalRad: 0, middle, half: [t / 2, 0], dead, snow, ring: null });
    if (dome.springingZ === 0) break;
  }
  const { footing } = options;
  if (footing) {
    const { innerRadius, outerRadius, bottomZ } = footing;
    const last = sections[sections.length - 1] as LuneSection;
    sections.push({
      part: 'footing',
      s: 0,
      normalRad: 0,
      middle: [(innerRadius + outerRadius) / 2, bottomZ],
      half: [(outerRadius - innerRadius) / 2, 0],
      dead: sumWeights(last.dead, ringWeights([innerRadius, outerRadius], [bottomZ, 0], loads.concrete)),
      snow,
      ring: null,
    });
  }
  const total = { masonry: stemMasonry(0).weight, render: stemRender(0).weight };
  return { dome, sections, top, total, crown: crownOf(dome), renderOutside };
}

/** Of snow on the surface `depth` outside the intrados, per radian and per unit of the intrados' arc length. */
export function snowLayer(p: SpanPoint, depth: number, { snow }: UnitLoads): Weights {
  if (snow.kpa === 0 || p.normalRad < snow.leastNormalRad) return NO_WEIGHT;
  const r = p.r + depth * cos(p.normalRad);
  if (r <= 0) return NO_WEIGHT;
  const up = sin(p.normalRad);
  const weight = pressureOf(snow.kpa) * r * up * (1 + p.curvature * depth);
  return { weight, moment: weight * r, height: weight * (p.z + depth * up) };
}

/** Arc lengths from the top down: equal steps, and wherever a load changes its law. */
function stationsOf(dome: DomeSetout, { snow }: UnitLoads, options: LuneOptions, rings: ReadonlySet<number>): number[] {
  const { shell, thickness: t, curb } = dome;
  const depths = [-options.renderInside, 0, t, t + options.renderOutside];
  const ends = curb ? [curb.bedS] : depths.map((d) => axisS(dome, d));
  const top = Math.max(...ends);
  const count = options.sections ?? SHELL_SECTIONS;
  const stations = Array.from({ length: count + 1 }, (_, i) => top * (1 - i / count));
  const breaks = ends.filter((s) => s < top);
  if (options.tieZ !== undefined) {
    const middleZ = (s: number) => spanPoint(shell, s, t / 2)[1];
    for (const z of besideTie(options.tieZ)) breaks.push(monotoneRoot((s) => z - middleZ(s), 0, top));
  }
  const snowS = monotoneRoot((s) => shell.at(s).normalRad - snow.leastNormalRad, 0, top);
  if (snowS > 0 && snowS < top) breaks.push(snowS);
  return [...new Set([...stations, ...breaks, ...rings])].sort((a, b) => b - a);
}

/** Heights just above and just below a tie. */
const besideTie = (tieZ: number): readonly number[] => [tieZ + BESIDE_TIE, tieZ - BESIDE_TIE];

/** Levels from the top down, with those beside a tie that lies among them. */
function withTie(levels: readonly number[], tieZ: number | undefined, top: number): readonly number[] {
  if (tieZ === undefined || levels.length === 0) return levels;
  const more = besideTie(tieZ).filter((z) => z > 0 && z < top);
  return [...new Set([...levels, ...more])].sort((a, b) => b - a);
}

/** Rings that a crown plug counts as. */
const PLUG_RINGS = 4;

/** Arc lengths at the middles of the shell's courses, and of the rings that make up a crown plug. */
function ringStations({ courses, plug, shell }: DomeSetout): number[] {
  const middles = courses.filter((c) => c.part === 'shell').map((c) => (c.from + c.to) / 2);
  if (!plug) return middles;
  const step = (shell.length - plug.bedS) / PLUG_RINGS;
  return [...middles, ...Array.from({ length: PLUG_RINGS }, (_, i) => plug.bedS + (i + 0.5) * step)];
}

/** Arc length at which the surface `depth` outside the intrados meets the axis; a pointed one's is its own. */
function axisS({ profile, shell }: DomeSetout, depth: number): number {
  const { arc } = profile;
  if (!arc || arc.centre[0] >= 0) return shell.length;
  const turn = acos(Math.min(1, -arc.centre[0] / (arc.radius + depth)));
  return shell.length + arc.radius * (turn - shell.at(shell.length).normalRad);
}

function crownOf(dome: DomeSetout): (share: number) => readonly [number, number] {
  const { thickness: t, curb } = dome;
  if (!curb) {
    return (share) => [dome.heightAt(0, (t / 2) * (1 - share)), dome.heightAt(0, (t / 2) * (1 + share))];
  }
  const low = dome.heightAt(curb.clearRadius);
  const [middle, half] = [(low + curb.topZ) / 2, (curb.topZ - low) / 2];
  return (share) => [middle - share * half, middle + share * half];
}

/** The curb from the intrados and its bed up to its level top. */
function curbWeights(dome: DomeSetout, unit: number): Weights {
  const { curb } = dome;
  if (!curb) return NO_WEIGHT;
  const p = dome.shell.at(curb.bedS);
  const [outerR, outerZ] = curb.bedOuter;
  const slope = outerR > p.r ? (outerZ - p.z) / (outerR - p.r) : 0;
  const top = () => curb.topZ;
  return sumWeights(
    betweenCurves([curb.clearRadius, p.r], (r) => dome.heightAt(r), top, unit),
    betweenCurves([p.r, outerR], (r) => p.z + (r - p.r) * slope, top, unit),
  );
}

/** Snow on the skylight and on the curb. */
function curbSnow(dome: DomeSetout, renderOutside: number, { snow }: UnitLoads): Weights {
  const { curb } = dome;
  if (!curb) return NO_WEIGHT;
  const p = dome.shell.at(curb.bedS);
  const edge = p.r + (dome.thickness + renderOutside) * cos(p.normalRad);
  const { weight, moment } = onCurb(curb, edge, pressureOf(snow.kpa));
  return { weight, moment, height: weight * curb.topZ };
}

/** A load on the plan within `edge`, per radian: on the skylight, which the curb's middle carries, and on the curb. */
export function onCurb(
  { clearRadius: bore, bedOuter }: NonNullable<DomeSetout['curb']>,
  edge: number,
  load: number,
): Pick<Weights, 'weight' | 'moment'> {
  const skylight = (load * bore * bore) / 2;
  const ring = (load * (edge * edge - bore * bore)) / 2;
  return {
    weight: skylight + ring,
    moment: (skylight * (bore + bedOuter[0])) / 2 + (load * (edge * edge * edge - bore * bore * bore)) / 3,
  };
}

/** Between the stem wall's level top and the first conical bed, out to the surface `depth` outside the intrados. */
function skewbackWedge(dome: DomeSetout, depth: number, unit: number): Weights {
  const p = dome.shell.at(0);
  const inner = dome.springingRadius;
  const bed = p.r + depth * cos(p.normalRad);
  const slope = (depth * sin(p.normalRad)) / (bed - inner);
  const floor = () => dome.springingZ;
  return sumWeights(
    betweenCurves([inner, bed], floor, (r) => dome.springingZ + (r - inner) * slope, unit),
    betweenCurves([bed, inner + depth], floor, (r) => dome.heightAt(r, depth), unit),
  );
}
