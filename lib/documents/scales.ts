import type { WrittenUnits } from '../base/measures.js';

/** Scales for the views of a building, largest first: ISO 5455, from memory. */
const METRIC = [20, 50, 100, 200] as const;

/** Inches of paper to a foot: scales of building drawings in feet, common practice, no source. */
const INCHES_TO_A_FOOT: readonly (readonly [scale: number, inches: string])[] = [
  [4, '3"'],
  [8, '1 1/2"'],
  [16, '3/4"'],
  [24, '1/2"'],
  [32, '3/8"'],
  [48, '1/4"'],
  [64, '3/16"'],
  [96, '1/8"'],
  [128, '3/32"'],
  [192, '1/16"'],
];

/** For one block or mould on a sheet, largest first: ISO 5455, from memory; inches to a foot, common practice, no source. */
export const mouldScales = (units: WrittenUnits): readonly number[] =>
  units === 'feet-inches' ? [8, 16, 32, 64] : [5, 10, 20, 50];

/** Standard scales, largest first; 50 stands for 1:50. */
export const standardScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? METRIC : INCHES_TO_A_FOOT.map(([scale]) => scale).filter((scale) => scale >= 16);

/** For a site so large that no scale of a building serves: ISO 5455, from memory; 40 and 80 feet to the inch. */
export const siteScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [500, 1000] : [480, 960];

/** Scales of a plan of the site, largest first: ISO 5455, from memory; feet to the inch, common practice, no source. */
export const plotScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [100, 200, 500, 1000, 2000] : [96, 128, 192, 240, 480, 960, 1920];

/** Scales of parts of a building, such as openings, largest first: ISO 5455, from memory; feet as above. */
export const partScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [20, 50, 100] : [24, 48, 96];

/** Scales at which numbers of blocks are still read, largest first. */
export const courseScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [50, 100, 200] : [48, 64, 96, 192];

/** Scales of details, and of those that show small things, largest first: ISO 5455, from memory; feet as above. */
export const detailScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [10, 20, 50] : [8, 16, 24];
export const closeScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [5, 10, 20] : [4, 8, 16];

/** The least scale at which a plan still tells all that a builder needs: 1:50, or 1/4 inch to a foot; common practice, no source. */
export const buildingScale = (units: WrittenUnits): number => (units !== 'feet-inches' ? 50 : 48);

/** A scale as it stands on a drawing: `1:50`, `1/4" = 1'-0"`, `1" = 40'-0"`. */
export function scaleWords(scale: number, units: WrittenUnits): string {
  if (units === 'feet-inches' && scale >= 240 && scale % 12 === 0) return `1" = ${scale / 12}'-0"`;
  const inches = units !== 'feet-inches' ? undefined : INCHES_TO_A_FOOT.find(([s]) => s === scale)?.[1];
  return inches === undefined ? `1:${scale}` : `${inches} = 1'-0"`;
}
