import { type Check, givenFigure } from '../../base/figures.js';
import type { House } from '../../description/house.js';
import type { DomeStatics } from '../results.js';
import type { OneSided } from '../unsymmetrical.js';
import { atBest, computed, factorCheck, factorState, GOOD_SHAPE, ratioOf, SAFE_THEOREM } from './judge.js';

const EARTHQUAKE = 'equivalent horizontal load, common practice';
const SOURCES = {
  'EN 1990': {
    'drifted snow': 'EN 1991-1-3:2003, 5.3.5 case (ii), written for cylinders (from memory)',
    wind: 'EN 1991-1-4:2005, 7.2.8 (from memory)',
    earthquake: EARTHQUAKE,
  },
  'ASCE 7': {
    'drifted snow': 'ASCE 7-16, 7.6.4 and Figure 7.4-2: downwind sector alone (from memory)',
    wind: 'ASCE 7-16, Figure 27.3-2, case A (from memory)',
    earthquake: EARTHQUAKE,
  },
} as const;
const IDS = { 'drifted snow': 'drift', wind: 'wind', earthquake: 'earthquake' } as const;

const ESTIMATE = 'An estimate that leaves out what the rings carry: an engineer must confirm it.';
const CASE_B = ' Case B of the figure is left out: an engineer must look at it too.';

/** A dome under each load from one side: by its geometric factor without load factors, and with them. */
export function oneSidedChecks(house: House, found: DomeStatics): Check[] {
  return found.oneSided.flatMap((one) => [geometryCheck(house, found, one), ...combinedCheck(house, found, one)]);
}

/** What the advice on a load from one side begins with. */
const warning = ({ site }: House, { load }: OneSided): string =>
  `${ESTIMATE}${load === 'wind' && site.combinations === 'ASCE 7' ? CASE_B : ''}`;

function geometryCheck(house: House, found: DomeStatics, one: OneSided): Check {
  const check = factorCheck(
    {
      id: `${IDS[one.load]}.${found.id}`,
      statement: `Dome ${found.id} stands under ${one.load} from one side, as an opposite pair of lunes.`,
      advice: `${warning(house, one)}${one.factor < 2 ? ` To raise it: ${GOOD_SHAPE}.` : ''}`,
    },
    one.factor,
    {
      kind: 'estimate',
      load: `dead load and ${one.load}`,
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
  const vertical = load === 'earthquake' ? ' An upright part of the earthquake is left out.' : '';
  return [
    {
      id,
      statement: `Dome ${found.id} stands under ${load} from one side in each combination with load factors, as an opposite pair of lunes.`,
      state: worst.factor >= 1 ? 'attention' : 'fails',
      demand: givenFigure(`${id}.wanted`, 'geometric factor asked for under factored loads', 1, '1', {
        formula: 'a constant: the thrust of the factored loads stays in the wall',
        source: SAFE_THEOREM,
      }),
      capacity: computed(
        `${id}.least`,
        'least geometric factor under factored loads',
        worst.factor,
        '1',
        'thickness over the thickness that a thrust in equilibrium with the factored loads needs to fit, the least of all combinations',
        `${SAFE_THEOREM}; ${sources}`,
        {
          kind: 'estimate',
          'worst combination': worst.formula,
          ...Object.fromEntries(combined.map(({ formula, factor }) => [`factor under ${formula} (1)`, factor])),
        },
      ),
      ratio: ratioOf(1, worst.factor),
      source: `${sources}; ${SOURCES[house.site.combinations][load]}`,
      advice: `${warning(house, one)}${vertical}${worst.factor < 1 ? ` To raise it: ${GOOD_SHAPE}.` : ''}`,
    },
  ];
}
