import { type Check, givenFigure } from '../../base/figures.js';
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
        statement: `The arch ring of ${of} ${id} keeps its thrust inside under the wall and dome above it.`,
        advice: arch.factor < 2 ? 'A thicker ring, or a higher rise of the head.' : '',
      },
      arch.factor,
      {
        'load of half the arch (kN)': arch.weight,
        'least thrust (kN)': arch.least ?? 'none fits',
        'greatest thrust (kN)': arch.greatest ?? 'not limited, or none fits',
        load: `all that comes down the wall over its whole width, dead and snow${of === 'niche' ? ', on the depth of the niche alone' : ''}`,
      },
    ),
  ];
}

function freeCheck({ id, free }: HeadStatics): Check[] {
  if (!free) return [];
  const check = factorCheck(
    {
      id: `passage-walls.${id}`,
      statement: `Between its domes the vault of passage ${id} stands on its own walls.`,
      advice:
        'An estimate that leaves out the domes at both ends, which hold short walls: an engineer must confirm it. Thicker walls (`ring`) or a steeper head raise it.',
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
      statement: `The flat head of ${of} ${id} is a reinforced lintel.`,
      state: 'attention',
      demand:
        area === null
          ? givenFigure(`${name}.moment`, 'bending moment', moment, 'kN m', { formula: 'w L² / 8', source: 'statics' })
          : computed(
              `${name}.steel`,
              'steel area in its lower face',
              area,
              'mm2',
              `M / (0.9 d f), M = w L² / 8, f = 500 MPa / 1.15; ${designFormula(combinations)}`,
              `EN 1992-1-1:2004 (from memory); ${combinationSource(combinations)}`,
              { 'moment M (kN m)': moment, 'span L (mm)': bending.span, 'depth d (mm)': deep },
            ),
      source: 'statics of a beam on two supports',
      advice: 'Cast it of reinforced concrete, not of block mix; an engineer must design bars, links and bearings.',
    },
  ];
}
