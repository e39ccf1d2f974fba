import type { Check } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-footing.js';
import { LEAST_DEPTH } from '../../base/tolerances.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { Pier } from '../piers.js';
import type { DomeStatics, Statics } from '../results.js';
import type { ThrustPoint } from '../thrust-line.js';
import { computed, factorCheck, missing, NO_THRUST, ratioOf } from './judge.js';

/** Checks of what is left of a dome's wall between its voids. */
export function pierChecks(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, statics: Statics): Check[] {
  if (found.piers.length === 0) return [];
  return [stressCheck(setout, dome, found, statics), ...archCheck(found, statics, setout.house.units)];
}

const nameOf = ({ between: [one, next], z }: Pier, units: LengthUnit): string =>
  texts.aboveFloor(one === next ? texts.besideOne(one) : texts.betweenAnd(one, next), formatLength(z, units));

/** Where the thrust crosses the wall at a height, 0 inside to 1 outside. */
function placeAt(line: readonly ThrustPoint[], z: number): number {
  const below = line.find((p) => p.z <= z) ?? line[line.length - 1];
  return below ? Math.min(1, Math.max(0, below.place)) : 0.5;
}

function stressCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, { strength }: Statics): Check {
  const { units } = setout.house;
  const { combinations } = setout.house.site;
  const id = `piers.${dome.id}`;
  if (found.thrust.factor < 1) {
    return {
      id,
      statement: texts.piersBear(dome.id),
      state: 'attention',
      source: texts.statics,
      advice: NO_THRUST,
    };
  }
  const stressOf = (pier: Pier): number => {
    const place = placeAt(found.thrust.line, pier.z);
    const depth = 2 * Math.max(LEAST_DEPTH, Math.min(place, 1 - place)) * dome.thickness;
    return (1000 * designEffect(combinations, pier.dead, pier.snow)) / (Math.max(1, pier.width) * depth);
  };
  const worst = found.piers.reduce((a, b) => (stressOf(b) > stressOf(a) ? b : a));
  const narrowest = found.piers.reduce((a, b) => (b.width < a.width ? b : a));
  const stress = stressOf(worst);
  const statement = texts.piersBearWorst(dome.id, nameOf(worst, units));
  const formula = texts.pierFormula(designFormula(combinations));
  const demand = computed(`${id}.stress`, texts.compression, stress, 'MPa', formula, combinationSource(combinations), {
    'width (mm)': worst.width,
    'gathered width (mm)': worst.gathered,
    'load, dead and snow (kN)': worst.dead + worst.snow,
    'least pier': nameOf(narrowest, units),
    'its width (mm)': narrowest.width,
  });
  if (!strength) return missing(id, statement, 'material.compressive-strength', 'statics', { demand });
  const holds = stress <= strength.designMpa;
  return {
    id,
    statement,
    state: holds ? (strength.from === 'table' ? 'attention' : 'ok') : 'fails',
    demand,
    capacity: computed(
      `${id}.strength`,
      texts.designStrengthOfMasonry,
      strength.designMpa,
      'MPa',
      texts.masonryStrengthFormula,
      texts.masonryStrengthSource,
      { 'block strength fb (MPa)': strength.blockMpa, 'fb from': strength.from },
    ),
    ratio: ratioOf(stress, strength.designMpa),
    source: texts.staticsLoadFollowsMeridians,
    advice: holds ? texts.strengthIsTableValue : texts.widerPiersStrongerBlocks,
  };
}

/** Arch thrust into the pier beside it, the neighbour's relief left out. */
function archCheck(found: DomeStatics, { heads }: Statics, units: LengthUnit): Check[] {
  const cases = found.piers.flatMap((pier) =>
    pier.between.flatMap((voidId) => {
      const head = heads.find((h) => h.id === voidId);
      const thrust = head?.arch?.least;
      const lever = (head?.springingZ ?? 0) - pier.z;
      const load = pier.dead + pier.snow;
      if (!head || !thrust || lever <= 0 || load <= 0) return [];
      return [{ pier, head, thrust, lever, load, factor: (pier.width / 2) * (load / (thrust * lever)) }];
    }),
  );
  if (cases.length === 0) return [];
  const worst = cases.reduce((a, b) => (b.factor < a.factor ? b : a));
  const check = factorCheck(
    {
      id: `pier-thrust.${found.id}`,
      statement: texts.archesDoNotPushOver(found.id, worst.head.id, nameOf(worst.pier, units)),
      advice: texts.widerPierHigherRise,
    },
    Math.min(100, worst.factor),
    {
      'least thrust of the arch (kN)': worst.thrust,
      'its height over the pier’s foot (mm)': worst.lever,
      'load of the pier (kN)': worst.load,
      'width of the pier (mm)': worst.pier.width,
    },
  );
  const { capacity } = check;
  return [
    {
      ...check,
      source: texts.staticsOfBlock,
      ...(capacity ? { capacity: { ...capacity, formula: texts.pierTiltFormula, source: texts.statics } } : {}),
    },
  ];
}
