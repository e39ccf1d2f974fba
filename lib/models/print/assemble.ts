import type { Solid, SolidScope } from '../../solids/kernel.js';
import { archBodies, bluntEdge, clearSpaces, lowerBody, printDomes, roofBody, roomOf } from './bodies.js';
import { layersOf } from './layers.js';
import type { PrintPlan } from './plan.js';
import { plateBodies } from './plate.js';

/** The model in its pieces before the bed is looked at: what stands on the plate, and the roofs that come off it. */
export interface Assembly {
  /** In layers from below, where it is higher than the printer reaches; so are roofs. */
  readonly base: readonly Solid[];
  readonly roofs: readonly { readonly dome: number; readonly layers: readonly Solid[] }[];
  /** All of it in one, roofs on and without pegs. */
  readonly whole: Solid;
  /** Courses whose joints are too fine for the nozzle, by dome. */
  readonly plain: readonly (readonly number[])[];
}

/** Makes base and roofs as planned, in mm of the house and in its place. */
export function assemble(scope: SolidScope, plan: PrintPlan): Assembly {
  const { setout, sizes, plate, domes: planned } = plan;
  const bottom = plate.bottom + (Math.min(0, plate.top) - plate.bottom) / 2;
  const domes = printDomes(scope, setout, plan, bottom);
  const sites = domes.map((dome) => dome.site);
  const rooms = domes.map((dome) => roomOf(scope, dome.site));
  const roofs = domes.map((dome, i) => roofBody(scope, dome, rooms[i] as Solid, sizes));

  const part = 'base';
  const solid = scope.union(part, [
    ...plateBodies(scope, setout, sites, plan),
    ...domes.map((dome) => lowerBody(scope, dome)),
    ...archBodies(scope, sites, setout, bottom),
  ]);
  // The small cuts first: it takes half the time of one difference with the rooms among them.
  const pierced = scope.subtract(part, solid, clearSpaces(scope, sites, setout));
  const rims = domes.flatMap((dome) => bluntEdge(scope, dome, sizes));
  const hollow = scope.subtract(part, pierced, [...rooms, ...rims]);
  const made = roofs.flatMap((roof, dome) => (roof ? [{ dome, ...roof }] : []));
  const pegs = made.flatMap((roof) => roof.pegs);
  // Pegs in one first: by themselves the kernel would take the walls through several rounds with them.
  const base = pegs.length > 0 ? scope.union(part, [hollow, scope.union('pegs', pegs)]) : hollow;
  return {
    base: layersOf(scope, base, plan.baseCuts, sites, sizes),
    roofs: made.map(({ dome, roof }) => ({
      dome,
      layers: layersOf(scope, roof, planned[dome]?.roofCuts ?? [], sites, sizes),
    })),
    whole: scope.union('whole', [hollow, ...made.map(({ shell }) => shell)]),
    plain: domes.map(({ grooved }) => grooved.plain),
  };
}
