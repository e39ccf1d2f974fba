import { remembered, rememberedPair } from '../../base/remembered.js';
import { asin, cos, sin } from '../../math/elementary.js';
import { type FitLimits, thinnestDry } from './limits.js';
import { EDGES, type EdgeName, radiusAt, type Site, seenAt } from './site.js';

/**
 * A block of one course's mould laid in a course of `count`: turned so that its middle stands square to the surface,
 * then moved `up` along the meridian and `out` along the normal to where beds and faces miss least.
 */
export interface Placement {
  readonly parent: Site;
  readonly site: Site;
  /** Blocks of just this width that would go round the ring: of two moulds mixed no whole number. */
  readonly count: number;
  readonly up: number;
  readonly out: number;
  /** Greatest distance of a face from the surface; a step between any two blocks is at most twice that. */
  readonly faceMiss: number;
  /** How far its beds reach into the bed joints at most, and how far they stay back at most, each on its own half. */
  readonly bedOver: number;
  readonly bedUnder: number;
}

/** A point of the parent's faces in its middle plane: radius, and place from its middle along meridian and normal. */
export interface Seat {
  readonly edge: EdgeName;
  readonly depth: number;
  readonly r: number;
  readonly up: number;
  readonly out: number;
}

/** Of flat faces the corners alone; of curved ones the middles of the edges too. */
const edgesFor = ({ faces }: FitLimits): readonly EdgeName[] => (faces === 'flat' ? ['lower', 'upper'] : EDGES);

type Stations = Site['at'];

const seats = remembered((_: Stations) => new Map<FitLimits['faces'], readonly Seat[]>());

/** Points at which joints, beds and faces are sampled. */
export function seatsOf(site: Site, limits: FitLimits): readonly Seat[] {
  const made = seats(site.at);
  const found = made.get(limits.faces) ?? makeSeats(site, limits);
  made.set(limits.faces, found);
  return found;
}

const makeSeats = (site: Site, limits: FitLimits): Seat[] =>
  edgesFor(limits).flatMap((edge) => [0, site.thickness].map((depth) => seatOf(site, edge, depth)));

/** The point of one edge at a depth. */
export function seatOf({ at }: Site, edge: EdgeName, depth: number): Seat {
  const { middle } = at;
  const { r, z, normal } = at[edge];
  const dr = r + depth * normal[0] - middle.r;
  const dz = z + depth * normal[1] - middle.z;
  return {
    edge,
    depth,
    r: radiusAt(at[edge], depth),
    up: dz * middle.normal[0] - dr * middle.normal[1],
    out: dr * middle.normal[0] + dz * middle.normal[1],
  };
}

/** Greatest sine of half a block's angle: a block is less than a third of a ring. */
const WIDEST = 0.9;

/** Where a block of `parent`'s mould comes to stand; `null` when beds or faces would miss by too much. */
export function placeBlock(parent: Site, site: Site, count: number, limits: FitLimits): Placement | null {
  const placement = settleBlock(parent, site, count, limits);
  return placement && keepsRooms(placement, limits) ? placement : null;
}

/** Whether beds and faces of a placement miss by no more than they may. */
export function keepsRooms({ parent, faceMiss, bedOver, bedUnder }: Placement, limits: FitLimits): boolean {
  const { bedRoom } = rooms(parent, limits);
  return 2 * faceMiss <= limits.faceStep && bedOver <= bedRoom.over && bedUnder <= bedRoom.under;
}

/** How far a bed may reach into its joint, or stay back from it: half of what the joint can give either way. */
function rooms(parent: Site, limits: FitLimits): { bedRoom: { over: number; under: number } } {
  const height = parent.course.to - parent.course.bed;
  return {
    bedRoom: {
      over: (limits.joint - thinnestDry(limits, height)) / 2,
      under: (limits.thick - limits.joint) / 2,
    },
  };
}

function widen(range: { low: number; high: number }, value: number): void {
  if (value < range.low) range.low = value;
  if (value > range.high) range.high = value;
}

/** The same without a judgement; `null` where the block is too wide to stand there at all. */
export function settleBlock(parent: Site, site: Site, count: number, limits: FitLimits): Placement | null {
  if (parent === site) return { parent, site, count, ...AT_HOME };
  // Of two moulds in a course blocks come in any width, and hardly ever in the same again.
  const stand = Number.isInteger(count) ? standing(parent, site, count, limits) : standIn(parent, site, count, limits);
  return stand && { parent, site, count, ...stand };
}

type Stand = Omit<Placement, 'parent' | 'site' | 'count'>;

const AT_HOME: Stand = { up: 0, out: 0, faceMiss: 0, bedOver: 0, bedUnder: 0 };

/** How whole numbers of blocks stand, which no limit changes: searches under other limits ask for the same again. */
function standing(parent: Site, site: Site, count: number, limits: FitLimits): Stand | null {
  const known = stands[limits.faces](parent.at, site.at);
  let found = known.get(count);
  if (found === undefined) {
    found = standIn(parent, site, count, limits);
    known.set(count, found);
  }
  return found;
}

const standsOf = () => rememberedPair((_parent: Stations, _site: Stations) => new Map<number, Stand | null>());
const stands: Readonly<Record<FitLimits['faces'], ReturnType<typeof standsOf>>> = {
  curved: standsOf(),
  flat: standsOf(),
};

function standIn(parent: Site, site: Site, count: number, limits: FitLimits): Stand | null {
  const half = sin(Math.PI / count);
  const faces = { low: Number.POSITIVE_INFINITY, high: Number.NEGATIVE_INFINITY };
  // Reach of the lower and upper bed into their joints.
  const beds = { lower: { ...faces }, middle: { ...faces }, upper: { ...faces } };
  const take = (seat: Seat, distance: number, x: number): void => {
    const [d, z] = placedAt(parent, site, seat, distance, 0, 0);
    const { up, depth } = seenAt(site.at[seat.edge], Math.sqrt(d * d + x * x), z);
    widen(faces, depth - seat.depth);
    widen(beds[seat.edge], seat.edge === 'lower' ? -up : up);
  };
  for (const seat of seatsOf(parent, limits)) {
    const across = radiusAt(site.at[seat.edge], seat.depth) * half;
    if (across > WIDEST * seat.r) return null;
    take(seat, seat.r * cos(asin(across / seat.r)), across);
    if (limits.faces === 'curved') take(seat, seat.r, 0);
  }
  // Moved up, the block reaches less into the joint below and more into the one above.
  const up = (beds.lower.high - beds.upper.high) / 2;
  return {
    up,
    out: -(faces.low + faces.high) / 2,
    faceMiss: (faces.high - faces.low) / 2,
    bedOver: (beds.lower.high + beds.upper.high) / 2,
    bedUnder: -Math.min(beds.lower.low - up, beds.upper.low + up),
  };
}

/** Where a point of the parent's block at `distance` from the parent's axis, in its frame, stands in the site: (distance, z). */
export function placedAt(
  parent: Site,
  site: Site,
  seat: Seat,
  distance: number,
  up: number,
  out: number,
): readonly [number, number] {
  const [c, s] = parent.at.middle.normal;
  const { middle } = site.at;
  const moved = distance - seat.r;
  const m = seat.up - moved * s + up;
  const d = seat.out + moved * c + out;
  return [
    middle.r - m * middle.normal[1] + d * middle.normal[0],
    middle.z + m * middle.normal[0] + d * middle.normal[1],
  ];
}
