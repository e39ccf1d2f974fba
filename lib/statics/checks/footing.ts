import { type Check, type Figure, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-footing.js';
import { formatLength, type LengthUnit } from '../../base/units.js';
import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import { combinationSource, designEffect, weightOf } from '../loads.js';
import type { DomeStatics, FootingForces } from '../results.js';
import { steelArea } from '../tie.js';
import { computed, missing, NO_THRUST, ratioOf } from './judge.js';

const BEARING = texts.resultantInMiddle;
/** From the concrete's face to the middle of a bar in the ground, mm; common practice, no source. */
const COVER = 75;
const USUAL_YIELD = 500;
/** No strip footing of a house is wider, mm; common practice, no source. */
const MOST_WIDTH = 5000;

/** Checks of the footing under one dome. */
export function footingChecks(setout: HouseSetout, dome: DomeSetout, { footing }: DomeStatics): Check[] {
  if (!footing) return [];
  return [
    bearingCheck(setout, dome, footing),
    ...jambCheck(setout, dome, footing),
    ...slidingCheck(setout, dome, footing),
  ];
}

function bearingCheck(setout: HouseSetout, dome: DomeSetout, footing: FootingForces): Check {
  const width = setout.house.footing?.width ?? 0;
  const id = `bearing.${dome.id}`;
  const statement = texts.soilBearsFooting(dome.id);
  if (footing.pressureKpa === null || footing.eccentricity === null) {
    return {
      id,
      statement,
      state: 'attention',
      source: BEARING,
      advice: NO_THRUST,
    };
  }
  const demand = computed(
    `${id}.pressure`,
    texts.pressureOnSoil,
    footing.pressureKpa,
    'kPa',
    texts.soilPressureFormula,
    BEARING,
    {
      'line load (kN/m)': footing.lineLoad,
      'gathered by piers (times)': footing.gathering,
      'width (mm)': width,
      'eccentricity (mm)': footing.eccentricity,
    },
  );
  return borne(
    setout,
    { id, statement, source: BEARING, demand },
    footing.lineLoad,
    footing.gathering,
    footing.eccentricity,
  );
}

/** The soil under the jambs, where what comes on openings comes down. */
function jambCheck(setout: HouseSetout, dome: DomeSetout, footing: FootingForces): Check[] {
  const { jamb, jambKpa, lineLoad, eccentricity } = footing;
  // Where no thrust fits, the check of the whole ring says so.
  if (jamb === null || jambKpa === null || eccentricity === null) return [];
  const id = `jamb-bearing.${dome.id}`;
  const statement = texts.soilBearsJambs(dome.id, jamb.of.join(', '));
  const source = texts.jambSource(BEARING);
  const demand = computed(`${id}.pressure`, texts.pressureUnderJamb, jambKpa, 'kPa', texts.jambFormula, source, {
    'line load (kN/m)': lineLoad,
    'half of the openings beside it (mm)': jamb.gathered,
    'length that bears it (mm)': jamb.length,
    'gathered by jambs (times)': jamb.times,
    'width (mm)': setout.house.footing?.width ?? 0,
    'eccentricity (mm)': eccentricity,
  });
  return [borne(setout, { id, statement, source, demand }, lineLoad, jamb.times, eccentricity)];
}

/** A pressure against what the soil may bear; `lineLoad` in kN/m presses so many times, off the middle by `eccentricity`, mm. */
function borne(
  setout: HouseSetout,
  base: Pick<Check, 'id' | 'statement' | 'source'> & { readonly demand: Figure },
  lineLoad: number,
  times: number,
  eccentricity: number,
): Check {
  const { id, statement, source, demand } = base;
  const { site, units } = setout.house;
  const capacity = site.bearingCapacityKpa;
  if (capacity === null) return missing(id, statement, 'site.bearing-capacity', source, { demand });
  return {
    ...base,
    state: demand.value <= capacity ? 'ok' : 'fails',
    capacity: givenFigure(`${id}.capacity`, texts.bearingCapacity, capacity, 'kPa'),
    ratio: ratioOf(demand.value, capacity),
    advice: widthAdvice(widthNeeded(setout, lineLoad, times, capacity, eccentricity), units),
  };
}

function widthAdvice(needed: number | null, units: LengthUnit): string {
  if (needed === null) return texts.noFootingWidth;
  if (needed > MOST_WIDTH) return texts.noSensibleFootingWidth(formatLength(MOST_WIDTH, units));
  return texts.makeFootingWidth(formatLength(Math.ceil(needed / 10) * 10, units));
}

/** Width of the footing that the soil bears, mm, its own weight with it; `null` where that alone is too much. */
function widthNeeded(
  { house: { footing, material } }: HouseSetout,
  lineLoad: number,
  times: number,
  capacity: number,
  eccentricity: number,
): number | null {
  const { width, depth } = footing ?? { width: 0, depth: 0 };
  // kPa under any width of it.
  const own = weightOf(material.concreteDensity) * depth * 1e6;
  if (times * own >= capacity) return null;
  const others = lineLoad * 1000 - own * width;
  return (times * others + 2 * Math.abs(eccentricity) * capacity) / (capacity - times * own);
}

function slidingCheck(setout: HouseSetout, dome: DomeSetout, { thrust, lineLoad }: FootingForces): Check[] {
  const { soilFriction } = setout.house.site;
  const id = `footing-sliding.${dome.id}`;
  const statement = texts.footingDoesNotSlide(dome.id);
  const source = texts.staticsClosedRingFooting;
  if (thrust === null) return [{ id, statement, state: 'attention', source, advice: NO_THRUST }];
  const demand = computed(
    `${id}.needed`,
    texts.frictionNeeded,
    thrust / lineLoad,
    '1',
    texts.slidingFormula,
    'derived',
    {
      'thrust (kN/m)': thrust,
      'load (kN/m)': lineLoad,
    },
  );
  if (thrust === 0) return [];
  if (soilFriction === null) return [missing(id, statement, 'site.soil-friction', source, { demand })];
  return [
    {
      id,
      statement,
      state: demand.value <= soilFriction ? 'ok' : 'fails',
      demand,
      capacity: givenFigure(`${id}.friction`, texts.frictionOnSoil, soilFriction, '1'),
      ratio: ratioOf(demand.value, soilFriction),
      source,
      advice: texts.closedRingTie,
    },
  ];
}

/** Checks of the footing's own concrete, once for all domes. */
export function footingConcreteChecks(setout: HouseSetout, domes: readonly DomeStatics[]): Check[] {
  const { footing } = setout.house;
  const projection = setout.footings[0]?.projection ?? 0;
  if (!footing) return [];
  return [projectionCheck(footing.depth, projection), ...steelCheck(setout, domes, footing.depth)];
}

function projectionCheck(depth: number, projection: number): Check {
  const id = 'footing-projection';
  const source = texts.plainFootingSource;
  return {
    id,
    statement: texts.footingIsDeepEnough,
    state: depth >= 2 * projection ? 'ok' : 'attention',
    demand: computed(`${id}.needed`, texts.depthNeeded, 2 * projection, 'mm', texts.twiceProjection, source, {
      'projection (mm)': projection,
    }),
    capacity: givenFigure(`${id}.depth`, texts.depth, depth, 'mm'),
    ratio: ratioOf(2 * projection, depth),
    source,
    advice: texts.deepenItNarrow,
  };
}

/** The ring spans as a beam under the widest opening that reaches the floor, on the soil's pressure. */
function steelCheck(setout: HouseSetout, domes: readonly DomeStatics[], depth: number): Check[] {
  const { combinations } = setout.house.site;
  const wide = Math.max(
    0,
    ...setout.arches.filter((a) => a.section.sill === 0).map((a) => a.section.width),
    ...setout.passages.map((p) => p.section.width),
  );
  const load = Math.max(0, ...domes.map((d) => d.footing?.lineLoad ?? 0));
  const deep = depth - COVER;
  if (wide === 0 || load === 0 || deep <= 0) return [];
  const moment = designEffect(combinations, (load * wide * wide) / 8e6, 0);
  const id = 'footing-steel';
  return [
    {
      id,
      statement: texts.footingIsReinforced,
      state: 'attention',
      demand: computed(
        `${id}.area`,
        texts.steelAreaAtTop,
        steelArea((moment * 1000) / (0.9 * deep), USUAL_YIELD),
        'mm2',
        'M / (0.9 d f), M = w L² / 8, f = 500 MPa / 1.15',
        texts.reinforcedFootingSource(combinationSource(combinations)),
        { 'moment M (kN m)': moment, 'line load w (kN/m)': load, 'widest opening L (mm)': wide, 'depth d (mm)': deep },
      ),
      source: texts.staticsOfBeam,
      advice: texts.leastReinforcementOfCode,
    },
  ];
}
