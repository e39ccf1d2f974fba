import { type Check, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-footing.js';
import type { HouseSetout } from '../../setout/house.js';
import { combinationSource, designEffect, designFormula } from '../loads.js';
import type { HeadStatics, Statics } from '../results.js';
import { steelArea } from '../tie.js';
import { computed, factorCheck } from './judge.js';

/** From the concrete's face to the middle of a bar, mm; common practice, no source. */
const COVER = 40;
const USUAL_YIELD = 500;

/** Checks of the heads of openings and passages. */
export const headChecks = (setout: HouseSetout, { heads }: Statics): Check[] =>
  heads.flatMap((head) => [...ringCheck(head), ...freeCheck(head), ...lintelCheck(setout, head)]);

function ringCheck({ id, of, arch }: HeadStatics): Check[] {
  if (!arch) return [];
  const name = of === 'passage' ? `vault.${id}` : `arch.${id}`;
  return [
    factorCheck(
      {
        id: name,
        statement: texts.archRingOfKeeps(of, id),
        advice: arch.factor < 2 ? texts.thickerRingOrHigher : '',
      },
      arch.factor,
      {
        'load of half the arch (kN)': arch.weight,
        'least thrust (kN)': arch.least ?? texts.noneFits,
        'greatest thrust (kN)': arch.greatest ?? texts.notLimitedOrNone,
        load: texts.allThatComesDown(of),
      },
    ),
  ];
}

function freeCheck({ id, free }: HeadStatics): Check[] {
  if (!free) return [];
  const check = factorCheck(
    {
      id: `passage-walls.${id}`,
      statement: texts.betweenItsDomesVault(id),
      advice: texts.estimateThatLeavesOut,
    },
    free.factor,
    { kind: 'estimate', 'load of half the vault (kN)': free.weight },
  );
  // The domes at its ends hold a short passage, which this leaves out: too low a factor proves nothing.
  return [{ ...check, state: check.state === 'ok' ? 'ok' : 'attention' }];
}

function lintelCheck(setout: HouseSetout, head: HeadStatics): Check[] {
  const { bending, id, of } = head;
  if (!bending) return [];
  const { combinations } = setout.house.site;
  const ring =
    of === 'passage' ? setout.passages.find((p) => p.id === id)?.ring : setout.arches.find((a) => a.id === id)?.ring;
  const deep = (ring ?? 0) - COVER;
  const moment = designEffect(combinations, bending.dead, bending.snow);
  const name = `lintel.${id}`;
  const area = deep > 0 ? steelArea((moment * 1000) / (0.9 * deep), USUAL_YIELD) : null;
  return [
    {
      id: name,
      statement: texts.flatHead(of, id),
      state: 'attention',
      demand:
        area === null
          ? givenFigure(`${name}.moment`, texts.bendingMoment, moment, 'kN m', {
              formula: 'w L² / 8',
              source: texts.statics,
            })
          : computed(
              `${name}.steel`,
              texts.steelArea,
              area,
              'mm2',
              `M / (0.9 d f), M = w L² / 8, f = 500 MPa / 1.15; ${designFormula(combinations)}`,
              texts.reinforcedFootingSource(combinationSource(combinations)),
              { 'moment M (kN m)': moment, 'span L (mm)': bending.span, 'depth d (mm)': deep },
            ),
      source: texts.staticsOfBeam,
      advice: texts.castItOfReinforced,
    },
  ];
}
