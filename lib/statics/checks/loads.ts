import { type Check, givenFigure } from '../../base/figures.js';
import { WEIGHT_BALANCE } from '../../base/tolerances.js';
import type { HouseSetout } from '../../setout/house.js';
import type { Statics } from '../results.js';
import { windCoefficientsOf } from '../statics.js';
import { DENSITIES } from '../strength.js';
import { computed, missing, ratioOf } from './judge.js';

/** What the description must say before anything can be computed, and what it doesn't say of loads. */
export function loadChecks(setout: HouseSetout, statics: Statics): Check[] {
  return [...materialChecks(setout), ...balanceCheck(statics), ...siteChecks(setout), shrinkageCheck(setout)];
}

function materialChecks({ house: { material } }: HouseSetout): Check[] {
  const checks: Check[] = [];
  const [least, most] = DENSITIES;
  if (!(material.dryDensity >= least && material.dryDensity <= most)) {
    checks.push({
      id: 'dry-density',
      statement: `The dry density lies between ${least} and ${most} kg/m3, where these formulas hold.`,
      state: 'fails',
      source: 'BCA 46.042, 1994; ACI 523.3R (both from memory)',
      advice: 'Change `material.dry-density`: the figures below mean nothing.',
    });
  }
  const strength = material.compressiveStrengthMpa;
  const statement = 'The strength of the blocks is known from test cubes.';
  if (strength === null) {
    const table = 'Until then a value from a table by density stands in its place.';
    checks.push(
      missing('block-strength', statement, 'material.compressive-strength', 'common practice, no source', {
        advice: `Missing input: \`material.compressive-strength\`, the mean of your own test cubes. ${table}`,
      }),
    );
  } else if (!(strength > 0)) {
    checks.push({
      id: 'block-strength',
      statement,
      state: 'fails',
      source: 'the description',
      advice: 'Give `material.compressive-strength` as the mean of your own test cubes: more than 0.',
    });
  }
  return checks;
}

function balanceCheck({ domes }: Statics): Check[] {
  const error = Math.max(0, ...domes.map((d) => Math.abs(d.weights.balance)));
  return [
    {
      id: 'load-balance',
      statement: 'The weights that the thrust carries add up to the masonry’s volume, integrated otherwise.',
      state: error <= WEIGHT_BALANCE ? 'ok' : 'fails',
      demand: computed(
        'load-balance.error',
        'relative difference',
        error,
        '1',
        '|lunes / level slices − 1|',
        'derived',
        {
          'masonry of all domes (kN)': domes.reduce((sum, d) => sum + d.weights.masonry, 0),
          'render (kN)': domes.reduce((sum, d) => sum + d.weights.render, 0),
        },
      ),
      capacity: givenFigure('load-balance.limit', 'greatest difference', WEIGHT_BALANCE, '1', {
        formula: 'a constant of this program',
        source: 'accuracy of both quadratures',
      }),
      ratio: error / WEIGHT_BALANCE,
      source: 'derived',
      advice: 'Nothing to change in the description: report this as a fault of the program.',
    },
  ];
}

function siteChecks(setout: HouseSetout): Check[] {
  const { site } = setout.house;
  const checks: Check[] = [];
  const snow = site.combinations === 'EN 1990' ? 'EN 1991-1-3:2003' : 'ASCE 7-16, chapter 7';
  const wind = site.combinations === 'EN 1990' ? 'EN 1991-1-4:2005, 7.2.8' : 'ASCE 7-16, chapter 27';
  const quake = site.combinations === 'EN 1990' ? 'EN 1998-1:2004' : 'ASCE 7-16, chapter 12';
  if (site.snowKpa === null) checks.push(missing('snow', 'The domes are checked under snow.', 'site.snow', snow));
  if (site.windKpa === null) checks.push(missing('wind', 'The domes are checked under wind.', 'site.wind', wind));
  const unknown = setout.domes.filter((dome) => windCoefficientsOf(setout, dome) === null).map(({ id }) => id);
  if (site.windKpa !== null && unknown.length > 0) {
    checks.push(
      missing('wind', 'The domes are checked under wind.', 'site.wind-coefficients', wind, {
        advice: `Missing input: \`site.wind-coefficients\`, read by an engineer from the standard's figure, for ${unknown.join(', ')}: the one set known here is that of a hemisphere on the ground.`,
      }),
    );
  }
  if (site.seismicCoefficient === null) {
    checks.push(missing('earthquake', 'The domes are checked under earthquake.', 'site.seismic-coefficient', quake));
  }
  return checks;
}

function shrinkageCheck({ house, domes }: HouseSetout): Check {
  const { shrinkage } = house.blocks;
  const widest = domes.reduce((a, b) => (b.springingRadius > a.springingRadius ? b : a));
  const round = 2 * Math.PI * (widest.springingRadius + widest.thickness / 2);
  const opening = shrinkage * round;
  return {
    id: 'shrinkage',
    statement: 'Blocks have shrunk before they are laid.',
    state: 'attention',
    demand: computed(
      'shrinkage.round',
      `shortening of the ring of dome ${widest.id} by drying`,
      opening,
      'mm',
      'drying shrinkage times the circumference at mid-thickness',
      'derived',
      { 'shrinkage (1)': shrinkage, 'circumference (mm)': round },
    ),
    capacity: givenFigure('shrinkage.joint', 'joint', house.blocks.joint, 'mm'),
    ratio: ratioOf(opening, house.blocks.joint),
    source: 'common practice, no source',
    advice:
      'Lay no block before it is dry: what still shrinks in the wall opens as cracks through rings and over openings.',
  };
}
