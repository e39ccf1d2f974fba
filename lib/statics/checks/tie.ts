import type { Check } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import { formatLength } from '../../base/units.js';
import type { Site } from '../../description/house.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { partWay } from '../clear.js';
import { footThrust } from '../foot-thrust.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { DomeStatics, MembranePoint } from '../results.js';
import { barArea, lapLength, type PlacedTie, steelArea, steelStrength } from '../tie.js';
import { computed, ratioOf, SAFE_THEOREM, SOUND_FACTOR } from './judge.js';
import { barsFor, type HardestPull, hardestPull, oneSidedTieCheck } from './one-sided-tie.js';

/** Yield strength that a missing tie's area is told for. */
const USUAL_YIELD = 500;

/** Pull that the ring must take, kN, load factors on it; `null` when no thrust fits above it. */
function designPull(setout: HouseSetout, found: DomeStatics): number | null {
  const { combinations } = setout.house.site;
  const { z, dead, all } = found.pull;
  if (all === null) return null;
  const lunes = designEffect(combinations, dead ?? all, Math.max(0, all - (dead ?? all)));
  // Under the shell the wall hands the thrust on as lunes only.
  const uncracked = z >= 0 ? uncrackedPull(found.shell.points, z) : { dead: 0, snow: 0 };
  return Math.max(lunes, designEffect(combinations, uncracked.dead, uncracked.snow));
}

/** Pull of a ring at a height that takes the uncracked shell's thrust, between points in proportion; ends held. */
function uncrackedPull(points: readonly MembranePoint[], z: number): MembranePoint['pull'] {
  const next = points.findIndex((p) => p.z <= z);
  const below = points.at(next);
  if (!below) return { dead: 0, snow: 0 };
  const above = next > 0 ? points[next - 1] : undefined;
  if (!above) return below.pull;
  const part = (above.z - z) / (above.z - below.z);
  return {
    dead: partWay(above.pull.dead, below.pull.dead, part),
    snow: partWay(above.pull.snow, below.pull.snow, part),
  };
}

/** Whether the tie is a closed hoop, and strong and long enough. */
export function tieChecks(setout: HouseSetout, dome: DomeSetout, found: DomeStatics): Check[] {
  const described = setout.house.tie;
  if (described === 'none') return buttressCheck(setout, dome, found);
  const id = `tie.${dome.id}`;
  const pull = designPull(setout, found);
  if (described === null) return found.thrust.factor >= SOUND_FACTOR ? [] : [missingTie(setout, id, dome, found, pull)];
  const statement = texts.tieOfDome(dome.id);
  if (!found.tie) {
    return [
      {
        id,
        statement,
        state: 'fails',
        source: texts.commonPracticeNoSource,
        advice: texts.noBedOfShell,
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
        source: texts.commonPracticeNoSource,
        advice: texts.itWouldRunThrough(crosses.join(', ')),
      },
    ];
  }
  return [
    steelCheck(setout, id, statement, found.tie, pull, hardestPull(found)),
    ...oneSidedTieCheck(found, found.tie, setout.house.units),
    ...lapCheck(dome, found.tie),
  ];
}

/** Without a tie something else must take the thrust: how much is told, since nothing of it is designed here. */
function buttressCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics): Check[] {
  const thrust = footThrust(setout, found);
  // Where none fits, the check of the thrust itself tells it.
  if (thrust === null || thrust <= 0) return [];
  const id = `buttress.${dome.id}`;
  return [
    {
      id,
      statement: texts.somethingTakesThrust(dome.id),
      state: 'attention',
      demand: computed(`${id}.thrust`, texts.leastThrustAtFoot, thrust, 'kN/m', texts.footThrustFormula, SAFE_THEOREM, {
        'thrust (kN per radian)': found.thrust.least ?? 0,
        loads: found.thrust.loads,
      }),
      source: SAFE_THEOREM,
      advice: texts.buttressesTakeIt,
    },
  ];
}

const pullFigure = (combinations: Site['combinations'], id: string, z: number, pull: number, yieldMpa: number) =>
  computed(
    `${id}.needed`,
    texts.steelAreaNeeded,
    steelArea(pull, yieldMpa),
    'mm2',
    texts.tieFormula(designFormula(combinations)),
    texts.tieSource(SAFE_THEOREM, combinationSource(combinations)),
    { 'pull (kN)': pull, 'yield strength (MPa)': yieldMpa, 'height above the floor (m)': z / 1000 },
  );

function missingTie(setout: HouseSetout, id: string, dome: DomeSetout, found: DomeStatics, pull: number | null): Check {
  const base: Check = {
    id,
    statement: texts.domeHasRingTie(dome.id),
    state: 'attention',
    source: SAFE_THEOREM,
    advice: texts.missingInputTieClosed,
  };
  if (pull === null) return base;
  const { combinations } = setout.house.site;
  const asked = pullFigure(combinations, id, found.pull.z, pull, USUAL_YIELD);
  const more = hardestPull(found);
  if (!more || more.kn <= pull) return { ...base, demand: asked };
  const inputs = { ...asked.inputs, 'pull (kN)': more.kn, 'worst under': more.under.formula, kind: 'estimate' };
  return {
    ...base,
    demand: {
      ...asked,
      value: steelArea(more.kn, USUAL_YIELD),
      formula: texts.pullOneSidedArea,
      source: texts.tieSource(SAFE_THEOREM, more.under.source),
      inputs,
    },
  };
}

/** The steel under dead load and snow; how many bars it takes is told for the worst of all loads. */
function steelCheck(
  setout: HouseSetout,
  id: string,
  statement: string,
  placed: PlacedTie,
  pull: number | null,
  oneSided: HardestPull | null,
): Check {
  const { bars, diameter, yieldMpa } = placed.tie;
  const area = barArea(bars, diameter);
  const capacity = computed(`${id}.area`, texts.steelArea, area, 'mm2', 'bars π d² / 4', 'derived', {
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
      advice: texts.noThrustFitsIntoWall,
    };
  }
  const demand = pullFigure(setout.house.site.combinations, id, placed.z, pull, yieldMpa);
  const fits = demand.value <= area;
  return {
    id,
    statement,
    state: fits ? 'ok' : 'fails',
    demand,
    capacity,
    ratio: ratioOf(demand.value, area),
    source: demand.source,
    advice: texts.takeAtLeastBars(
      barsFor(Math.max(demand.value, steelArea(oneSided?.kn ?? 0, yieldMpa)), diameter),
      formatLength(diameter, setout.house.units),
    ),
  };
}

function lapCheck(dome: DomeSetout, { tie }: PlacedTie): Check[] {
  const id = `tie-lap.${dome.id}`;
  const statement = texts.barsOfTieLap(dome.id);
  const source = texts.lapSource;
  const lacks = [...(tie.bondMpa === null ? ['`tie.bond-strength`'] : []), ...(tie.lap === null ? ['`tie.lap`'] : [])];
  if (tie.bondMpa === null) {
    return [{ id, statement, state: 'attention', source, advice: texts.missingInput(lacks.join(', ')) }];
  }
  const needed = lapLength(tie.diameter, steelStrength(tie.yieldMpa), tie.bondMpa);
  const demand = computed(`${id}.needed`, texts.lapNeeded, needed, 'mm', texts.lapFormula, source, {
    'diameter d (mm)': tie.diameter,
    'yield strength (MPa)': tie.yieldMpa,
    'bond strength (MPa)': tie.bondMpa,
  });
  if (tie.lap === null) {
    return [{ id, statement, state: 'attention', demand, source, advice: texts.missingInput(lacks.join(', ')) }];
  }
  return [
    {
      id,
      statement,
      state: tie.lap >= needed ? 'ok' : 'fails',
      demand,
      capacity: computed(`${id}.lap`, texts.lap, tie.lap, 'mm', texts.asGiven, texts.description),
      ratio: ratioOf(needed, tie.lap),
      source,
      advice: texts.lapFurtherTakeThinner,
    },
  ];
}
