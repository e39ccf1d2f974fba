import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import type { FitLimits } from './limits.js';
import { type Misfit, misfitOf } from './misfit.js';
import type { MixFit, MixPlan } from './mix-search.js';
import { type Placement, placeBlock } from './place.js';
import type { Fit } from './search.js';
import { type Site, siteOf } from './site.js';
import { type Mould, middleJoint } from './window.js';

/** The mould of one course and how its blocks lie there. */
export interface CourseMould {
  readonly domeId: string;
  readonly course: number;
  readonly count: number;
  /** `null` where no mould of the family fits. */
  readonly laid: LaidMould | null;
  /** A second mould mixed in, so that `laid` tells of the first. */
  readonly second: SecondMould | null;
  /** Why none fits. */
  readonly misfit: Misfit | null;
}

/** The mould of which a course has the fewer blocks, or half of them. */
export interface SecondMould {
  readonly id: string;
  readonly mould: Mould;
  readonly placement: Placement;
  /** How many blocks of the ring are of it. */
  readonly blocks: number;
  /** Angle of the ring that a block of the first mould takes with its joint, and one of this; radians. */
  readonly angles: readonly [number, number];
}

export interface LaidMould {
  /** Name of the mould. */
  readonly id: string;
  readonly mould: Mould;
  readonly placement: Placement;
  /** Thinnest and thickest perpend of dry blocks, mm. */
  readonly joints: readonly [number, number];
  /** Perpend in the middle of the blocks' heads, mm. */
  readonly perpend: number;
}

/** One mould under its name. */
export interface NamedMould {
  readonly id: string;
  readonly mould: Mould;
  /** Courses that are laid with it. */
  readonly courses: readonly CourseMould[];
}

/** The moulds of a house, which courses each serves, and how well their number is proven. */
export interface MouldSchedule {
  readonly moulds: readonly NamedMould[];
  /** In the order of domes and courses. */
  readonly courses: readonly CourseMould[];
  /** No choice of moulds from the family is smaller. */
  readonly atLeast: number;
  readonly proven: boolean;
  readonly nodes: number;
  readonly candidates: number;
}

/**
 * The moulds of a house whose courses have their numbers of blocks, named `M1` and on in the order in which courses
 * need them.
 * @param plan found for the courses in the order of domes and courses
 */
export function scheduleMoulds({ domes }: Pick<HouseSetout, 'domes'>, limits: FitLimits, plan: MixPlan): MouldSchedule {
  const sites = domes.flatMap((dome: DomeSetout) => dome.courses.map((course) => siteOf(dome, course)));
  const own = <W extends { readonly count: number }>(ways: readonly (readonly W[])[], k: number): W[] =>
    (ways[k] ?? []).filter(({ count }) => count === sites[k]?.course.count);
  const fits = sites.map((_, k) =>
    own(plan.fits, k).reduce<Fit | null>((best, fit) => (best && !truer(fit, best) ? best : fit), null),
  );
  const mixes = sites.map((_, k) => own(plan.mixes, k)[0] ?? null);
  const names = new Map<number, string>();
  for (const k of sites.keys()) {
    const fit = fits[k];
    for (const mould of fit ? [fit.mould] : (mixes[k]?.moulds ?? []))
      if (!names.has(mould)) names.set(mould, `M${names.size + 1}`);
  }
  const courses = sites.map((site, k) => {
    const [fit, mix] = [fits[k] ?? null, mixes[k] ?? null];
    return !fit && mix ? mixedCourse(site, mix, plan, names) : courseMould(site, fit, plan, names, limits);
  });
  const moulds = [...names].map(([index, id]) => ({
    id,
    mould: plan.moulds[index] as Mould,
    courses: courses.filter((c) => c.laid?.id === id || c.second?.id === id),
  }));
  const { atLeast, proven, nodes, candidates } = plan;
  return { moulds, courses, atLeast, proven, nodes, candidates };
}

/** Whether one mould's joints run more evenly than another's. */
const truer = (one: Fit, other: Fit): boolean => one.joints[1] - one.joints[0] < other.joints[1] - other.joints[0];

function courseMould(
  site: Site,
  fit: Fit | null,
  plan: MixPlan,
  names: ReadonlyMap<number, string>,
  limits: FitLimits,
): CourseMould {
  const base = { domeId: site.domeId, course: site.course.index, count: site.course.count, second: null };
  const mould = fit && plan.moulds[fit.mould];
  const placement = mould && placeBlock(mould.parent, site, site.course.count, limits);
  if (!fit || !mould || !placement) return { ...base, laid: null, misfit: misfitOf(site, limits) };
  const id = names.get(fit.mould) as string;
  const laid = { id, mould, placement, joints: fit.joints, perpend: middleJoint(mould, placement) };
  return { ...base, laid, misfit: null };
}

function mixedCourse(
  { domeId, course }: Site,
  { moulds: [first, second], shares, ring }: MixFit,
  plan: MixPlan,
  names: ReadonlyMap<number, string>,
): CourseMould {
  const { placements, joints, perpend, angles } = ring;
  const named = (index: number) => ({ id: names.get(index) as string, mould: plan.moulds[index] as Mould });
  return {
    domeId,
    course: course.index,
    count: course.count,
    laid: { ...named(first), placement: placements[0], joints, perpend },
    second: { ...named(second), placement: placements[1], blocks: shares[1], angles },
    misfit: null,
  };
}
