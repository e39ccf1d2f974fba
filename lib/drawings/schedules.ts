import { formatAngle, formatLength, formatLevel, type WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/drawing-sheets.js';
import type { Column, Table } from '../documents/table.js';
import type { HouseSetout } from '../setout/house.js';
import { gridNames } from './grid.js';
import type { ClearOpening, HandedOver } from './handed.js';
import { typeOf } from './opening-types.js';
import { smallAreaWords, writtenUnits } from './words.js';

const text = (key: string, label: string): Column => ({ key, label, kind: 'text' });
/** Written like the dimensions of the drawing: a text that stands to the right like a number. */
const size = (key: string, label: string): Column => ({ key, label, kind: 'number' });

/**
 * Openings as a sheet lists them: between jambs, from sill to crown of the intrados, written like its dimensions; and
 * what one gets through of those whose clear rectangle is known.
 */
export function openingSchedule(house: HouseSetout, clears: HandedOver['clears'] = {}): Table {
  const units = writtenUnits(house.house);
  const length = (mm: number) => formatLength(mm, units);
  const known = Object.keys(clears).length > 0;
  return {
    id: 'opening-schedule',
    title: texts.openings,
    columns: [
      text('type', texts.typeColumn),
      text('id', texts.opening),
      ...(house.domes.length > 1 ? [text('in', texts.inColumn)] : []),
      text('use', texts.use),
      size('bearing', texts.bearing),
      size('width', texts.clearWidth),
      size('height', texts.clearHeight),
      size('sill', texts.levelOfSill),
      text('head', texts.head),
      size('rise', texts.riseOfHead),
      size('ring', texts.ringAndJambs),
      text('made', texts.ringMade),
      text('face', texts.flatFaceBeyondWall),
      size('frame', texts.frame),
      size('depth', texts.depthOfNiche),
      ...(known ? [size('through-width', texts.netClearWidth), size('through-height', texts.netClearHeight)] : []),
      ...(known ? [size('through-area', texts.netClearArea)] : []),
    ],
    rows: house.arches.map(({ opening, section }) => ({
      type: typeOf(house, opening.id),
      id: opening.id,
      in: opening.in,
      use: opening.use,
      bearing: formatAngle(opening.bearingDeg),
      width: length(opening.width),
      height: length(section.crownZ - section.sill),
      sill: formatLevel(section.sill, units),
      head: opening.head.shape,
      rise: length(opening.head.rise),
      ring: length(opening.arch.ring),
      made: opening.arch.madeAs === 'cast' ? texts.castInOne : texts.voussoirs(opening.arch.voussoirs),
      face: opening.arch.face === 'flush' ? texts.flush : length(opening.arch.face),
      frame: opening.use === 'niche' ? null : length(opening.frame),
      depth: opening.depth === null ? null : length(opening.depth),
      ...throughOf(clears[opening.id], units),
    })),
  };
}

function throughOf(clear: ClearOpening | undefined, units: WrittenUnits): Record<string, string | null> {
  return {
    'through-width': clear ? formatLength(clear.width, units) : null,
    'through-height': clear ? formatLength(clear.height, units) : null,
    'through-area': clear ? smallAreaWords((clear.width * clear.height) / 1e6, units) : null,
  };
}

/** Domes as a sheet lists them: where their axes stand, and every circle and level that is set out from them. */
export function settingOutSchedule(house: HouseSetout): Table {
  const units = writtenUnits(house.house);
  const length = (mm: number) => formatLength(mm, units);
  const based = house.footings.length > 0;
  return {
    id: 'setting-out',
    title: texts.settingOutOfDomes,
    columns: [
      text('id', 'dome'),
      text('grid', 'grid'),
      size('east', 'east'),
      size('north', 'north'),
      text('profile', 'intrados'),
      size('radius', texts.insideRadius),
      size('outer', texts.outsideRadius),
      ...(based
        ? [size('footing-in', texts.footingInsideRadius), size('footing-out', texts.footingOutsideRadius)]
        : []),
      size('stem', texts.stemWall),
      size('rise', 'rise'),
      size('top', texts.levelOfTop),
      size('courses', 'courses'),
    ],
    rows: house.domes.map((dome) => {
      const footing = house.footings.find((f) => f.domeId === dome.id);
      return {
        id: dome.id,
        grid: gridNames(house, dome.at),
        east: length(dome.at[0]),
        north: length(dome.at[1]),
        profile: dome.profile.shape,
        radius: length(dome.springingRadius),
        outer: length(dome.springingRadius + dome.thickness),
        'footing-in': footing ? length(footing.innerRadius) : null,
        'footing-out': footing ? length(footing.outerRadius) : null,
        stem: length(dome.springingZ),
        rise: length(dome.profile.rise),
        top: formatLevel(dome.topZ, units),
        courses: dome.courses.length,
      };
    }),
  };
}
