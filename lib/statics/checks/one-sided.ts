import { type Check, type Figure, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import { THRUST_MISS } from '../../base/tolerances.js';
import { formatNumber } from '../../base/units.js';
import type { House } from '../../description/house.js';
import { evenSnow } from '../loads.js';
import { pullAsked } from '../one-sided-pull.js';
import type { DomeStatics } from '../results.js';
import type { Strength } from '../strength.js';
import type { Combined, OneSided } from '../unsymmetrical.js';
import {
  atBest,
  computed,
  factorCheck,
  factorState,
  isTied,
  ratioOf,
  SAFE_THEOREM,
  SOUND_FACTOR,
  steadierShape,
} from './judge.js';

const EARTHQUAKE = texts.equivalentHorizontalLoadCommon;
const SOURCES = {
  'EN 1990': {
    'drifted snow': texts.driftSource,
    wind: texts.windSource,
    earthquake: EARTHQUAKE,
  },
  'ASCE 7': {
    'drifted snow': texts.driftSourceAsce,
    wind: texts.windSourceAsce,
    earthquake: EARTHQUAKE,
  },
} as const;
const IDS = { 'drifted snow': 'drift', wind: 'wind', earthquake: 'earthquake' } as const;

/** Part of a load that is all of it, but for rounding. */
const ALL_OF_IT = 1 - THRUST_MISS;

/** A dome under each load from one side: by its geometric factor without load factors, and within all limits with them. */
export function oneSidedChecks(house: House, found: DomeStatics, strength: Strength | null): Check[] {
  return found.oneSided.flatMap((one) => [
    geometryCheck(house, found, one),
    ...combinedCheck(house, found, one, strength),
  ]);
}

function geometryCheck(house: House, found: DomeStatics, one: OneSided): Check {
  const check = factorCheck(
    {
      id: `${IDS[one.load]}.${found.id}`,
      statement: texts.domeStandsUnder(found.id, one.load),
      advice: texts.estimateThatLeavesOut(
        one.load === 'wind' && house.site.combinations === 'ASCE 7',
        one.factor < SOUND_FACTOR ? texts.toRaiseSentence(steadierShape(found)) : '',
      ),
    },
    one.factor,
    {
      kind: 'estimate',
      load: texts.deadLoadAnd(one.load),
      ...loadInputs(house.site, one),
      ...(one.capacity === null ? {} : { 'part of its weight that may push it (1)': one.capacity }),
    },
    atBest(factorState(one.factor)),
  );
  return { ...check, source: `${check.source}; ${SOURCES[house.site.combinations][one.load]}` };
}

/** By what a load from one side can be worked out again. */
function loadInputs(site: House['site'], { load, peakKpa, coefficients }: OneSided): Figure['inputs'] {
  return {
    ...(peakKpa === null ? {} : { 'greatest snow on the plan (kPa)': peakKpa }),
    ...(coefficients === null
      ? {}
      : {
          'wind pressure (kPa)': site.windKpa ?? 0,
          'its coefficients, windward springing, crown line, leeward springing (1)': coefficients.join(', '),
        }),
    ...(load === 'earthquake' ? { 'seismic coefficient (1)': site.seismicCoefficient ?? 0 } : {}),
  };
}

/** Under each combination with load factors one line of thrust must keep within all limits at once. */
function combinedCheck(
  { site, material }: House,
  found: DomeStatics,
  one: OneSided,
  strength: Strength | null,
): Check[] {
  const { combined, load } = one;
  const worst = combined.reduce<Combined | null>(
    (least, next) => (least === null || (next.borne ?? -1) < (least.borne ?? -1) ? next : least),
    null,
  );
  if (!worst) return [];
  const id = `${IDS[load]}-combined.${found.id}`;
  const sources = [...new Set(combined.map(({ source }) => source))].join('; ');
  const borne = worst.borne ?? 0;
  const bears = borne >= ALL_OF_IT;
  const tied = isTied(found);
  const source = texts.oneLineSource(SAFE_THEOREM);
  const left = [
    ...(load === 'earthquake' && site.seismicVertical === null ? [texts.uprightPartLeftOut] : []),
    ...(strength ? [] : [texts.strengthNotKnown]),
    ...(strength?.from === 'table' ? [` ${texts.strengthIsTableValue}`] : []),
  ].join('');
  return [
    {
      id,
      statement: texts.oneLineKeepsWithin(found.id, load, strength !== null, tied),
      state: bears ? 'attention' : 'fails',
      demand: givenFigure(`${id}.wanted`, texts.partAsked, 1, '1', { formula: texts.partAskedFormula, source }),
      capacity: computed(`${id}.borne`, texts.partBorne, borne, '1', texts.partBorneFormula, `${source}; ${sources}`, {
        kind: 'estimate',
        'worst combination': worst.formula,
        ...loadInputs(site, one),
        ...(load === 'earthquake' && site.seismicVertical
          ? { 'its upright part, Ev over the dead load (1)': site.seismicVertical }
          : {}),
        ...(worst.snow > 0 ? { 'even snow on the plan (kPa)': evenSnow(site).kpa } : {}),
        ...(worst.heldBy.length > 0 ? { 'held by': worst.heldBy.map((by) => texts.heldBy[by]).join(', ') } : {}),
        ...(strength ? { 'design strength (MPa)': strength.designMpa } : {}),
        'friction of the joints (1)': material.friction,
        ...(one.ringZ.length > 0
          ? { 'rings that may press, height (m)': one.ringZ.map((z) => formatNumber(z / 1000)).join(', ') }
          : {}),
        ...(tied ? { 'pull of the tie, at most (kN)': found.tie?.strength ?? 0 } : {}),
        ...(worst.pull === null ? {} : { 'least pull of a tie (kN)': pullAsked(worst.pull) }),
      }),
      ...(worst.borne === null ? {} : { ratio: ratioOf(1, borne) }),
      source: `${sources}; ${SOURCES[site.combinations][load]}`,
      advice: texts.onOneLine(
        load === 'wind' && site.combinations === 'ASCE 7',
        `${left}${bears ? '' : texts.toBearMore(worst.borne === null, steadierShape(found), worst.heldBy.includes('tie'))}`,
      ),
    },
  ];
}
