import { type Check, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import type { House } from '../../description/house.js';
import type { DomeStatics } from '../results.js';
import type { OneSided } from '../unsymmetrical.js';
import {
  atBest,
  computed,
  factorCheck,
  factorState,
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

/** A dome under each load from one side: by its geometric factor without load factors, and with them. */
export function oneSidedChecks(house: House, found: DomeStatics): Check[] {
  return found.oneSided.flatMap((one) => [geometryCheck(house, found, one), ...combinedCheck(house, found, one)]);
}

/** Advice on a load from one side; `raise` says whether a higher factor is wanted, `more` what else is left out. */
const adviceOn = ({ site }: House, found: DomeStatics, { load }: OneSided, raise: boolean, more = ''): string =>
  texts.estimateThatLeavesOut(
    load === 'wind' && site.combinations === 'ASCE 7',
    `${more}${raise ? texts.toRaiseSentence(steadierShape(found)) : ''}`,
  );

function geometryCheck(house: House, found: DomeStatics, one: OneSided): Check {
  const check = factorCheck(
    {
      id: `${IDS[one.load]}.${found.id}`,
      statement: texts.domeStandsUnder(found.id, one.load),
      advice: adviceOn(house, found, one, one.factor < SOUND_FACTOR),
    },
    one.factor,
    {
      kind: 'estimate',
      load: texts.deadLoadAnd(one.load),
      ...(one.peakKpa === null ? {} : { 'greatest snow on the plan (kPa)': one.peakKpa }),
      ...(one.capacity === null ? {} : { 'part of its weight that may push it (1)': one.capacity }),
    },
    atBest(factorState(one.factor)),
  );
  return { ...check, source: `${check.source}; ${SOURCES[house.site.combinations][one.load]}` };
}

/** With load factors the thrust need only fit: a factor of 1 is asked for. */
function combinedCheck(house: House, found: DomeStatics, one: OneSided): Check[] {
  const { combined, load } = one;
  const worst = combined.reduce<(typeof combined)[number] | null>(
    (least, next) => (least === null || next.factor < least.factor ? next : least),
    null,
  );
  if (!worst) return [];
  const id = `${IDS[load]}-combined.${found.id}`;
  const sources = [...new Set(combined.map(({ source }) => source))].join('; ');
  const upright = load === 'earthquake' ? texts.uprightPartLeftOut : '';
  return [
    {
      id,
      statement: texts.domeStandsUnderFactored(found.id, load),
      state: worst.factor >= 1 ? 'attention' : 'fails',
      demand: givenFigure(`${id}.wanted`, texts.factorAskedFactored, 1, '1', {
        formula: texts.factoredFormula,
        source: SAFE_THEOREM,
      }),
      capacity: computed(
        `${id}.least`,
        texts.leastFactorFactored,
        worst.factor,
        '1',
        texts.leastFactorFormula,
        `${SAFE_THEOREM}; ${sources}`,
        {
          kind: 'estimate',
          'worst combination': worst.formula,
          ...Object.fromEntries(combined.map(({ formula, factor }) => [texts.factorUnder(formula), factor])),
        },
      ),
      ratio: ratioOf(1, worst.factor),
      source: `${sources}; ${SOURCES[house.site.combinations][load]}`,
      advice: adviceOn(house, found, one, worst.factor < 1, upright),
    },
  ];
}
