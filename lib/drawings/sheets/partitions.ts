/** Views by their place in the set: plan, elevations from north to west, section. */
export const PLAN = 0;
const NORTH = 1;
const EAST = 2;
const SOUTH = 3;
const WEST = 4;
export const SECTION = 5;
export const ELEVATIONS = [NORTH, EAST, SOUTH, WEST] as const;

/**
 * Ways to share the views out to sheets, fewest sheets first: elevations stay together, or in pairs, or each has a
 * sheet, and the section keeps company where there is room.
 */
export const PARTITIONS: readonly (readonly (readonly number[])[])[] = [
  [[PLAN, NORTH, EAST, SOUTH, WEST, SECTION]],
  [
    [PLAN, SECTION],
    [NORTH, EAST, SOUTH, WEST],
  ],
  [[PLAN], [NORTH, EAST, SOUTH, WEST, SECTION]],
  [[PLAN], [NORTH, EAST, SOUTH, WEST], [SECTION]],
  [
    [PLAN, SECTION],
    [NORTH, EAST],
    [SOUTH, WEST],
  ],
  [[PLAN], [NORTH, EAST], [SOUTH, WEST, SECTION]],
  [[PLAN], [NORTH, EAST], [SOUTH, WEST], [SECTION]],
  [[PLAN, SECTION], [NORTH], [EAST], [SOUTH], [WEST]],
  [[PLAN], [NORTH], [EAST], [SOUTH], [WEST], [SECTION]],
];
