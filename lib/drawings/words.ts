import { formatAngle, formatLength, type WrittenUnits } from '../base/measures.js';
import * as texts from '../base/texts/drawing-plans.js';
import { ONE_SIZE } from '../base/tolerances.js';
import { SQUARE_FOOT_M2 } from '../base/units.js';
import type { House } from '../description/house.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';

export const writtenUnits = (house: House): WrittenUnits =>
  house.units === 'ft' || house.units === 'in' ? 'feet-inches' : 'metric';

/** An area of so many m2, in the drawing's units. */
export const areaWords = (m2: number, units: WrittenUnits): string =>
  units === 'metric' ? `${m2.toFixed(1)} m²` : `${(m2 / SQUARE_FOOT_M2).toFixed(0)} ft²`;

/** The area of an opening: a tenth of a square foot counts. */
export const smallAreaWords = (m2: number, units: WrittenUnits): string =>
  units === 'feet-inches' ? `${(m2 / SQUARE_FOOT_M2).toFixed(1)} ft²` : `${m2.toFixed(2)} m²`;

/** What an opening is called beside its axis. */
export function openingName(arch: ArchSetout): string {
  const { use } = arch.opening;
  return arch.id === use ? arch.id : `${arch.id} (${use})`;
}

/** How far east or west and north or south of somewhere a plan point lies, mm. */
export function placeWords([x, y]: Vec2, units: WrittenUnits): string {
  const size = (mm: number) => formatLength(Math.abs(mm), units);
  const [across, up] = [x < 0 ? texts.west : texts.east, y < 0 ? texts.south : texts.north];
  return `${across(size(x))}, ${up(size(y))}`;
}

/** "a", "a and b", "a, b and c". */
export const wordsOf = (all: readonly string[]): string =>
  all.length < 2 ? all.join('') : texts.listAnd(all.slice(0, -1).join(', '), all[all.length - 1]);

export const bearingWords = (deg: number): string => texts.bearing(formatAngle(deg));

/** How a dome's intrados is drawn with compasses, or what curve it is. */
export function profileWords(dome: DomeSetout, units: WrittenUnits): string {
  const { profile, id } = dome;
  const { arc } = profile;
  const size = (mm: number) => formatLength(mm, units);
  if (!arc) return texts.intradosOfRise(id, profile.shape, size(profile.rise));
  const [past, below] = [-arc.centre[0], -arc.centre[1]];
  const centre =
    past > ONE_SIZE
      ? texts.pastAxisAtSpringing(size(past))
      : below > ONE_SIZE
        ? texts.onAxisBelowSpringing(size(below))
        : texts.onAxisAtSpringing;
  return texts.intradosOfRadius(id, profile.shape, size(arc.radius), centre);
}

/** Whose drawing it is: title, number, place, client, author, revision and date as the description gives them. */
export function projectWords({ project }: House): string {
  const { title, number, address, client, drawnBy, revision, date } = project;
  const said = [
    number && texts.numberShort(number),
    address,
    client && texts.forClient(client),
    drawnBy && texts.drawnBy(drawnBy),
    revision && texts.revision(revision),
    date ?? 'undated',
  ].filter((part) => part !== '');
  return `${title}: ${said.join('; ')}.`;
}

/** How a wall is made, for a note. */
export function wallWords(house: House, units: WrittenUnits): string {
  const size = (mm: number) => formatLength(mm, units);
  const { wall, blocks } = house;
  const render =
    wall.renderInside > 0 || wall.renderOutside > 0
      ? texts.sizesAreWithoutRender(size(wall.renderInside), size(wall.renderOutside))
      : '';
  return texts.wallOfCastBlocks(size(wall.thickness), size(blocks.joint), render);
}

/** What stands under the walls and the floor, for a note. */
export function baseWords(house: House, units: WrittenUnits): string {
  const size = (mm: number) => formatLength(mm, units);
  const { footing, slab } = house;
  const ring = footing ? texts.ringFootingWide(size(footing.width), size(footing.depth)) : texts.noRingFooting;
  return slab ? texts.floorSlabThick(ring, size(slab.thickness)) : texts.noFloorSlab(ring);
}
