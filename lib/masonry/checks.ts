import { type Check, givenFigure } from '../base/figures.js';
import { BALANCE_LIMIT, SAME_POINT } from '../base/tolerances.js';
import { cos } from '../math/elementary.js';
import type { HouseSetout } from '../setout/house.js';
import { spanPoint } from '../setout/span.js';
import type { Balance } from './balance.js';
import type { LaidBlock, LaidHouse } from './block.js';
import { type CastPieces, castPieces } from './cast-pieces.js';
import { leastLap } from './laps.js';
import { freshKg, massKg, wetDensity } from './mass.js';
import { pieceChecks } from './piece-checks.js';

const DESCRIPTION = 'the description';

/** Checks of the blocks themselves: mass to lift, pieces too short, laps, and that no masonry is lost. */
export function masonryChecks(
  house: HouseSetout,
  laid: LaidHouse,
  balance: Balance,
  pieces: CastPieces = castPieces(house),
): Check[] {
  return [
    heaviestCheck(house, laid),
    ...plugChecks(house, pieces),
    ...pieceChecks(house, pieces),
    shortestCheck(house, laid),
    ...lapChecks(house),
    ...flatBedCheck(house),
    balanceCheck(balance),
  ];
}

const most = (blocks: readonly LaidBlock[], by: (b: LaidBlock) => number): LaidBlock | undefined =>
  blocks.reduce<LaidBlock | undefined>((best, b) => (best === undefined || by(b) > by(best) ? b : best), undefined);

function heaviestCheck(house: HouseSetout, laid: LaidHouse): Check {
  const { material, blocks: rules } = house.house;
  const block = most(laid.blocks, (b) => b.volume);
  const volume = block?.volume ?? 0;
  const wet = freshKg(volume, house.house);
  return {
    id: 'block-mass',
    statement: block
      ? `The heaviest block as it is laid, ${block.mark}, is light enough to lift even when fresh.`
      : 'There are no blocks.',
    state: wet <= rules.heaviestKg ? 'ok' : 'fails',
    demand: givenFigure('block-mass.wet', 'wet mass of the heaviest block', wet, 'kg', {
      formula: 'volume / (1 − shrinkage)³ × wet density; wet density by absolute volumes',
      source: 'derived; mix balance after ACI 523.3R',
      inputs: {
        'dry volume (L)': volume / 1e6,
        'wet density (kg/m3)': wetDensity(material),
        shrinkage: rules.shrinkage,
      },
      limit: 'neat cement, water and foam; no sand',
    }),
    capacity: givenFigure('block-mass.limit', 'heaviest block', rules.heaviestKg, 'kg'),
    ratio: wet / rules.heaviestKg,
    source: 'limit from the description; HSE CIS 37 names more than 20 kg lifted by one person as high risk',
    advice: 'Shorten the blocks, lower the courses, or plan for a hoist and raise `blocks.heaviest`.',
  };
}

/** A crown plug is lifted to the highest place of all, over a ring that has just closed. */
function plugChecks(house: HouseSetout, { rings }: CastPieces): Check[] {
  const limit = house.house.blocks.heaviestKg;
  const { dryDensity } = house.house.material;
  return rings
    .filter(({ kind }) => kind === 'plug')
    .map(({ domeId: id, volume }) => {
      const mass = massKg(volume, dryDensity);
      return {
        id: `plug-mass.${id}`,
        statement: `The crown plug of dome ${id} is light enough to lift.`,
        state: mass <= limit ? 'ok' : 'attention',
        demand: givenFigure(`plug-mass.${id}.dry`, 'dry mass of the crown plug', mass, 'kg', {
          formula: 'volume × dry density',
          source: 'derived',
          inputs: { 'volume (L)': volume / 1e6, 'dry density (kg/m3)': dryDensity },
        }),
        capacity: givenFigure(`plug-mass.${id}.limit`, 'heaviest block', limit, 'kg'),
        ratio: mass / limit,
        source: 'limit from the description; HSE CIS 37 names more than 20 kg lifted by one person as high risk',
        advice: 'Cast it in its place on a form, or in pieces, or lift it with a hoist; never by hand over your head.',
      };
    });
}

function shortestCheck(house: HouseSetout, laid: LaidHouse): Check {
  const limit = house.house.blocks.shortestPiece;
  const block = most(laid.blocks, (b) => -b.longestRun);
  const run = block?.longestRun ?? limit;
  const short = laid.blocks.filter((b) => b.longestRun < limit - SAME_POINT).map((b) => b.mark);
  return {
    id: 'shortest-piece',
    statement: 'No piece beside an opening is shorter than the shortest piece asked for.',
    state: short.length === 0 ? 'ok' : 'attention',
    demand: givenFigure('shortest-piece.least', 'shortest piece', run, 'mm', {
      formula: 'longest run of a piece at mid-thickness, least of all pieces',
      source: 'derived',
      inputs: { 'pieces too short': short.length, marks: short.slice(0, 20).join(' ') },
    }),
    capacity: givenFigure('shortest-piece.limit', 'shortest piece allowed', limit, 'mm'),
    ratio: run > 0 ? limit / run : Number.MAX_VALUE,
    source: DESCRIPTION,
    advice: `Lay these pieces as one with their neighbour, or move the opening a little: ${short.slice(0, 8).join(', ') || 'none'}.`,
  };
}

function lapChecks(house: HouseSetout): Check[] {
  const limit = house.house.blocks.leastLap;
  return house.domes.map((dome) => {
    const laps = dome.courses.slice(1).map((course, k) => ({
      course: course.index,
      lap: leastLap(dome.courses[k] as (typeof dome.courses)[number], course),
    }));
    const short = laps.filter(({ lap }) => lap < limit);
    const least = laps.reduce((a, { lap }) => Math.min(a, lap), laps.length > 0 ? Number.MAX_VALUE : limit);
    return {
      id: `least-lap.${dome.id}`,
      statement: `Perpends of neighbouring courses of dome ${dome.id} keep the least lap.`,
      state: short.length === 0 ? 'ok' : 'attention',
      demand: givenFigure(`least-lap.${dome.id}.least`, 'least lap', least, 'mm', {
        formula: 'least distance between perpends of neighbouring courses at mid-thickness',
        source: 'derived',
        inputs: { 'courses below the limit': short.length },
        limit: 'between rings of n and m equal blocks no lap is longer than π r / lcm(n, m)',
      }),
      capacity: givenFigure(`least-lap.${dome.id}.limit`, 'least lap asked for', limit, 'mm'),
      ratio: least > 0 ? limit / least : Number.MAX_VALUE,
      source: DESCRIPTION,
      advice: `Courses with laps too short: ${short.map((s) => s.course).join(', ') || 'none'}. Neighbouring rings with different numbers of blocks can't lap everywhere.`,
    };
  });
}

/**
 * A flat bed leaves the cone it stands for by the arc's sagitta, r (1 − cos(head angle / 2)), times the sine of the
 * bed angle; blocks of the next course cross it where that is more than the joint.
 */
function flatBedCheck(house: HouseSetout): Check[] {
  const { faces, joint } = house.house.blocks;
  if (faces !== 'flat') return [];
  const misses = house.domes.flatMap((dome) =>
    dome.courses.map((course) => {
      const [r] = spanPoint(dome[course.part], course.to, dome.thickness);
      const widest = Math.max(...(course.mix?.angles ?? [(2 * Math.PI) / course.count]));
      const sagitta = r * (1 - cos(widest / 2));
      return {
        mark: `${dome.id}-${course.index}`,
        miss: sagitta * dome[course.part].at(course.to).normal[1],
      };
    }),
  );
  const worst = misses.reduce((a, b) => (b.miss > a.miss ? b : a), { mark: '', miss: 0 });
  const over = misses.filter(({ miss }) => miss > joint).map(({ mark }) => mark);
  return [
    {
      id: 'flat-beds',
      statement: 'Flat beds of neighbouring courses stay within the joint between them.',
      state: over.length === 0 ? 'ok' : 'fails',
      demand: givenFigure('flat-beds.miss', `greatest miss of a flat bed, course ${worst.mark}`, worst.miss, 'mm', {
        formula: 'r (1 − cos(head angle / 2)) sin(bed angle) at the upper outer edge',
        source: 'derived',
        inputs: { 'courses over the joint': over.length },
      }),
      capacity: givenFigure('flat-beds.joint', 'joint', joint, 'mm'),
      ratio: worst.miss / joint,
      source: DESCRIPTION,
      advice: `Use \`blocks.faces: curved\`, shorter blocks or thicker joints; courses that cross: ${over.slice(0, 12).join(', ') || 'none'}.`,
    },
  ];
}

function balanceCheck(balance: Balance): Check {
  const error = Math.abs(balance.error);
  return {
    id: 'masonry-balance',
    statement:
      'Blocks, joints, rings, barrels and cast pieces fill the masonry envelope: nothing is lost or counted twice.',
    state: error <= BALANCE_LIMIT ? 'ok' : 'fails',
    demand: givenFigure('masonry-balance.error', 'relative difference', error, '1', {
      formula: '|sum of the parts / envelope − 1|',
      source: 'derived; each part by its own quadrature',
      inputs: { 'envelope (m3)': balance.envelope / 1e9 },
    }),
    capacity: givenFigure('masonry-balance.limit', 'greatest difference', BALANCE_LIMIT, '1', {
      formula: 'a constant of this program',
      source: 'accuracy of the quadrature on cut pieces',
    }),
    ratio: error / BALANCE_LIMIT,
    source: 'derived',
    advice: 'Nothing to change in the description: report this as a fault of the program.',
  };
}
