import { shellOfRevolution } from '../masonry/envelope.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { bodyOf, domeThrust, pullAt } from './dome-thrust.js';
import { headsOf, type LoadedDome } from './heads.js';
import { jambLoad } from './jambs.js';
import { unitLoads } from './loads.js';
import { type Lune, luneOf } from './lune.js';
import { type Pier, piersOf } from './piers.js';
import type { DomeStatics, DomeWeights, FootingForces, Statics } from './results.js';
import { shellForces } from './shell.js';
import { type Strength, strengthOf } from './strength.js';
import { geometricFactor } from './thrust.js';
import type { ThrustPoint } from './thrust-line.js';
import { type PlacedTie, placeTie } from './tie.js';
import {
  drift,
  earthquake,
  HEMISPHERE_ON_GROUND,
  type OneSided,
  ringLevel,
  type Standing,
  type WindCoefficients,
  wind,
} from './unsymmetrical.js';
import { cutLevel, voidsOf } from './voids.js';

/**
 * Statics of a house, as plain data: weights, membrane forces, thrusts, tie, piers, heads and footing. Loads are
 * without load factors, forces kN, lengths mm. Nothing of it is a design; `staticsChecks` judges it.
 */
export function staticsOf(setout: HouseSetout): Statics {
  const loaded = new Map<string, TiedDome>();
  const strength = strengthOf(setout.house.material);
  for (const dome of setout.domes) {
    const loads = unitLoads(setout, dome);
    const { renderInside, renderOutside } = setout.house.wall;
    const footing = setout.footings.find((f) => f.domeId === dome.id) ?? null;
    const cutZ = cutLevel(setout, dome);
    const tie = placeTie(setout, dome, cutZ);
    const lune = luneOf(dome, loads, { renderInside, renderOutside, footing, ...(tie ? { tieZ: tie.z } : {}) });
    loaded.set(dome.id, { dome, loads, lune, cutZ, tie });
  }
  return {
    strength,
    domes: [...loaded.values()].map((one) => domeStatics(setout, one, strength)),
    heads: headsOf(setout, loaded),
  };
}

/** A dome with its loads, the level above which its rings are closed, and its tie. */
interface TiedDome extends LoadedDome {
  readonly cutZ: number;
  readonly tie: PlacedTie | null;
}

function domeStatics(
  setout: HouseSetout,
  { dome, lune, loads, cutZ, tie }: TiedDome,
  strength: Strength | null,
): DomeStatics {
  const { wall, material } = setout.house;
  const standing = { lune, tie, cutZ, strengthMpa: strength?.designMpa ?? null, friction: material.friction };
  const thrust = domeThrust(lune, cutZ, tie);
  const piers = piersOf(lune, voidsOf(setout, dome));
  const ringZ = ringLevel({ lune, tie, cutZ });
  return {
    id: dome.id,
    weights: weightsOf(lune, loads.masonry, dome),
    shell: shellForces(lune, loads, [wall.renderInside, wall.renderOutside]),
    springingZ: dome.springingZ,
    cutZ,
    tie,
    pull: {
      z: ringZ,
      dead: pullAt(lune, 'dead', cutZ, ringZ),
      all: pullAt(lune, 'dead and snow', cutZ, ringZ),
    },
    thrust,
    untiedFactor: tie && tie.strength > 0 ? geometricFactor(bodyOf(lune, thrust.loads, cutZ, null)) : thrust.factor,
    oneSided: oneSidedOf(setout, standing),
    piers,
    footing: footingForces(setout, lune, thrust, piers),
  };
}

const TURN = 2 * Math.PI;

function weightsOf(lune: Lune, masonry: number, dome: DomeSetout): DomeWeights {
  const last = lune.sections[lune.sections.length - 1];
  const { masonry: own, render } = lune.total;
  return {
    masonry: own * TURN,
    render: render * TURN,
    footing: ((last?.dead.weight ?? 0) - own - render) * TURN,
    snow: (last?.snow.weight ?? 0) * TURN,
    balance: (own * TURN) / (masonry * shellOfRevolution(dome)) - 1,
  };
}

function oneSidedOf(setout: HouseSetout, standing: Standing): OneSided[] {
  const { site } = setout.house;
  const { snowKpa, windKpa, seismicCoefficient } = site;
  const coefficients = windCoefficientsOf(setout, standing.lune.dome);
  const found: OneSided[] = [];
  if (snowKpa) found.push(drift(standing, site));
  if (windKpa && coefficients) found.push(wind(standing, site, coefficients));
  if (seismicCoefficient) found.push(earthquake(standing, seismicCoefficient, site));
  return found;
}

/** Given ones; else those of a hemisphere on the ground where the dome is one; else `null`. */
function windCoefficientsOf({ house }: HouseSetout, dome: DomeSetout): WindCoefficients | null {
  if (house.site.windCoefficients) return house.site.windCoefficients;
  return dome.profile.shape === 'hemisphere' && dome.springingZ === 0 ? HEMISPHERE_ON_GROUND : null;
}

/** Ids of domes whose wind nothing gives coefficients for. */
export const withoutWindCoefficients = (setout: HouseSetout): string[] =>
  setout.domes.filter((dome) => windCoefficientsOf(setout, dome) === null).map(({ id }) => id);

function footingForces(
  setout: HouseSetout,
  lune: Lune,
  thrust: { readonly least: number | null; readonly line: readonly ThrustPoint[]; readonly factor: number },
  piers: readonly Pier[],
): FootingForces | null {
  const last = lune.sections[lune.sections.length - 1];
  if (last?.part !== 'footing') return null;
  const perMetre = 1000 / last.middle[0];
  const lineLoad = (last.dead.weight + last.snow.weight) * perMetre;
  const depth = setout.house.footing?.depth ?? 0;
  // Concrete spreads a pier's load at 45 degrees.
  const low = piers.filter((p) => p.z <= 0);
  const gathering = Math.max(1, ...low.map((p) => p.gathered / Math.min(p.gathered, p.width + 2 * depth)));
  const end = thrust.factor >= 1 ? thrust.line[thrust.line.length - 1] : undefined;
  const width = 2 * last.half[0];
  const eccentricity = end ? (end.place - 0.5) * width : null;
  const jamb = jambLoad(setout, lune.dome, piers, depth);
  const pressure = (times: number) =>
    eccentricity === null ? null : (lineLoad * times * 1000) / (width - 2 * Math.abs(eccentricity));
  return {
    lineLoad,
    gathering,
    jamb,
    thrust: thrust.least === null ? null : thrust.least * perMetre,
    eccentricity,
    pressureKpa: pressure(gathering),
    jambKpa: jamb && pressure(jamb.times),
  };
}
