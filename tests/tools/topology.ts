import { BESIDE_EDGE, SAME_POINT } from '../../lib/base/tolerances.js';
import { circleEdge, type Edge, lineEdge, loopsArea } from '../../lib/math/curves.js';
import { hypot } from '../../lib/math/elementary.js';
import { bordersOf, regionOf } from '../../lib/math/planar.js';
import { add2, cross2, dot2, scale2, sub2, type Vec2 } from '../../lib/math/vec.js';
import type { DomeSetout } from '../../lib/setout/dome.js';
import { archesOf, earlierThan, type HouseSetout } from '../../lib/setout/house.js';
import { baseHalf } from '../../lib/setout/material.js';

/** What the solid of a house must be like, told from its rooms and ways alone. */
export interface HouseTopology {
  /** Handles of the solid: the first Betti number of what the house isn't. */
  readonly handles: number;
  /** Closed surfaces: groups of domes that don't touch, and sealed hollows within them. */
  readonly pieces: number;
  /** Pieces of open ground that the house with its footing encloses. */
  readonly courtyards: number;
}

/** Two nodes of the graph of rooms; the node past the last room is outside. */
type Way = readonly [number, number];

/**
 * Nodes are outside and rooms; edges are openings that go through, oculi, passages, and the open base of each room
 * where there is no slab. Without footing too, ways that reach the base of the walls are notches and count 0.
 * Independent loops of that graph are handles, and each courtyard is one. Holds for houses that keep the rules: each
 * dome's room is one, and passages come out in both of theirs.
 */
export function houseTopology(setout: HouseSetout): HouseTopology {
  const nodes = setout.domes.length + 1;
  const ways = waysOf(setout);
  const components = componentsOf(nodes, ways);
  const { pieces, holes } = regionCount(coverage(setout));
  return { handles: ways.length - nodes + components + holes, pieces: pieces + components - 1, courtyards: holes };
}

function waysOf(setout: HouseSetout): Way[] {
  const { domes, passages, footings, slabs } = setout;
  const notched = footings.length === 0 && slabs.length === 0;
  const outside = domes.length;
  const fromRoom = domes.flatMap((dome, room): Way[] => {
    const through = archesOf(setout, dome).filter(
      ({ clear, section }) => clear.kind === 'through' && !(notched && section.sill === 0),
    );
    const count = through.length + (dome.curb ? 1 : 0) + openBases(setout, dome);
    return Array.from({ length: count }, () => [room, outside]);
  });
  const roomOf = (dome: DomeSetout) => domes.findIndex((other) => other.id === dome.id);
  const between = passages.map((passage): Way => [roomOf(passage.domes[0]), roomOf(passage.domes[1])]);
  return notched ? fromRoom : [...fromRoom, ...between];
}

/** In how many places a room is open below: what its footing encloses may be parted by those of earlier domes. */
function openBases(setout: HouseSetout, dome: DomeSetout): number {
  if (setout.slabs.length > 0) return 0;
  const radius = (of: DomeSetout, which: 'innerRadius' | 'outerRadius') =>
    setout.footings.find((footing) => footing.domeId === of.id)?.[which];
  const inner = radius(dome, 'innerRadius');
  if (inner === undefined) return 1;
  const own = disc(dome.at, inner);
  const others = earlierThan(setout, dome).map((earlier) => disc(earlier.at, radius(earlier, 'outerRadius') ?? 0));
  const holds = (p: Vec2) => own.holds(p) && !others.some((other) => other.holds(p));
  return regionCount({ edges: [own, ...others].flatMap((area) => area.edges), holds }).pieces;
}

function componentsOf(nodes: number, ways: readonly Way[]): number {
  const leader = Array.from({ length: nodes }, (_, k) => k);
  const find = (k: number): number => (leader[k] === k ? k : find(leader[k] as number));
  for (const [a, b] of ways) leader[find(a)] = find(b);
  return leader.filter((of, k) => of === k).length;
}

/** A piece of ground: curves that hold its boundary, and whether a point lies in it. */
interface Area {
  readonly edges: readonly Edge[];
  holds(p: Vec2): boolean;
}

const disc = (centre: Vec2, radius: number): Area => ({
  edges: [circleEdge(centre, radius)],
  holds: (p) => hypot(p[0] - centre[0], p[1] - centre[1]) < radius,
});

/** A strip `half` wide to each side and `to` long from its origin. */
function strip(origin: Vec2, along: Vec2, across: Vec2, half: number, to: number): Area {
  const corners = [
    [-half, 0],
    [half, 0],
    [half, to],
    [-half, to],
  ].map(([u, v]) => add2(origin, add2(scale2(across, u as number), scale2(along, v as number))));
  return {
    edges: corners.map((corner, k) => lineEdge(corner, corners[(k + 1) % 4] as Vec2)),
    holds(p) {
      const away = sub2(p, origin);
      const v = dot2(away, along);
      return v > 0 && v < to && Math.abs(cross2(along, away)) < half;
    },
  };
}

/** All ground under walls, barrels, passages and their footing, with what they enclose. */
function coverage({ domes, arches, passages, footings }: HouseSetout): Area {
  const projection = Math.max(0, footings[0]?.projection ?? 0);
  const areas = [
    ...domes.map((dome) => disc(dome.at, dome.springingRadius + dome.thickness + projection)),
    ...arches.flatMap((arch) => {
      const { dome, along, across, faceV } = arch;
      return faceV === null ? [] : [strip(dome.at, along, across, baseHalf(arch, projection), faceV + projection)];
    }),
    ...passages.map((passage) => {
      const { domes: ends, along, across, distance } = passage;
      return strip(ends[0].at, along, across, baseHalf(passage, projection), distance);
    }),
  ];
  return { edges: areas.flatMap((area) => area.edges), holds: (p) => areas.some((area) => area.holds(p)) };
}

/** Connected pieces of an area, and holes in them. */
function regionCount({ edges, holds }: Area): { readonly pieces: number; readonly holes: number } {
  const options = { tolerance: SAME_POINT, beside: BESIDE_EDGE };
  const borders = bordersOf(edges, (p) => (holds(p) ? 'covered' : null), options);
  const loops = regionOf(borders, () => true, SAME_POINT);
  const pieces = loops.filter((loop) => loopsArea([loop]) > 0).length;
  return { pieces, holes: loops.length - pieces };
}
