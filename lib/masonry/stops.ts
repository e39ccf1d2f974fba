import { rememberedPair } from '../base/remembered.js';
import { monotoneRoot } from '../math/roots.js';
import type { Course } from '../setout/courses.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { Block, LaidBlock, LaidHouse } from './block.js';
import { uncutVolume } from './cut.js';
import { type BlockCut, blockCuts, CUT_EDGES, type CutEdge } from './cuts.js';
import { pouredVolume } from './mass.js';
import { formDimensions, type MouldDimensions } from './moulds/dimensions.js';
import { formIn, formKey, type PlacedBlock, placedBlock, shortened } from './placed.js';

/** What a stop board leaves beyond the longest edge of a cut, to be sawn off; mm, common practice, no source. */
export const SAWN_OFF = 10;

/** How far a longer block that will be cut is cast. */
export interface Stop {
  readonly block: LaidBlock;
  /** The head that stays; the other is cut off, and the board stands in its stead. */
  readonly keeps: 'start' | 'end';
  /** The block as cast: its other head is turned along the ring to just past the cut. Dry. */
  readonly placed: PlacedBlock;
}

/** Stop boards of all longer blocks that lose a head, by the mark of the block. */
export const stopsOf = rememberedPair((setout: HouseSetout, laid: LaidHouse): ReadonlyMap<string, Stop> => {
  const domes = new Map(setout.domes.map((dome) => [dome.id, dome]));
  const longer = laid.blocks.filter(({ domeId, course, number, cutBy, seed }) => {
    const own = domes.get(domeId)?.courses[course - 1] as Course;
    // Of a block that falls in two both heads stay.
    return cutBy.length > 0 && seed === null && formIn(own, number).places > 1;
  });
  const stops = blockCuts(setout, { ...laid, blocks: longer }).flatMap((cut) => {
    const dome = domes.get(cut.block.domeId) as DomeSetout;
    return stopOf(placedBlock(setout, dome, cut.block), cut, setout.house.blocks.faces);
  });
  return new Map(stops.map((stop) => [stop.block.mark, stop]));
});

function stopOf(whole: PlacedBlock, { block, keeps, left }: BlockCut, faces: 'curved' | 'flat'): Stop[] {
  if (keeps !== 'start' && keeps !== 'end') return [];
  /** How much longer the shortest spare edge is than it must be, with the head turned back. */
  const spare = (rad: number): number => {
    const edges = edgesOf(formDimensions(shortened(whole, rad), { faces, shrinkage: 0 }), faces);
    return Math.min(...CUT_EDGES.map((edge) => edges[edge] - left[edge])) - SAWN_OFF;
  };
  if (spare(0) <= 0) return [];
  // No edge gets longer when the head comes nearer, and at half the angle all are gone that a cut leaves.
  const most = block.endRad - block.startRad;
  return [{ block, keeps, placed: shortened(whole, monotoneRoot(spare, 0, most * 0.95)) }];
}

const FACE = { inner: 'intrados', outer: 'extrados' } as const;

/** Lengths of the four edges along the course: arcs, of flat faces straight. */
function edgesOf(d: MouldDimensions, faces: 'curved' | 'flat'): Record<CutEdge, number> {
  const edge = (side: keyof typeof FACE, at: 'lower' | 'upper') =>
    d[FACE[side]].edges[at][faces === 'flat' ? 'chord' : 'arc'];
  return {
    innerLower: edge('inner', 'lower'),
    innerUpper: edge('inner', 'upper'),
    outerLower: edge('outer', 'lower'),
    outerUpper: edge('outer', 'upper'),
  };
}

/** Where a stop board stands from the head that stays, along the edges of the mould: to half a millimetre, as cast. */
export function stopAlong(stop: Stop, blocks: HouseSetout['house']['blocks']): Record<CutEdge, number> {
  const edges = edgesOf(formDimensions(stop.placed, blocks), blocks.faces);
  const half = (mm: number) => Math.round(2 * mm) / 2;
  return Object.fromEntries(CUT_EDGES.map((edge) => [edge, half(edges[edge])])) as Record<CutEdge, number>;
}

/** What is poured for any block of a house, mm³: what fills its mould, as far as a stop board where it has one. */
export const pourOf = rememberedPair((setout: HouseSetout, laid: LaidHouse): ((block: Block) => number) => {
  const domes = new Map(setout.domes.map((dome) => [dome.id, dome]));
  const { blocks } = setout.house;
  const stopped = new Map(
    [...stopsOf(setout, laid)].map(([mark, { placed }]) => [mark, formDimensions(placed, blocks).volume]),
  );
  // Whole blocks of one form are equal.
  const known = new Map<string, number>();
  return (block) => {
    const short = stopped.get(block.mark);
    if (short !== undefined) return short;
    const dome = domes.get(block.domeId) as DomeSetout;
    const form = formIn(dome.courses[block.course - 1] as Course, block.number);
    const key = `${dome.id} ${block.course} ${formKey(form)}`;
    const found = known.get(key) ?? pouredVolume(uncutVolume(setout, dome, block), blocks);
    known.set(key, found);
    return found;
  };
});
