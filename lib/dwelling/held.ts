import { type Check, type CheckState, type Figure, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/opening-checks.js';

/** What a dwelling rule is held against; figures are lengths in mm or areas in m2. */
export interface Held {
  readonly id: string;
  readonly statement: string;
  readonly source: string;
  readonly unit: 'mm' | 'm2';
  readonly wanted: readonly [label: string, value: number];
  readonly found: readonly [label: string, value: number];
  readonly formula: string;
  readonly inputs?: Figure['inputs'];
  /** What is asked for is the most, not the least. */
  readonly most?: boolean;
  /** State where it isn't kept. */
  readonly otherwise: CheckState;
  /** Greatest state where it is. */
  readonly best?: CheckState;
  readonly advice: string;
}

const LIMIT = texts.informationCodeInForce;

/** A rule as a check: never a promise, the code in force governs. */
export function held(rule: Held): Check {
  const [asked, has] = [rule.wanted[1], rule.found[1]];
  const kept = rule.most ? has <= asked : has >= asked;
  const [demand, capacity] = rule.most ? [has, asked] : [asked, has];
  const wanted = givenFigure(`${rule.id}.wanted`, rule.wanted[0], asked, rule.unit, {
    formula: texts.constantOfCode,
    source: rule.source,
    limit: LIMIT,
  });
  const found = givenFigure(`${rule.id}.found`, rule.found[0], has, rule.unit, {
    formula: rule.formula,
    source: texts.derived,
    inputs: rule.inputs ?? {},
  });
  return {
    id: rule.id,
    statement: rule.statement,
    state: kept ? (rule.best ?? 'ok') : rule.otherwise,
    demand: rule.most ? found : wanted,
    capacity: rule.most ? wanted : found,
    ratio: capacity > 0 ? Math.min(Number.MAX_VALUE, demand / capacity) : demand > 0 ? Number.MAX_VALUE : 0,
    source: rule.source,
    advice: kept && (rule.best ?? 'ok') === 'ok' ? '' : rule.advice,
  };
}
