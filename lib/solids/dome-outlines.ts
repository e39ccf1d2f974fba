import { SAME_POINT } from '../base/tolerances.js';
import { acos, cos, sin } from '../math/elementary.js';
import { monotoneRoot } from '../math/roots.js';
import type { Vec2 } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import { spanPoint } from '../setout/span.js';
import { type Outline, outlineOf, type Stretch } from './outline.js';
import { arcSteps, flatten, meridianStations, steps, turnSegments } from './sections.js';

/**
 * A dome in facets. All its bodies use the same meridian stations and the same plan facets, so that
 * neighbouring parts meet in exactly the same points.
 */
export interface DomeFacets {
  readonly dome: DomeSetout;
  readonly segments: number;
  /** Arc lengths on the shell's intrados, springing to crown; beds of curb and plug are among them. */
  readonly stations: readonly number[];
  /** Arc length at which the intrados meets the oculus' bore; `null` without oculus. */
  readonly bore: number | null;
  /** Greatest distance of a chord from its curve. */
  readonly sagitta: number;
}

/** Facets that stay within `surface` (mm) of a dome's faces. */
export function domeFacets(dome: DomeSetout, surface: number): DomeFacets {
  // In a facet's middle the distances of both its directions add up.
  const sagitta = surface / 2;
  const { shell, curb, plug, thickness } = dome;
  const bore = curb ? monotoneRoot((s) => shell.at(s).r - curb.clearRadius, curb.bedS, shell.length) : null;
  const marks = [0, shell.length, curb?.bedS ?? 0, bore ?? 0, plug?.bedS ?? 0];
  const breaks = [...new Set(marks)].sort((a, b) => a - b);
  const stations = breaks
    .slice(1)
    .flatMap((to, i) => meridianStations(shell, breaks[i] as number, to, thickness, sagitta).slice(1));
  return {
    dome,
    segments: turnSegments(dome.springingRadius + thickness, sagitta),
    stations: [0, ...stations],
    bore,
    sagitta,
  };
}

const onAxis = ([r, z]: Vec2): Vec2 => [Math.abs(r) < SAME_POINT ? 0 : r, z];
const shellPoint = (dome: DomeSetout, s: number, offset: number): Vec2 => onAxis(spanPoint(dome.shell, s, offset));

/** Points from springing towards the crown on the surface `offset` outside the intrados, between two arc lengths. */
function meridian({ dome, stations }: DomeFacets, offset: number, from: number, to: number): Vec2[] {
  return stations.filter((s) => s >= from && s <= to).map((s) => shellPoint(dome, s, offset));
}

/** What lies above the stem wall and below the first normal on the surface `offset` outside: the skewback's shoulder. */
function shoulder({ dome, sagitta }: DomeFacets, offset: number): Vec2[] {
  const outer = dome.springingRadius + offset;
  const foot: Vec2 = [outer, dome.springingZ];
  if (!dome.skewback || offset === 0) return [foot];
  const first = shellPoint(dome, 0, offset)[0];
  return [foot, ...flatten((r) => [r, dome.heightAt(r, offset)], outer, first, sagitta).slice(0, -1)];
}

/** The surface `offset` outside, past the crown's normal to the axis: pointed domes alone have it. */
function tip({ dome, sagitta }: DomeFacets, offset: number): Vec2[] {
  const { arc, length } = dome.profile;
  const axis: Vec2 = [0, dome.heightAt(0, offset)];
  if (!arc || arc.centre[0] === 0) return [axis];
  const radius = arc.radius + offset;
  const from = dome.profile.at(length).normalRad;
  const to = acos(-arc.centre[0] / radius);
  const [r, h] = arc.centre;
  return steps(from, to, arcSteps(radius, to - from, sagitta))
    .slice(1, -1)
    .map((a): Vec2 => [r + radius * cos(a), dome.springingZ + h + radius * sin(a)])
    .concat([axis]);
}

const crownS = ({ dome }: DomeFacets): number => dome.shell.length;

/** Everything within the surface `offset` outside the intrados, from `bottom` up, filled to the axis. */
export function filledTo(facets: DomeFacets, offset: number, bottom: number, name: string): Outline {
  return outlineOf(['base', [[0, bottom]]], ...surface(facets, offset, bottom, name));
}

/** The outside from `bottom` up to the axis: stem wall, shoulder, extrados, and the curb where there is one. */
export function outside(facets: DomeFacets, bottom: number): Stretch[] {
  const { dome } = facets;
  const { curb, thickness } = dome;
  const wall: Vec2[] = [[dome.springingRadius + thickness, bottom], ...shoulder(facets, thickness)];
  if (!curb) {
    const face = [...wall, ...meridian(facets, thickness, 0, crownS(facets)), ...tip(facets, thickness)];
    return [
      ['extrados', face.slice(0, -1)],
      ['axis', face.slice(-1)],
    ];
  }
  return [
    ['extrados', [...wall, ...meridian(facets, thickness, 0, curb.bedS).slice(0, -1)]],
    ['curb-side', [curb.bedOuter]],
    ['curb-top', [[curb.bedOuter[0], curb.topZ]]],
    ['axis', [[0, curb.topZ]]],
  ];
}

/** The whole dome outside, filled to the axis from `bottom` up. */
export function outerBody(facets: DomeFacets, bottom: number): Outline {
  return outlineOf(['base', [[0, bottom]]], ...outside(facets, bottom));
}

/** The surface `offset` outside the intrados, from `bottom` up to the axis. */
export function surface(facets: DomeFacets, offset: number, bottom: number, name: string): Stretch[] {
  const outer = facets.dome.springingRadius + offset;
  const face: Vec2[] = [[outer, bottom], ...shoulder(facets, offset), ...meridian(facets, offset, 0, crownS(facets))];
  return [
    [name, face],
    ['axis', tip(facets, offset)],
  ];
}

/** The intrados from the springing up to the axis or to the oculus' bore. */
const inside = (facets: DomeFacets): Vec2[] => [
  ...shoulder(facets, 0),
  ...meridian(facets, 0, 0, facets.bore ?? crownS(facets)),
];

/**
 * The room, and above it the oculus' bore up to `boreTop`. `under` runs from the axis to the wall's `foot`. With
 * `seam` it goes on just past that level.
 */
export function roomBody(
  facets: DomeFacets,
  under: readonly Stretch[],
  foot: Vec2,
  { boreTop, seam }: { readonly boreTop: number; readonly seam: number | null },
): Outline {
  const { curb } = facets.dome;
  const wall = [foot, ...inside(facets)];
  if (seam !== null) {
    const past = wall.findIndex((p) => p[1] > seam);
    const [, z] = wall[past] as Vec2;
    return outlineOf(...under, ['intrados', wall.slice(0, past + 1)], ['axis', [[0, z]]]);
  }
  if (!curb) return outlineOf(...under, ['intrados', wall.slice(0, -1)], ['axis', wall.slice(-1)]);
  return outlineOf(
    ...under,
    ['intrados', wall.slice(0, -1)],
    ['bore', wall.slice(-1)],
    ['bore-end', [[curb.clearRadius, boreTop]]],
    ['axis', [[0, boreTop]]],
  );
}

/** All of a dome's masonry from the floor up: outside, bore and intrados. */
export function wholeWall(facets: DomeFacets): Outline {
  const { springingRadius, curb } = facets.dome;
  const outer = outside(facets, 0);
  const inner = inside(facets).reverse();
  return outlineOf(
    ['base', [[springingRadius, 0]]],
    ...(curb ? outer.slice(0, -1) : outer),
    ...(curb ? [['bore', [[curb.clearRadius, curb.topZ]]] as const] : []),
    ['intrados', inner],
  );
}

/** The stem wall alone; `null` where the dome stands on the floor. */
export function stemWall({ dome }: DomeFacets): Outline | null {
  const { springingRadius: inner, springingZ, thickness } = dome;
  if (springingZ === 0) return null;
  return outlineOf(
    ['base', [[inner, 0]]],
    ['extrados', [[inner + thickness, 0]]],
    ['bed', [[inner + thickness, springingZ]]],
    ['intrados', [[inner, springingZ]]],
  );
}

/** The skewback ring; `null` where the meridian springs upright. */
export function skewbackRing(facets: DomeFacets): Outline | null {
  const { dome } = facets;
  if (!dome.skewback) return null;
  const spring: Vec2 = [dome.springingRadius, dome.springingZ];
  return outlineOf(
    ['base', [spring]],
    ['extrados', shoulder(facets, dome.thickness)],
    ['bed', [shellPoint(dome, 0, dome.thickness)]],
  );
}

/** The shell's courses from the first conical bed to the curb or plug; `null` where there are none. */
export function shellRing(facets: DomeFacets): Outline | null {
  const { dome } = facets;
  const top = dome.curb?.bedS ?? dome.plug?.bedS ?? crownS(facets);
  if (top === 0) return null;
  const outer = meridian(facets, dome.thickness, 0, top);
  const inner = meridian(facets, 0, 0, top);
  return outlineOf(
    ['bed', inner.slice(0, 1)],
    ['extrados', outer.slice(0, -1)],
    ['bed', outer.slice(-1)],
    ['intrados', inner.slice(1).reverse()],
  );
}

/** Stem wall and shell in one where no skewback parts them. */
export function wallAndShell(facets: DomeFacets): Outline | null {
  const shell = shellRing(facets);
  const stem = stemWall(facets);
  if (!shell || !stem) return shell ?? stem;
  const { springingRadius: inner, thickness } = facets.dome;
  return outlineOf(
    ['base', [[inner, 0]]],
    ['extrados', [[inner + thickness, 0]]],
    ...shell.points.slice(1).map((point, i): Stretch => [shell.names[i + 1] as string, [point]]),
    ['intrados', shell.points.slice(0, 1)],
  );
}

/** The crown plug on its conical bed, or the curb round the bore. */
export function crownPiece(facets: DomeFacets): Outline | null {
  const { dome, bore } = facets;
  const { curb, plug, thickness } = dome;
  if (curb && bore !== null) {
    const inner = meridian(facets, 0, curb.bedS, bore).reverse();
    return outlineOf(
      ['intrados', inner.slice(0, -1)],
      ['bed', inner.slice(-1)],
      ['curb-side', [shellPoint(dome, curb.bedS, thickness)]],
      ['curb-top', [[curb.bedOuter[0], curb.topZ]]],
      ['bore', [[curb.clearRadius, curb.topZ]]],
    );
  }
  if (!plug) return null;
  const inner = meridian(facets, 0, plug.bedS, crownS(facets)).reverse();
  const outer = [...meridian(facets, thickness, plug.bedS, crownS(facets)), ...tip(facets, thickness)];
  return outlineOf(
    ['intrados', inner.slice(0, -1)],
    ['bed', inner.slice(-1)],
    ['extrados', outer.slice(0, -1)],
    ['axis', outer.slice(-1)],
  );
}
