import { hypot } from '../math/elementary.js';
import type { ArchSetout } from '../setout/arch.js';
import type { DomeSetout } from '../setout/dome.js';
import { abuts, archesOf, type FootingSetout, type HouseSetout } from '../setout/house.js';
import { type AbutmentOptions, abutment } from './abutment.js';
import { clearSpace, type Level, OVERRUN } from './arch-bodies.js';
import type { Cap } from './cap.js';
import { type DomeFacets, domeFacets, surface as facetsOf, outerBody } from './dome-outlines.js';
import type { Solid, SolidScope } from './kernel.js';
import { cornersOf, type Outline } from './outline.js';
import { partedAt, seamHeight } from './seam.js';
import { sector } from './sector.js';
import { archStrip, distanceToStrip, type Strip, sightOfStrip } from './strip.js';

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
  /** Level at which the dome is parted, so that booleans meet its lower part alone; `null` where it isn't. */
  readonly seam: number | null;
  /** Greatest distance between a facet and its surface. */
  readonly surface: number;
  /** The dome outside, filled to the axis, from a level up to the seam. */
  outer(bottom: number): Solid;
  /** Along a strip what lies inside the surface `offset` outside the intrados, open well below what it trims. */
  within(strip: Strip, offset: number, name: string): Solid;
  /** What earlier domes take away from something of this one. */
  giveWay(what: GivingWay): Solid[];
  /** The earlier domes that stand in a strip of this one, as far as `radius` from the axis; open below as well. */
  earlierAlong(strip: Strip, radius?: number): Solid[];
  stripOf(arch: ArchSetout): Strip;
  /** An arch's clear space; a sill on the floor is cut to the threshold's level, where its face has that name. */
  clear(arch: ArchSetout, threshold: Level): Solid;
}

/** The sites of all domes, in their order. */
export function sitesOf(scope: SolidScope, setout: HouseSetout, surface: number): Site[] {
  const sites: Site[] = [];
  for (const dome of setout.domes) {
    const facets = domeFacets(dome, surface);
    sites.push(
      siteOf(scope, {
        dome,
        facets,
        surface,
        seam: seamHeight(setout, facets),
        arches: archesOf(setout, dome),
        earlier: sites.filter((site) => abuts(setout, dome, site.dome)),
        footing: setout.footings.find((footing) => footing.domeId === dome.id) ?? null,
      }),
    );
  }
  return sites;
}

type Place = Omit<Site, 'outer' | 'within' | 'giveWay' | 'earlierAlong' | 'stripOf' | 'clear'>;

function siteOf(scope: SolidScope, place: Place): Site {
  const { dome, facets, earlier, seam, arches, surface } = place;
  const strips = new Map(arches.map((arch) => [arch.id, archStrip(arch, surface)]));
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
  const site: Site = {
    ...place,
    giveWay,
    outer(bottom) {
      const outline = belowSeam(outerBody(facets, bottom), seam, seamName(dome));
      return scope.revolve(`${dome.id}: outside`, outline, facets.segments, dome.at);
    },
    within(strip, offset, name) {
      const curve = cornersOf(facetsOf(facets, offset, UNDER, name));
      return sector(scope, `${dome.id}: ${name}`, facets, curve, {
        heights: [UNDER, strip.topZ + OVERRUN],
        inner: 0.9 * strip.from,
        along: strip.frame.along,
        half: sightOfStrip(strip),
      });
    },
    earlierAlong: (strip, radius = hypot(strip.half, strip.to)) =>
      giveWay({
        radius,
        heights: [UNDER - OVERRUN, strip.topZ + OVERRUN],
        meets: (other) => distanceToStrip(strip, other.at) < other.outerRadiusAt(0),
      }),
    stripOf: (arch) => strips.get(arch.id) as Strip,
    clear(arch, threshold) {
      const { sill } = arch.section;
      return clearSpace(scope, arch, sill > 0 ? [sill, `opening:${arch.id}`] : threshold, site);
    },
  };
  return site;
}

/** Down to where bodies run that are open below. */
const UNDER = -2 * OVERRUN;

const seamName = ({ id }: DomeSetout): string => `seam:${id}`;

/** An outline, or what of it lies below a seam, closed there by an edge of the given name. */
export const belowSeam = (outline: Outline, seam: number | null, name: string): Outline =>
  seam === null ? outline : partedAt(outline, seam, name).below;

/** Whether an earlier dome comes within a distance of another's axis at some height from `z` up: both lean inward. */
function reaches(earlier: DomeSetout, dome: DomeSetout, radius: number, z: number): boolean {
  const distance = hypot(earlier.at[0] - dome.at[0], earlier.at[1] - dome.at[1]);
  return earlier.outerRadiusAt(z) + radius > distance;
}

export const boreTop = (dome: DomeSetout): number => dome.topZ + OVERRUN;

/** What is put on the part below a dome's seam of a figure of revolution with this outline. */
export function capOf({ dome, facets, seam }: Site, outline: Outline): Cap | null {
  if (seam === null) return null;
  const name = seamName(dome);
  return { seam: name, at: dome.at, segments: facets.segments, profile: partedAt(outline, seam, name).above };
}
