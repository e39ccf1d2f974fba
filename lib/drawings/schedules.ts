import { formatAngle, formatLength, formatLevel, type WrittenUnits } from '../base/measures.js';
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
    title: 'Openings',
    columns: [
      text('type', 'type'),
      text('id', 'opening'),
      ...(house.domes.length > 1 ? [text('in', 'in')] : []),
      text('use', 'use'),
      size('bearing', 'bearing'),
      size('width', 'clear width'),
      size('height', 'clear height'),
      size('sill', 'level of sill'),
      text('head', 'head'),
      size('rise', 'rise of head'),
      size('ring', 'ring and jambs'),
      text('made', 'ring made as'),
      text('face', 'flat face beyond wall'),
      size('frame', 'frame'),
      size('depth', 'depth of niche'),
      ...(known ? [size('through-width', 'inside frame and leaf, width'), size('through-height', 'height')] : []),
      ...(known ? [size('through-area', 'clear area')] : []),
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
      made: opening.arch.madeAs === 'cast' ? 'cast' : `${opening.arch.voussoirs} voussoirs`,
      face: opening.arch.face === 'flush' ? 'flush' : length(opening.arch.face),
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
    title: 'Setting out of domes',
    columns: [
      text('id', 'dome'),
      text('grid', 'grid'),
      size('east', 'east'),
      size('north', 'north'),
      text('profile', 'intrados'),
      size('radius', 'inside radius'),
      size('outer', 'outside radius'),
      ...(based ? [size('footing-in', 'footing, inside radius'), size('footing-out', 'footing, outside radius')] : []),
      size('stem', 'stem wall'),
      size('rise', 'rise'),
      size('top', 'level of top'),
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
