import { type Check, type CheckState, type Figure, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import type { DomeStatics } from '../results.js';

/** Geometric factors from which a shape counts as sound, and below which it fails: common practice after Heyman. */
export const SOUND_FACTOR = 2;
const LEAST_FACTOR = 1;

export const factorState = (factor: number): CheckState =>
  factor >= SOUND_FACTOR ? 'ok' : factor >= LEAST_FACTOR ? 'attention' : 'fails';

/** An estimate is never `ok`. */
export const atBest = (state: CheckState): CheckState => (state === 'ok' ? 'attention' : state);

/** Demand over capacity, finite. */
export const ratioOf = (demand: number, capacity: number): number =>
  capacity > 0 ? Math.min(Number.MAX_VALUE, demand / capacity) : demand > 0 ? Number.MAX_VALUE : 0;

/** A figure that was computed. */
export const computed = (
  id: string,
  label: string,
  value: number,
  unit: string,
  formula: string,
  source: string,
  inputs: Figure['inputs'] = {},
): Figure => givenFigure(id, label, value, unit, { formula, source, inputs });

/** A check that can't be made for want of an input. */
export const missing = (
  id: string,
  statement: string,
  input: string,
  source: string,
  more: Partial<Check> = {},
): Check => ({
  id,
  statement,
  state: 'attention',
  source,
  advice: texts.missingInputNamed(input),
  ...more,
});

/** Advice where a figure hangs on a line of thrust, and there is none. */
export const NO_THRUST = texts.noThrustFitsSoNothing;

/** Whether a closed hoop of steel holds it. */
export const isTied = ({ tie }: DomeStatics): boolean => tie !== null && tie.strength > 0;

const hasStem = ({ springingZ }: DomeStatics): boolean => springingZ > 0;

/** What raises a dome's geometric factor. */
export const goodShape = (found: DomeStatics): string =>
  texts.anyOf({ stemWall: hasStem(found), rise: true, tie: !isTied(found) });

/** What raises it under loads from one side: not the rise, since snow drifts and wind blows harder on a high dome. */
export const steadierShape = (found: DomeStatics): string =>
  texts.anyOf({ stemWall: hasStem(found), rise: false, tie: !isTied(found) });

export const SAFE_THEOREM = texts.safeTheoremSource;
const FACTOR_FORMULA = texts.factorFormula;

/** A geometric factor against the one asked for. */
export function factorCheck(
  base: Pick<Check, 'id' | 'statement' | 'advice'>,
  factor: number,
  inputs: Figure['inputs'],
  state = factorState(factor),
): Check {
  return {
    ...base,
    state,
    demand: givenFigure(`${base.id}.wanted`, texts.geometricFactorAsked, SOUND_FACTOR, '1', {
      formula: texts.soundFactorFormula,
      source: texts.soundFactorSource,
    }),
    capacity: computed(`${base.id}.factor`, texts.geometricFactor, factor, '1', FACTOR_FORMULA, SAFE_THEOREM, inputs),
    ratio: ratioOf(SOUND_FACTOR, factor),
    source: SAFE_THEOREM,
  };
}
