import type { House, Material } from '../description/house.js';
import { type FreshMix, mixOfDry, mixOfWet } from '../math/fresh-mix.js';

/** The mix that the blocks are cast of: to the wet density asked for, else to what dries to the dry density. */
export const freshMix = (material: Material): FreshMix =>
  material.wetDensity === null ? mixOfDry(material.dryDensity, material) : mixOfWet(material.wetDensity, material);

/** Density of the fresh mix, kg/m3. */
export const wetDensity = (material: Material): number => freshMix(material).wetDensity;

/** Mass in kg of a volume in mm³. */
export const massKg = (volume: number, density: number): number => (volume / 1e9) * density;

/** What is poured for a piece that is `volume` mm³ when dry: its mould is larger by the drying shrinkage; mm³. */
export function pouredVolume(volume: number, { shrinkage }: Pick<House['blocks'], 'shrinkage'>): number {
  const grow = 1 / (1 - shrinkage);
  return volume * grow * grow * grow;
}

/** Mass in kg, freshly demoulded, of what is `volume` mm³ when dry. */
export const freshKg = (volume: number, { material, blocks }: Pick<House, 'material' | 'blocks'>): number =>
  massKg(pouredVolume(volume, blocks), wetDensity(material));
