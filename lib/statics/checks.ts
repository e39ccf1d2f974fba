import type { Check } from '../base/figures.js';
import type { HouseSetout } from '../setout/house.js';
import { footingChecks, footingConcreteChecks } from './checks/footing.js';
import { headChecks } from './checks/heads.js';
import { loadChecks } from './checks/loads.js';
import { pierChecks } from './checks/piers.js';
import { shellChecks } from './checks/shell.js';
import { tieChecks } from './checks/tie.js';
import type { Statics } from './results.js';

/** Judges the statics of a house; preliminary, never a design. Ids stay the same from version to version. */
export function staticsChecks(setout: HouseSetout, statics: Statics): Check[] {
  return [
    ...loadChecks(setout, statics),
    ...setout.domes.flatMap((dome) => {
      const found = statics.domes.find((d) => d.id === dome.id);
      if (!found) return [];
      return [
        ...shellChecks(setout, dome, found, statics),
        ...tieChecks(setout, dome, found),
        ...pierChecks(setout, dome, found, statics),
        ...footingChecks(setout, dome, found),
      ];
    }),
    ...headChecks(setout, statics),
    ...footingConcreteChecks(setout, statics.domes),
  ];
}
