import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { type ArchLoads, archThrust } from './arch.js';
import { atHeight } from './dome-thrust.js';
import type { UnitLoads } from './loads.js';
import type { Lune } from './lune.js';
import type { HeadStatics } from './results.js';

/** What heads need to know of the dome that they stand in. */
export interface LoadedDome {
  readonly dome: DomeSetout;
  readonly lune: Lune;
  readonly loads: UnitLoads;
}

/** Dead load and snow that come down the wall at a height, kN per mm of the circle. */
function flowAt({ lune, dome }: LoadedDome, z: number): { readonly dead: number; readonly snow: number } {
  const r = dome.radiusAt(Math.min(z, dome.crownZ), dome.thickness / 2);
  const at = (of: (i: number) => number) => atHeight(lune, z, of) / r;
  return {
    dead: at((i) => lune.sections[i]?.dead.weight ?? 0),
    snow: at((i) => lune.sections[i]?.snow.weight ?? 0),
  };
}

type Headed = ArchSetout | PassageSetout;

/** How deep into the wall an opening's head reaches. */
function depthInWall({ clear, section }: ArchSetout, dome: DomeSetout): number {
  if (clear.kind === 'through') return dome.thickness;
  const deep = clear.kind === 'parallel' ? clear.depth : clear.v - dome.radiusAt(section.springingZ);
  return Math.min(dome.thickness, deep);
}

/**
 * Heads of all openings and passages, each under the whole load above it; that of a niche bears it on its own depth,
 * as if the wall behind it bore nothing.
 */
export function headsOf(setout: HouseSetout, domes: ReadonlyMap<string, LoadedDome>): HeadStatics[] {
  const loaded = (id: string) => domes.get(id) as LoadedDome;
  const openings = setout.arches.map((arch) =>
    headStatics(arch.id, arch.clear.kind === 'through' ? 'opening' : 'niche', arch, [loaded(arch.dome.id)], false),
  );
  const passages = setout.passages.map((passage) => {
    const ends = passage.domes.map((d) => loaded(d.id));
    const z = passage.section.springingZ;
    const between = passage.domes.reduce((left, d) => left - d.outerRadiusAt(Math.min(z, d.topZ)), passage.distance);
    return headStatics(passage.id, 'passage', passage, ends, between > 0);
  });
  return [...openings, ...passages];
}

function headStatics(
  id: string,
  of: HeadStatics['of'],
  head: Headed,
  ends: readonly LoadedDome[],
  standsFree: boolean,
): HeadStatics {
  const { section, ring, topZ } = head;
  const flows = ends.map((end) => ({ end, ...flowAt(end, topZ) }));
  const worst = flows.reduce((a, b) => (b.dead + b.snow > a.dead + a.snow ? b : a));
  const { dome, loads } = worst.end;
  const depth = 'clear' in head ? depthInWall(head, dome) : dome.thickness;
  const own: ArchLoads = { ring, depth, masonry: loads.masonry, onTop: 0, jambsTo: null };
  const span = section.width + ring;
  const wall = loads.masonry * depth * ring;
  return {
    id,
    of,
    springingZ: section.springingZ,
    topZ,
    arch: archThrust(section, { ...own, onTop: worst.dead + worst.snow }),
    free: standsFree ? archThrust(section, { ...own, jambsTo: 0 }) : null,
    bending: section.arc
      ? null
      : {
          dead: ((worst.dead + wall) * span * span) / 8e3,
          snow: (worst.snow * span * span) / 8e3,
          span,
        },
  };
}
