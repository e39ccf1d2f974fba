import type { Check } from '../../base/figures.js';
import { formatLength } from '../../base/units.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { DomeStatics } from '../results.js';
import { barArea, lapLength, type PlacedTie, steelArea, steelStrength } from '../tie.js';
import { computed, ratioOf, SAFE_THEOREM, SOUND_FACTOR } from './judge.js';

/** Yield strength that a missing tie's area is told for. */
const USUAL_YIELD = 500;

/** Pull that the ring must take, kN, load factors on it; `null` when no thrust fits above it. */
function designPull(setout: HouseSetout, found: DomeStatics): number | null {
  const { combinations } = setout.house.site;
  const { z, dead, all } = found.pull;
  if (all === null) return null;
  const lunes = designEffect(combinations, dead ?? all, Math.max(0, all - (dead ?? all)));
  const point = found.shell.points.find((p) => p.z <= z) ?? found.shell.points.at(-1);
  // Under the shell the wall hands the thrust on as lunes only.
  const uncracked = point && z >= 0 ? designEffect(combinations, point.pull.dead, point.pull.snow) : 0;
  return Math.max(lunes, uncracked);
}

/** Whether the tie is a closed hoop, and strong and long enough. */
export function tieChecks(setout: HouseSetout, dome: DomeSetout, found: DomeStatics): Check[] {
  const described = setout.house.tie;
  if (described === 'none') return [];
  const id = `tie.${dome.id}`;
  const pull = designPull(setout, found);
  if (described === null) return found.thrust.factor >= SOUND_FACTOR ? [] : [missingTie(setout, id, dome, found, pull)];
  const statement = `The tie of dome ${dome.id} is a closed hoop that takes its thrust.`;
  if (!found.tie) {
    return [
      {
        id,
        statement,
        state: 'fails',
        source: 'common practice, no source',
        advice:
          'No bed of the shell above the openings is left for it: lower the openings, or lay it in the footing (`tie.level: footing`).',
      },
    ];
  }
  const { crosses } = found.tie;
  if (crosses.length > 0) {
    return [
      {
        id,
        statement,
        state: 'fails',
        source: 'common practice, no source',
        advice: `It would run through ${crosses.join(', ')}: lay it above them (\`tie.level: above openings\`) or in the footing.`,
      },
    ];
  }
  return [steelCheck(setout, id, statement, found.tie, pull), ...lapCheck(dome, found.tie)];
}

const pullFigure = (setout: HouseSetout, id: string, z: number, pull: number, yieldMpa: number) =>
  computed(
    `${id}.needed`,
    'steel area needed',
    steelArea(pull, yieldMpa),
    'mm2',
    `pull / (yield strength / 1.15); pull the greater of the least thrust of lunes and the membrane's thrust, times the radius; ${designFormula(setout.house.site.combinations)}`,
    `${SAFE_THEOREM}; EN 1992-1-1:2004, 2.4.2.4 (from memory); ${combinationSource(setout.house.site.combinations)}`,
    { 'pull (kN)': pull, 'yield strength (MPa)': yieldMpa, 'height above the floor (m)': z / 1000 },
  );

function missingTie(setout: HouseSetout, id: string, dome: DomeSetout, found: DomeStatics, pull: number | null): Check {
  const base: Check = {
    id,
    statement: `Dome ${dome.id} has a ring tie, or does without.`,
    state: 'attention',
    source: SAFE_THEOREM,
    advice:
      'Missing input: `tie`, a closed hoop of steel; or write `tie: none` if piers and footing alone take the thrust.',
  };
  return pull === null ? base : { ...base, demand: pullFigure(setout, id, found.pull.z, pull, USUAL_YIELD) };
}

function steelCheck(setout: HouseSetout, id: string, statement: string, placed: PlacedTie, pull: number | null): Check {
  const { bars, diameter, yieldMpa } = placed.tie;
  const area = barArea(bars, diameter);
  const capacity = computed(`${id}.area`, 'steel area', area, 'mm2', 'bars π d² / 4', 'derived', {
    bars,
    'diameter (mm)': diameter,
  });
  if (pull === null) {
    return {
      id,
      statement,
      state: 'fails',
      capacity,
      source: SAFE_THEOREM,
      advice: 'No thrust fits into the wall above it, so nothing tells its pull: change the wall first.',
    };
  }
  const demand = pullFigure(setout, id, placed.z, pull, yieldMpa);
  const fits = demand.value <= area;
  return {
    id,
    statement,
    state: fits ? 'ok' : 'fails',
    demand,
    capacity,
    ratio: ratioOf(demand.value, area),
    source: demand.source,
    advice: `Take at least ${Math.max(1, Math.ceil(demand.value / barArea(1, diameter)))} bars of ${formatLength(diameter, setout.house.units)}.`,
  };
}

function lapCheck(dome: DomeSetout, { tie }: PlacedTie): Check[] {
  const id = `tie-lap.${dome.id}`;
  const statement = `The bars of the tie of dome ${dome.id} lap far enough.`;
  const source = 'EN 1992-1-1:2004, 8.4 and 8.7 (from memory)';
  const lacks = [...(tie.bondMpa === null ? ['`tie.bond-strength`'] : []), ...(tie.lap === null ? ['`tie.lap`'] : [])];
  if (tie.bondMpa === null) {
    return [{ id, statement, state: 'attention', source, advice: `Missing input: ${lacks.join(', ')}.` }];
  }
  const needed = lapLength(tie.diameter, steelStrength(tie.yieldMpa), tie.bondMpa);
  const demand = computed(
    `${id}.needed`,
    'lap needed',
    needed,
    'mm',
    '1.5 (d / 4) (yield strength / 1.15) / bond strength, at least 15 d and 200 mm',
    source,
    { 'diameter d (mm)': tie.diameter, 'yield strength (MPa)': tie.yieldMpa, 'bond strength (MPa)': tie.bondMpa },
  );
  if (tie.lap === null) {
    return [{ id, statement, state: 'attention', demand, source, advice: `Missing input: ${lacks.join(', ')}.` }];
  }
  return [
    {
      id,
      statement,
      state: tie.lap >= needed ? 'ok' : 'fails',
      demand,
      capacity: computed(`${id}.lap`, 'lap', tie.lap, 'mm', 'as given', 'the description'),
      ratio: ratioOf(needed, tie.lap),
      source,
      advice: 'Lap further, take thinner bars, or weld or couple them.',
    },
  ];
}
