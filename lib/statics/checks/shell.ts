import type { Check } from '../../base/figures.js';
import { LEAST_DEPTH } from '../../base/tolerances.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import { square } from '../../math/elementary.js';
import type { DomeSetout } from '../../setout/dome.js';
import { earlierThan, type HouseSetout } from '../../setout/house.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { DomeStatics, Statics } from '../results.js';
import type { ThrustPoint } from '../thrust.js';
import { atBest, computed, factorCheck, factorState, GOOD_SHAPE, missing, NO_THRUST, ratioOf } from './judge.js';
import { oneSidedChecks } from './one-sided.js';

const MEMBRANE = 'Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. 1959, ch. 14 (from memory)';

/** Checks of one dome as a shell and as lunes. */
export function shellChecks(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, statics: Statics): Check[] {
  return [
    ...stressCheck(setout, dome, found, statics),
    ...hoopCheck(found, setout.house.units),
    thrustCheck(setout, dome, found),
    ...slidingCheck(setout, found),
    ...oneSidedChecks(setout.house, found),
    ...openingsCheck(setout, dome, found),
  ];
}

/** Greatest compression on the part of the wall that a line of thrust stands in the middle of, MPa. */
export function lineStress(line: readonly ThrustPoint[], thickness: number): number {
  let most = 0;
  for (const p of line) {
    // At the crown the lune shrinks to nothing, the masonry doesn't.
    if (p.r < thickness || p.z < 0) continue;
    const depth = 2 * Math.max(LEAST_DEPTH, Math.min(p.place, 1 - p.place)) * thickness;
    most = Math.max(most, (1000 * Math.sqrt(square(p.horizontal) + square(p.vertical))) / (p.r * depth));
  }
  return most;
}

/** What load factors make of dead load and snow together. */
export function designShare(setout: HouseSetout, found: DomeStatics): number {
  const dead = found.weights.masonry + found.weights.render;
  const { snow } = found.weights;
  return designEffect(setout.house.site.combinations, dead, snow) / (dead + snow);
}

function stressCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics, { strength }: Statics): Check[] {
  const { combinations } = setout.house.site;
  const id = `wall-stress.${dome.id}`;
  const statement = `Compression in the wall of dome ${dome.id} stays within its strength.`;
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
    'greatest compression',
    stress,
    'MPa',
    `membrane force over thickness, or thrust over twice its distance from the nearer face; ${designFormula(combinations)}`,
    `${MEMBRANE}; ${combinationSource(combinations)}`,
    { 'membrane force (kN/m)': membrane, 'thickness (mm)': dome.thickness },
  );
  if (!strength) return [missing(id, statement, 'material.compressive-strength', MEMBRANE, { demand })];
  const capacity = computed(
    `${id}.strength`,
    'design strength of the masonry',
    strength.designMpa,
    'MPa',
    '0.55 fb^0.7 fm^0.3 / partial factor',
    'EN 1996-1-1:2005, 3.6.1.2 and Table 3.3 for autoclaved aerated units, by analogy (from memory)',
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
  const cubes = 'The strength is a table value: give `material.compressive-strength` from test cubes.';
  return [
    {
      id,
      statement,
      state,
      demand,
      capacity,
      ratio: ratioOf(stress, strength.designMpa),
      source: capacity.source,
      advice: holds ? (found.thrust.factor < 1 ? NO_THRUST : cubes) : 'Stronger blocks or mortar, or a thicker wall.',
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
      statement: `Rings of dome ${found.id} below ${formatLength(hoopTurnZ, units)} are in tension as long as it isn't cracked.`,
      state: 'attention',
      demand: computed(
        `${id}.pull`,
        'hoop tension under dead load, all rings together',
        hoopTension,
        'kN',
        'sum of the membrane hoop forces along the meridian where they pull',
        MEMBRANE,
        { 'height where tension begins (m)': hoopTurnZ / 1000 },
      ),
      source: MEMBRANE,
      advice:
        'Masonry counts as without tension: it cracks into lunes there, and the thrust of the lunes is what must be held.',
    },
  ];
}

function thrustCheck(setout: HouseSetout, dome: DomeSetout, found: DomeStatics): Check {
  const { thrust, tie, untiedFactor } = found;
  const cut = found.cutZ > dome.springingZ || earlierThan(setout, dome).length > 0;
  const held = tie
    ? tie.strength > 0
      ? ' with its tie'
      : ', its tie left out because it is no closed hoop,'
    : ' without a tie';
  const nothing = thrust.factor === 0 ? 'No thrust fits into this wall, however thick. ' : '';
  const estimate = cut ? 'An estimate, since openings or other domes cut its rings: an engineer must confirm it. ' : '';
  const state = cut ? atBest(factorState(thrust.factor)) : factorState(thrust.factor);
  return factorCheck(
    {
      id: `thrust.${dome.id}`,
      statement: `Dome ${dome.id}${held} keeps its thrust well inside shell, stem wall and footing.`,
      advice: `${nothing}${estimate}${thrust.factor < 2 ? `To raise it: ${GOOD_SHAPE}.` : ''}`.trim(),
    },
    thrust.factor,
    {
      load: thrust.loads,
      'factor without tie': untiedFactor,
      'least thrust at the foot (kN per radian)': thrust.least ?? 'none fits',
      'greatest thrust, crown alone (kN per radian)': thrust.greatest ?? 'not limited, or none fits',
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
  const statement = `No bed joint of dome ${found.id} slides under the thrust.`;
  const source = 'derived; thrust programme with |shear| <= friction times compression';
  const held = 'A closed ring tie takes the thrust off the lower joints; or a steeper springing.';
  if (friction === null) {
    return found.thrust.factor < 1
      ? [{ id, statement, state: 'attention', source, advice: NO_THRUST }]
      : [{ id, statement, state: 'fails', source, advice: `Not even joints as rough as 1 hold it. ${held}` }];
  }
  return [
    {
      id,
      statement,
      state: friction <= allowed ? 'ok' : 'fails',
      demand: computed(
        `${id}.needed`,
        'friction needed',
        friction,
        '1',
        'least greatest shear over compression of all thrusts that fit',
        source,
        { load: found.thrust.loads },
      ),
      capacity: computed(
        `${id}.allowed`,
        'friction counted on',
        allowed,
        '1',
        'as given',
        'the description; 0.4 in EN 1996-1-1:2005, 3.6.2 (from memory)',
      ),
      ratio: ratioOf(friction, allowed),
      source: 'derived',
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
      statement: `Shell theory holds for dome ${dome.id} only above ${formatLength(found.cutZ, setout.house.units)}, where all rings are closed.`,
      state: 'attention',
      source: 'common practice, no source',
      advice: `Below, an engineer must follow the forces round ${inShell ? 'the openings in the shell' : 'the openings in the stem wall'}${abuts.length > 0 ? ` and into ${abuts.join(', ')}` : ''}: arch rings, piers, and the steel that closes the rings.`,
    },
  ];
}
