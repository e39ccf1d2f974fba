import type { Check } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import { pullAsked } from '../one-sided-pull.js';
import type { DomeStatics } from '../results.js';
import { barArea, type PlacedTie, steelArea, steelStrength } from '../tie.js';
import type { Combined } from '../unsymmetrical.js';
import { computed, ratioOf, SAFE_THEOREM } from './judge.js';

/** The combination of loads from one side that asks most of a ring tie, kN. */
export interface HardestPull {
  readonly kn: number;
  readonly under: Combined;
}

/** `null` without loads from one side, or where no line of thrust keeps within the other limits under any. */
export function hardestPull({ oneSided }: DomeStatics): HardestPull | null {
  return oneSided
    .flatMap(({ combined }) => combined)
    .reduce<HardestPull | null>((most, under) => {
      if (under.pull === null) return most;
      const kn = pullAsked(under.pull);
      return most === null || kn > most.kn ? { kn, under } : most;
    }, null);
}

/**
 * The steel of a closed tie under loads from one side: what it must hold against what it holds when it yields, with
 * partial factors on both. An estimate, as all on a pair of lunes, and therefore at best `attention`.
 */
export function oneSidedTieCheck(found: DomeStatics, placed: PlacedTie, units: LengthUnit): Check[] {
  const { bars, diameter, yieldMpa } = placed.tie;
  const combined = found.oneSided.flatMap((one) => one.combined);
  if (combined.length === 0) return [];
  const id = `tie-one-sided.${found.id}`;
  const most = hardestPull(found);
  const strength = (barArea(bars, diameter) * steelStrength(yieldMpa)) / 1000;
  const capacity = computed(
    `${id}.strength`,
    texts.tieStrength,
    strength,
    'kN',
    texts.tieStrengthFormula,
    texts.steelSource,
    {
      bars,
      'diameter (mm)': diameter,
      'yield strength (MPa)': yieldMpa,
    },
  );
  const [without, ...others] = combined.filter(({ pull }) => pull === null);
  const missed = without ? texts.noLineUnder(without.formula, others.length) : '';
  const base = { id, statement: texts.tieHoldsOneSided(found.id), capacity, source: SAFE_THEOREM };
  if (!most) return [{ ...base, state: 'attention', advice: `${texts.pullIsEstimate}${missed}` }];
  const { kn, under } = most;
  const over = kn > strength;
  const needed = barsFor(steelArea(kn, yieldMpa), diameter);
  return [
    {
      ...base,
      state: over ? 'fails' : 'attention',
      demand: computed(
        `${id}.pull`,
        texts.pullOneSided,
        kn,
        'kN',
        texts.pullOneSidedFormula,
        `${SAFE_THEOREM}; ${under.source}`,
        {
          kind: 'estimate',
          'worst under': under.formula,
          'thrust that it holds (kN)': under.pull?.holds ?? 0,
          'least pull with which a thrust fits (kN)': under.pull?.fits ?? 0,
          'height above the floor (m)': placed.z / 1000,
          'steel area needed (mm2)': steelArea(kn, yieldMpa),
        },
      ),
      // What no line bears has no ratio: that of the others alone would look like the answer.
      ...(over || !without ? { ratio: ratioOf(kn, strength) } : {}),
      advice: `${texts.pullIsEstimate}${over ? ` ${texts.takeAtLeastBars(needed, formatLength(diameter, units))}` : ''}${missed}`,
    },
  ];
}

/** Number of round bars that have so much area, mm2. */
export const barsFor = (area: number, diameter: number): number => Math.max(1, Math.ceil(area / barArea(1, diameter)));
