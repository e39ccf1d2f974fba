import { type Check, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-footing.js';
import { WEIGHT_BALANCE } from '../../base/tolerances.js';
import type { HouseSetout } from '../../setout/house.js';
import type { Statics } from '../results.js';
import { withoutWindCoefficients } from '../statics.js';
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
      statement: texts.dryDensityLiesBetween(least, most),
      state: 'fails',
      source: texts.densityRangeSource,
      advice: texts.changeMaterialDryDensity,
    });
  }
  const strength = material.compressiveStrengthMpa;
  const statement = texts.strengthOfBlocks;
  if (strength === null) {
    const table = texts.untilThenValue;
    checks.push(
      missing('block-strength', statement, 'material.compressive-strength', texts.commonPracticeNoSource, {
        advice: texts.missingInputMaterialCompressive(table),
      }),
    );
  } else if (!(strength > 0)) {
    checks.push({
      id: 'block-strength',
      statement,
      state: 'fails',
      source: texts.description,
      advice: texts.giveMaterialCompressiveStrength,
    });
  }
  return checks;
}

function balanceCheck({ domes }: Statics): Check[] {
  const error = Math.max(0, ...domes.map((d) => Math.abs(d.weights.balance)));
  return [
    {
      id: 'load-balance',
      statement: texts.weightsThatThrustCarries,
      state: error <= WEIGHT_BALANCE ? 'ok' : 'fails',
      demand: computed(
        'load-balance.error',
        texts.relativeDifference,
        error,
        '1',
        texts.weightBalanceFormula,
        'derived',
        {
          'masonry of all domes (kN)': domes.reduce((sum, d) => sum + d.weights.masonry, 0),
          'render (kN)': domes.reduce((sum, d) => sum + d.weights.render, 0),
        },
      ),
      capacity: givenFigure('load-balance.limit', texts.greatestDifference, WEIGHT_BALANCE, '1', {
        formula: texts.constantOfThisProgram,
        source: texts.accuracyOfBothQuadratures,
      }),
      ratio: error / WEIGHT_BALANCE,
      source: texts.derived,
      advice: texts.nothingToChange,
    },
  ];
}

function siteChecks(setout: HouseSetout): Check[] {
  const { site } = setout.house;
  const checks: Check[] = [];
  const snow = site.combinations === 'EN 1990' ? 'EN 1991-1-3:2003' : 'ASCE 7-16, chapter 7';
  const wind = site.combinations === 'EN 1990' ? 'EN 1991-1-4:2005, 7.2.8' : 'ASCE 7-16, chapter 27';
  const quake = site.combinations === 'EN 1990' ? 'EN 1998-1:2004' : 'ASCE 7-16, chapter 12';
  if (site.snowKpa === null) checks.push(missing('snow', texts.checkedUnderSnow, 'site.snow', snow));
  if (site.windKpa === null) checks.push(missing('wind', texts.checkedUnderWind, 'site.wind', wind));
  const unknown = withoutWindCoefficients(setout);
  if (site.windKpa !== null && unknown.length > 0) {
    checks.push(
      missing('wind', texts.checkedUnderWind, 'site.wind-coefficients', wind, {
        advice: texts.missingInputSiteWind(unknown.join(', ')),
      }),
    );
  }
  if (site.seismicCoefficient === null) {
    checks.push(missing('earthquake', texts.checkedUnderEarthquake, 'site.seismic-coefficient', quake));
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
    statement: texts.blocksHaveShrunkBefore,
    state: 'attention',
    demand: computed(
      'shrinkage.round',
      texts.shorteningOfRing(widest.id),
      opening,
      'mm',
      texts.dryingShrinkageTimesCircumference,
      'derived',
      { 'shrinkage (1)': shrinkage, 'circumference (mm)': round },
    ),
    capacity: givenFigure('shrinkage.joint', texts.joint, house.blocks.joint, 'mm'),
    ratio: ratioOf(opening, house.blocks.joint),
    source: texts.commonPracticeNoSource,
    advice: texts.layNoBlockBefore,
  };
}
