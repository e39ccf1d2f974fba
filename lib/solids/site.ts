import { hypot } from '../math/elementary.js';
import type { Vec2 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { archesOf, earlierThan, type FootingSetout, type HouseSetout } from '../setout/house.js';
import { type AbutmentOptions, abutment } from './abutment.js';
import { clearSpace, type Level, OVERRUN } from './arch-bodies.js';
import { type DomeFacets, domeFacets, outerBody, roomBody } from './dome-outlines.js';
import type { Solid, SolidScope } from './kernel.js';
import type { Outline } from './outline.js';

/** Something of a dome that gives way to earlier domes. */
export interface GivingWay extends Omit<AbutmentOptions, 'footRadius' | 'name'> {
  /** It lies within this distance of the dome's axis. */
  readonly radius: number;
  /** Name of the faces along an earlier dome; those of that dome's outside when missing. */
  readonly name?: (earlier: DomeSetout) => string;
  /** Whether below the floor it gives way to their footings, and not to their walls alone. */
  readonly onFooting?: boolean;
  /** Tells which earlier domes it may meet, where its distance alone says too little. */
  readonly meets?: (earlier: DomeSetout) => boolean;
}

/** One dome with all that belongs to it, and the bodies that its whole and its parts share, made when asked for. */
export interface Site {
  readonly dome: DomeSetout;
  readonly facets: DomeFacets;
  readonly arches: readonly ArchSetout[];
  readonly earlier: readonly Site[];
  readonly footing: FootingSetout | null;
  /** The dome outside, filled to the axis, down to where the ground is joined to it. */
  outer(): Solid;
  /** The room and its bore, open well below everything that it trims, as if the dome stood alone. */
  fullRoom(): Solid;
  /** The same less the earlier domes that reach into it. */
  openRoom(): Solid;
  /** What earlier domes take away from something of this one. */
  giveWay(what: GivingWay): Solid[];
  /** An arch's clear space; a sill on the floor is cut to the threshold's level, where its face has that name. */
  clear(arch: ArchSetout, threshold: Level): Solid;
}

/** The sites of all domes; `bottom` is the level down to which walls run before the ground is joined to them. */
export function sitesOf(scope: SolidScope, setout: HouseSetout, surface: number, bottom: number): Site[] {
  const sites: Site[] = [];
  for (const dome of setout.domes) {
    const earlier = earlierThan(setout, dome);
    const place = {
      dome,
      facets: domeFacets(dome, surface),
      arches: archesOf(setout, dome),
      earlier: sites.filter((site) => earlier.includes(site.dome)),
      footing: setout.footings.find((footing) => footing.domeId === dome.id) ?? null,
    };
    sites.push({ ...place, ...bodiesOf(scope, place, bottom) });
  }
  return sites;
}

type Place = Pick<Site, 'dome' | 'facets' | 'earlier'>;

function bodiesOf(scope: SolidScope, { dome, facets, earlier }: Place, bottom: number) {
  const made = new Map<string, Solid>();
  const once = (key: string, make: () => Solid): Solid => {
    const solid = made.get(key) ?? make();
    made.set(key, solid);
    return solid;
  };
  const turned = (part: string, outline: () => Outline) =>
    once(part, () => scope.revolve(`${dome.id}: ${part}`, outline(), facets.segments, dome.at));
  const giveWay = ({ radius, meets, onFooting, name, ...options }: GivingWay): Solid[] =>
    earlier
      .filter((site) => reaches(site.dome, dome, radius, Math.max(0, options.heights[0])))
      .filter((site) => meets?.(site.dome) ?? true)
      .map(({ facets, footing }) =>
        abutment(
          scope,
          facets,
          { axis: dome.at, radius },
          {
            ...options,
            ...(onFooting && footing ? { footRadius: footing.outerRadius } : {}),
            ...(name ? { name: name(facets.dome) } : {}),
          },
        ),
      );
  const fullRoom = () => turned('room', () => roomBody(facets, ...openFloor(dome), boreTop(dome)));
  return {
    outer: () => turned('outside', () => outerBody(facets, bottom)),
    fullRoom,
    openRoom: () =>
      once('room left', () => {
        const heights = [UNDER_ROOMS - OVERRUN, boreTop(dome) + OVERRUN] as const;
        return scope.subtract(`${dome.id}: room`, fullRoom(), giveWay({ radius: dome.springingRadius, heights }));
      }),
    giveWay,
    clear(arch: ArchSetout, threshold: Level) {
      const { sill } = arch.section;
      const from = sill > 0 ? ([sill, `opening:${arch.id}`] as const) : threshold;
      return once(`${arch.id} from ${from[0]}`, () => clearSpace(scope, arch, facets, from));
    },
  };
}

/** Whether an earlier dome comes within a distance of another's axis at some height from `z` up: both lean inward. */
function reaches(earlier: DomeSetout, dome: DomeSetout, radius: number, z: number): boolean {
  const distance = hypot(earlier.at[0] - dome.at[0], earlier.at[1] - dome.at[1]);
  return earlier.outerRadiusAt(z) + radius > distance;
}

export const boreTop = (dome: DomeSetout): number => dome.topZ + OVERRUN;

/** Where open rooms end below. */
const UNDER_ROOMS = -2 * OVERRUN;

function openFloor({ springingRadius }: DomeSetout): [under: [string, Vec2[]][], foot: Vec2] {
  return [[['base', [[0, UNDER_ROOMS]]]], [springingRadius, UNDER_ROOMS]];
}
