import * as texts from './texts/quantities.js';

/** A number that leaves the program, with all that is needed to trace it. */
export interface Figure {
  readonly id: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  /** The formula in words or symbols of the trade. */
  readonly formula: string;
  /** Published source, `derived`, or `common practice, no source`. */
  readonly source: string;
  /** Named inputs with their units, e.g. `{ 'radius (mm)': 3000 }`. */
  readonly inputs: Readonly<Record<string, number | string>>;
  /** Where the formula stops being valid, in words. */
  readonly limit?: string;
}

/** A figure of the description itself, unless `more` tells how it was made. */
export const givenFigure = (
  id: string,
  label: string,
  value: number,
  unit: string,
  more: Partial<Figure> = {},
): Figure => ({ id, label, value, unit, formula: texts.asGiven, source: texts.theDescription, inputs: {}, ...more });

/** `ok`; `attention`: an estimate, a missing input or a matter to look at; `fails`. */
export type CheckState = 'ok' | 'attention' | 'fails';

/** A figure held against a limit. A check that lacks an input is `attention` and names the input. */
export interface Check {
  readonly id: string;
  readonly statement: string;
  readonly state: CheckState;
  readonly demand?: Figure;
  readonly capacity?: Figure;
  /** Demand over capacity; at most 1 is good. */
  readonly ratio?: number;
  readonly source: string;
  /** What to change when the state isn't `ok`; the missing input when one lacks. */
  readonly advice: string;
}
