import type { Check } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import type { DomeSetout } from '../../setout/dome.js';
import { earlierThan, type HouseSetout } from '../../setout/house.js';
import { lineStress } from '../joints.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { DomeStatics, Statics } from '../results.js';
import { atBest, computed, factorCheck, factorState, goodShape, missing, NO_THRUST, ratioOf } from './judge.js';
import { oneSidedChecks } from './one-sided.js';
import { oneSidedSoilCheck } from './one-sided-soil.js';

const MEMBRANE = texts.shellTheorySource;

/** Checks of one dome as a shell and as lunes. */
export function shellChecks(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, statics: Statics): Check[] {
  return [
    ...stressCheck(setout, dome, found, statics),
    ...hoopCheck(found, setout.house.units),
    thrustCheck(setout, dome, found),
    ...slidingCheck(setout, found),
    ...oneSidedChecks(setout.house, found, statics.strength),
    ...oneSidedSoilCheck(setout, found),
    ...openingsCheck(setout, dome, found),
  ];
}

/** What load factors make of dead load and snow together. */
function designShare(setout: HouseSetout, found: DomeStatics): number {
  const dead = found.weights.masonry + found.weights.render;
  const { snow } = found.weights;
  return designEffect(setout.house.site.combinations, dead, snow) / (dead + snow);
}

function stressCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, { strength }: Statics): Check[] {
  const { combinations } = setout.house.site;
  const id = `wall-stress.${dome.id}`;
  const statement = texts.compressionInWall(dome.id);
  const membrane = Math.max(
    0,
    ...found.shell.points.map((p) =>
      Math.max(
        designEffect(combinations, -p.dead.meridian, -p.snow.meridian),
        designEffect(combinations, -p.dead.hoop, -p.snow.hoop),
      ),
    ),
  );
  const byThrust = found.thrust.factor >= 1 ? lineStress(found.thrust.line, dome.thickness) : 0;
  const stress = Math.max(membrane / dome.thickness, byThrust * designShare(setout, found));
  const demand = computed(
    `${id}.stress`,
    texts.greatestCompression,
    stress,
    'MPa',
    texts.membraneForceOverThickness(designFormula(combinations)),
    `${MEMBRANE}; ${combinationSource(combinations)}`,
    { 'membrane force (kN/m)': membrane, 'thickness (mm)': dome.thickness },
  );
  if (!strength) return [missing(id, statement, 'material.compressive-strength', MEMBRANE, { demand })];
  const capacity = computed(
    `${id}.strength`,
    texts.designStrengthOfMasonry,
    strength.designMpa,
    'MPa',
    texts.masonryStrengthFormula,
    texts.masonryStrengthSource,
    {
      'block strength fb (MPa)': strength.blockMpa,
      'fb from': strength.from,
      'mortar strength fm (MPa)': setout.house.material.mortarStrengthMpa,
      'partial factor': setout.house.material.partialFactor,
    },
  );
  const holds = stress <= strength.designMpa;
  const sure = strength.from === 'test cubes' && found.thrust.factor >= 1;
  const state = holds ? (sure ? 'ok' : 'attention') : 'fails';
  const cubes = texts.strengthIsTableValue;
  return [
    {
      id,
      statement,
      state,
      demand,
      capacity,
      ratio: ratioOf(stress, strength.designMpa),
      source: capacity.source,
      advice: holds ? (found.thrust.factor < 1 ? NO_THRUST : cubes) : texts.strongerBlocksOrMortar,
    },
  ];
}

function hoopCheck(found: DomeStatics, units: LengthUnit): Check[] {
  const { hoopTurnZ, hoopTension } = found.shell;
  if (hoopTurnZ === null) return [];
  const id = `hoop-tension.${found.id}`;
  return [
    {
      id,
      statement: texts.ringsOfDomeBelow(found.id, formatLength(hoopTurnZ, units)),
      state: 'attention',
      demand: computed(`${id}.pull`, texts.hoopTensionUnderDead, hoopTension, 'kN', texts.sumOfMembraneHoop, MEMBRANE, {
        'height where tension begins (m)': hoopTurnZ / 1000,
      }),
      source: MEMBRANE,
      advice: texts.masonryCountsAsWithout,
    },
  ];
}

function thrustCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics): Check {
  const { thrust, tie, untiedFactor } = found;
  const cut = found.cutZ > dome.springingZ || earlierThan(setout, dome).length > 0;
  const held = tie ? (tie.strength > 0 ? texts.withItsTie : texts.itsTieLeftOut) : texts.withoutTie;
  const nothing = thrust.factor >= 1 ? '' : thrust.factor === 0 ? texts.noThrustFits : texts.noThrustFitsAsItIs;
  const estimate = cut ? texts.estimateSinceOpenings : '';
  const state = cut ? atBest(factorState(thrust.factor)) : factorState(thrust.factor);
  return factorCheck(
    {
      id: `thrust.${dome.id}`,
      statement: texts.domeKeepsItsThrust(dome.id, held),
      advice: `${nothing}${estimate}${thrust.factor < 2 ? texts.toRaiseIt(goodShape(found)) : ''}`.trim(),
    },
    thrust.factor,
    {
      load: thrust.loads,
      'factor without tie': untiedFactor,
      'least thrust at the foot (kN per radian)': thrust.least ?? texts.noneFits,
      'greatest thrust, crown alone (kN per radian)': thrust.greatest ?? texts.notLimitedOrNone,
      'rings closed above (m)': found.cutZ / 1000,
      ...(cut ? { kind: 'estimate' } : {}),
    },
    state,
  );
}

function slidingCheck(setout: HouseSetout, found: DomeStatics): Check[] {
  const { friction } = found.thrust;
  const allowed = setout.house.material.friction;
  const id = `joint-sliding.${found.id}`;
  const statement = texts.noBedJoint(found.id);
  const source = texts.derivedThrustProgramme;
  const held = texts.closedRingTieTakes;
  if (friction === null) {
    return found.thrust.factor < 1
      ? [{ id, statement, state: 'attention', source, advice: NO_THRUST }]
      : [{ id, statement, state: 'fails', source, advice: texts.notEvenJoints(held) }];
  }
  return [
    {
      id,
      statement,
      state: friction <= allowed ? 'ok' : 'fails',
      demand: computed(`${id}.needed`, texts.frictionNeeded, friction, '1', texts.leastGreatestShearOver, source, {
        load: found.thrust.loads,
      }),
      capacity: computed(`${id}.allowed`, texts.frictionCounted, allowed, '1', texts.asGiven, texts.frictionSource),
      ratio: ratioOf(friction, allowed),
      source: texts.derived,
      advice: held,
    },
  ];
}

function openingsCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics): Check[] {
  if (found.cutZ === 0) return [];
  const inShell = found.cutZ > dome.springingZ;
  const abuts = earlierThan(setout, dome).map(({ id }) => id);
  return [
    {
      id: `shell-theory.${dome.id}`,
      statement: texts.shellTheoryHolds(dome.id, formatLength(found.cutZ, setout.house.units)),
      state: 'attention',
      source: texts.commonPracticeNoSource,
      advice: texts.belowEngineerMustFollow(inShell, abuts.length > 0 ? texts.andIntoDomes(abuts.join(', ')) : ''),
    },
  ];
}
