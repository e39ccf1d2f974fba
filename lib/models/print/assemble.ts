import type { HouseSetout } from '../../setout/house.js';
import type { Solid, SolidScope } from '../../solids/kernel.js';
import { archBodies, bluntEdge, clearSpaces, lowerBody, printDomes, roofBody, roomOf } from './bodies.js';
import { plateBodies, plateOf } from './plate.js';
import type { PrintSizes } from './sizes.js';

/** The model in its pieces before the bed is looked at: what stands on the plate, and the roofs that come off it. */
export interface Assembly {
  readonly base: Solid;
  readonly roofs: readonly {
    readonly domeId: string;
    readonly roof: Solid;
    readonly level: number;
    readonly pegs: number;
  }[];
  /** Domes whose roof stays on though it was to come off. */
  readonly fixed: readonly string[];
  /** Courses whose joints are too fine for the nozzle, by dome. */
  readonly plain: readonly { readonly domeId: string; readonly courses: readonly number[] }[];
  readonly plate: ReturnType<typeof plateOf>;
}

/** Makes base and roofs; a setout with walls as thick as the printer makes them. */
export function assemble(scope: SolidScope, setout: HouseSetout, sizes: PrintSizes): Assembly {
  const plate = plateOf(setout, sizes);
  const bottom = plate.bottom + (Math.min(0, plate.top) - plate.bottom) / 2;
  const domes = printDomes(scope, setout, sizes, bottom);
  const sites = domes.map((dome) => dome.site);
  const rooms = domes.map((dome) => roomOf(scope, dome.site));
  const roofs = domes.map((dome, i) => roofBody(scope, dome, rooms[i] as Solid, sizes));

  const part = 'base';
  const solid = scope.union(part, [
    ...plateBodies(scope, setout, sites, plate, sizes),
    ...domes.map((dome) => lowerBody(scope, dome, sizes)),
    ...archBodies(scope, sites, setout, bottom),
  ]);
  // The small cuts first: it takes half the time of one difference with the rooms among them.
  const pierced = scope.subtract(part, solid, clearSpaces(scope, sites, setout));
  const hollow = scope.subtract(part, pierced, [...rooms, ...domes.flatMap((dome) => bluntEdge(scope, dome, sizes))]);
  const pegs = roofs.flatMap((made) => made?.pegs ?? []);
  return {
    base: scope.union(part, [hollow, ...pegs]),
    roofs: domes.flatMap(({ site, level, pegs: places }, i) => {
      const roof = roofs[i]?.roof;
      return roof && level ? [{ domeId: site.dome.id, roof, level: level.z, pegs: places?.at.length ?? 0 }] : [];
    }),
    fixed: setout.house.print.roof === 'fixed' ? [] : domes.flatMap((d) => (d.level ? [] : [d.site.dome.id])),
    plain: domes.flatMap(({ site, grooved }) =>
      grooved.plain.length > 0 ? [{ domeId: site.dome.id, courses: grooved.plain }] : [],
    ),
    plate,
  };
}
