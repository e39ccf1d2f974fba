import * as texts from '../base/texts/statics.js';
import type { Site } from '../description/house.js';

/** Loads that push a dome from one side. */
export type OneSidedLoad = 'drifted snow' | 'wind' | 'earthquake';

/** Dead load, even snow and a load from one side, each times its factor. Drifted snow takes the place of even snow. */
export interface Combination {
  /** As the standard writes it. */
  readonly formula: string;
  /** Clause and where its numbers were read. */
  readonly source: string;
  readonly dead: number;
  readonly snow: number;
  readonly load: number;
}

type Standard = Site['combinations'];

/**
 * Factors of EN 1990, Tables A1.1 and A1.2: G 1.35 or, where it helps, 1.0 (0.9 for loss of balance), Q 1.5; of a load
 * that goes with another, psi0 0.6 for wind and 0.7 for snow, and with an earthquake psi2 0.2 for snow. Those of snow
 * are for sites over 1000 m and the north of Europe; lower down they are less, and lie between these and none: loads
 * between two under which a thrust fits have one too. ASCE 7-16: wind and earthquake are at strength level, 1.0.
 */
const ALL: Readonly<Record<Standard, Readonly<Record<OneSidedLoad, readonly Combination[]>>>> = {
  'EN 1990': {
    'drifted snow': [
      { formula: '1.35 G + 1.5 S', source: texts.enStrengthSource, dead: 1.35, snow: 0, load: 1.5 },
      { formula: '1.0 G + 1.5 S', source: texts.enStrengthSource, dead: 1, snow: 0, load: 1.5 },
      { formula: '0.9 G + 1.5 S', source: texts.enBalanceSource, dead: 0.9, snow: 0, load: 1.5 },
    ],
    wind: [
      { formula: '1.35 G + 1.5 W', source: texts.enStrengthSource, dead: 1.35, snow: 0, load: 1.5 },
      { formula: '1.35 G + 1.5 W + 1.5 · 0.7 S', source: texts.enStrengthSource, dead: 1.35, snow: 1.05, load: 1.5 },
      { formula: '1.35 G + 1.5 S + 1.5 · 0.6 W', source: texts.enStrengthSource, dead: 1.35, snow: 1.5, load: 0.9 },
      { formula: '1.0 G + 1.5 W', source: texts.enStrengthSource, dead: 1, snow: 0, load: 1.5 },
      { formula: '1.0 G + 1.5 W + 1.5 · 0.7 S', source: texts.enStrengthSource, dead: 1, snow: 1.05, load: 1.5 },
      { formula: '1.0 G + 1.5 S + 1.5 · 0.6 W', source: texts.enStrengthSource, dead: 1, snow: 1.5, load: 0.9 },
      { formula: '0.9 G + 1.5 W', source: texts.enBalanceSource, dead: 0.9, snow: 0, load: 1.5 },
      { formula: '0.9 G + 1.5 W + 1.5 · 0.7 S', source: texts.enBalanceSource, dead: 0.9, snow: 1.05, load: 1.5 },
      { formula: '0.9 G + 1.5 S + 1.5 · 0.6 W', source: texts.enBalanceSource, dead: 0.9, snow: 1.5, load: 0.9 },
    ],
    earthquake: [
      { formula: 'G + E', source: texts.enSeismicSource, dead: 1, snow: 0, load: 1 },
      { formula: 'G + E + 0.2 S', source: texts.enSeismicSource, dead: 1, snow: 0.2, load: 1 },
    ],
  },
  'ASCE 7': {
    'drifted snow': [{ formula: '1.2 D + 1.6 S', source: texts.asceCombinationSource, dead: 1.2, snow: 0, load: 1.6 }],
    wind: [
      { formula: '1.2 D + 1.0 W', source: texts.asceCombinationSource, dead: 1.2, snow: 0, load: 1 },
      { formula: '1.2 D + 1.0 W + 0.5 S', source: texts.asceCombinationSource, dead: 1.2, snow: 0.5, load: 1 },
      { formula: '1.2 D + 1.6 S + 0.5 W', source: texts.asceCombinationSource, dead: 1.2, snow: 1.6, load: 0.5 },
      { formula: '0.9 D + 1.0 W', source: texts.asceCombinationSource, dead: 0.9, snow: 0, load: 1 },
    ],
    earthquake: [
      { formula: '1.2 D + Eh', source: texts.asceSeismicSource, dead: 1.2, snow: 0, load: 1 },
      { formula: '1.2 D + Eh + 0.2 S', source: texts.asceSeismicSource, dead: 1.2, snow: 0.2, load: 1 },
      { formula: '0.9 D + Eh', source: texts.asceSeismicSource, dead: 0.9, snow: 0, load: 1 },
    ],
  },
};

const UPRIGHT_SOURCES = { 'EN 1990': texts.enUprightSource, 'ASCE 7': texts.asceUprightSource } as const;

/**
 * Combinations with load factors that hold a load from one side; those with snow only where there is snow.
 *
 * @param upright part of the dead load by which an earthquake lifts or presses: by ASCE 7-16, 2.3.6, it presses where
 *   dead load harms and lifts where it helps; by EN 1998-1, 4.3.3.5.2, both.
 */
export function combinationsWith(
  standard: Standard,
  load: OneSidedLoad,
  snow: boolean,
  upright = 0,
): readonly Combination[] {
  const all = ALL[standard][load].filter((one) => snow || one.snow === 0);
  if (load !== 'earthquake' || upright === 0) return all;
  const source = UPRIGHT_SOURCES[standard];
  return all.flatMap((one) => {
    const signs = standard === 'EN 1990' ? [1, -1] : [one.dead < 1 ? -1 : 1];
    return signs.map((sign) => ({
      ...one,
      formula: texts.withUpright(one.formula, sign > 0),
      source: `${one.source}; ${source}`,
      dead: one.dead + sign * upright,
    }));
  });
}
