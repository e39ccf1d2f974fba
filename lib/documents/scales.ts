import type { WrittenUnits } from '../base/measures.js';

/** Scales for the views of a building, largest first: ISO 5455, from memory. */
const METRIC = [20, 50, 100, 200] as const;

/** Inches of paper to a foot: scales of building drawings in feet, common practice, no source. */
const INCHES_TO_A_FOOT: readonly (readonly [scale: number, inches: string])[] = [
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
export const detailScales = (units: WrittenUnits): readonly number[] =>
  units === 'feet-inches' ? [8, 16, 32, 64] : [5, 10, 20, 50];

/** Standard scales, largest first; 50 stands for 1:50. */
export const standardScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? METRIC : INCHES_TO_A_FOOT.map(([scale]) => scale);

/** For a site so large that no scale of a building serves: ISO 5455, from memory; 40 and 80 feet to the inch. */
export const siteScales = (units: WrittenUnits): readonly number[] =>
  units !== 'feet-inches' ? [500, 1000] : [480, 960];

/** The least scale at which a plan still tells all that a builder needs: 1:50, or 1/4 inch to a foot; common practice, no source. */
export const buildingScale = (units: WrittenUnits): number => (units !== 'feet-inches' ? 50 : 48);

/** A scale as it stands on a drawing: `1:50`, `1/4" = 1'-0"`, `1" = 40'-0"`. */
export function scaleWords(scale: number, units: WrittenUnits): string {
  if (units === 'feet-inches' && siteScales(units).includes(scale)) return `1" = ${scale / 12}'-0"`;
  if (units === 'feet-inches' && scale === 8) return `1 1/2" = 1'-0"`;
  const inches = units !== 'feet-inches' ? undefined : INCHES_TO_A_FOOT.find(([s]) => s === scale)?.[1];
  return inches === undefined ? `1:${scale}` : `${inches} = 1'-0"`;
}
