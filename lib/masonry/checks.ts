import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/masonry-checks.js';
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

const DESCRIPTION = texts.theDescription;

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
    statement: block ? texts.heaviestBlockIsLight(block.mark) : texts.thereAreNoBlocks,
    state: wet <= rules.heaviestKg ? 'ok' : 'fails',
    demand: givenFigure('block-mass.wet', texts.wetMassOfHeaviestBlock, wet, 'kg', {
      formula: texts.wetMassFormula,
      source: texts.wetMassSource,
      inputs: {
        'dry volume (L)': volume / 1e6,
        'wet density (kg/m3)': wetDensity(material),
        shrinkage: rules.shrinkage,
      },
      limit: texts.neatCementWater,
    }),
    capacity: givenFigure('block-mass.limit', texts.heaviestBlockInputs, rules.heaviestKg, 'kg'),
    ratio: wet / rules.heaviestKg,
    source: texts.limitFromDescriptionHse,
    advice: texts.shortenBlocksLowerCourses,
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
        statement: texts.crownPlugIsLight(id),
        state: mass <= limit ? 'ok' : 'attention',
        demand: givenFigure(`plug-mass.${id}.dry`, texts.dryMassOfCrown, mass, 'kg', {
          formula: texts.volumeDryDensity,
          source: texts.derived,
          inputs: { 'volume (L)': volume / 1e6, 'dry density (kg/m3)': dryDensity },
        }),
        capacity: givenFigure(`plug-mass.${id}.limit`, texts.heaviestBlockInputs, limit, 'kg'),
        ratio: mass / limit,
        source: texts.limitFromDescriptionHse,
        advice: texts.castPlugInPlace,
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
    statement: texts.noPieceBesideOpening,
    state: short.length === 0 ? 'ok' : 'attention',
    demand: givenFigure('shortest-piece.least', texts.shortestPiece, run, 'mm', {
      formula: texts.longestRunOfPiece,
      source: texts.derived,
      inputs: { 'pieces too short': short.length, marks: short.slice(0, 20).join(' ') },
    }),
    capacity: givenFigure('shortest-piece.limit', texts.shortestPieceAllowed, limit, 'mm'),
    ratio: run > 0 ? limit / run : Number.MAX_VALUE,
    source: DESCRIPTION,
    advice: texts.layThesePieces(short.slice(0, 8)),
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
      statement: texts.perpendsOfNeighbouringCourses(dome.id),
      state: short.length === 0 ? 'ok' : 'attention',
      demand: givenFigure(`least-lap.${dome.id}.least`, texts.leastLapFigure, least, 'mm', {
        formula: texts.leastDistanceBetweenPerpends,
        source: texts.derived,
        inputs: { 'courses below the limit': short.length },
        limit: texts.betweenRingsOfN,
      }),
      capacity: givenFigure(`least-lap.${dome.id}.limit`, texts.leastLapAsked, limit, 'mm'),
      ratio: least > 0 ? limit / least : Number.MAX_VALUE,
      source: DESCRIPTION,
      advice: texts.coursesWithLapsToo(short.map((s) => s.course)),
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
      statement: texts.flatBedsOfNeighbouring,
      state: over.length === 0 ? 'ok' : 'fails',
      demand: givenFigure('flat-beds.miss', texts.greatestMissOfFlat(worst.mark), worst.miss, 'mm', {
        formula: texts.flatBedFormula,
        source: texts.derived,
        inputs: { 'courses over the joint': over.length },
      }),
      capacity: givenFigure('flat-beds.joint', texts.joint, joint, 'mm'),
      ratio: worst.miss / joint,
      source: DESCRIPTION,
      advice: texts.useBlocksFacesCurved(over.slice(0, 12)),
    },
  ];
}

function balanceCheck(balance: Balance): Check {
  const error = Math.abs(balance.error);
  return {
    id: 'masonry-balance',
    statement: texts.blocksJointsRingsBarrels,
    state: error <= BALANCE_LIMIT ? 'ok' : 'fails',
    demand: givenFigure('masonry-balance.error', texts.relativeDifference, error, '1', {
      formula: texts.balanceFormula,
      source: texts.derivedEachPart,
      inputs: { 'envelope (m3)': balance.envelope / 1e9 },
    }),
    capacity: givenFigure('masonry-balance.limit', texts.greatestDifference, BALANCE_LIMIT, '1', {
      formula: texts.constantOfThisProgram,
      source: texts.accuracyOfQuadrature,
    }),
    ratio: error / BALANCE_LIMIT,
    source: texts.derived,
    advice: texts.nothingToChange,
  };
}
