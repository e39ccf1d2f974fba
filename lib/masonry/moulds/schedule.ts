import type { DomeSetout } from '../../setout/dome.js';
import type { HouseSetout } from '../../setout/house.js';
import type { FitLimits } from './limits.js';
import { type Misfit, misfitOf } from './misfit.js';
import { type Placement, placeBlock } from './place.js';
import { type Fit, type MouldPlan, searchMoulds } from './search.js';
import { type Site, siteOf } from './site.js';
import { type Mould, middleJoint } from './window.js';

/** The mould of one course and how its blocks lie there. */
export interface CourseMould {
  readonly domeId: string;
  readonly course: number;
  readonly count: number;
  /** `null` where no mould of the family fits. */
  readonly laid: LaidMould | null;
  /** Why none fits. */
  readonly misfit: Misfit | null;
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

/** The fewest moulds for the courses of a bonded house, named `M1` and on in the order in which courses need them. */
export function scheduleMoulds({ domes }: Pick<HouseSetout, 'domes'>, limits: FitLimits): MouldSchedule {
  const sites = domes.flatMap((dome: DomeSetout) => dome.courses.map((course) => siteOf(dome, course)));
  const plan = searchMoulds(
    sites.map((site) => ({ site, counts: [site.course.count], ideal: site.course.count })),
    limits,
  );
  const fits = plan.fits.map((own) =>
    own.reduce<Fit | null>((best, fit) => (best && !truer(fit, best) ? best : fit), null),
  );
  const names = new Map<number, string>();
  for (const fit of fits) if (fit && !names.has(fit.mould)) names.set(fit.mould, `M${names.size + 1}`);
  const courses = sites.map((site, k) => courseMould(site, fits[k] ?? null, plan, names, limits));
  const moulds = [...names].map(([index, id]) => ({
    id,
    mould: plan.moulds[index] as Mould,
    courses: courses.filter((c) => c.laid?.id === id),
  }));
  const { atLeast, proven, nodes, candidates } = plan;
  return { moulds, courses, atLeast, proven, nodes, candidates };
}

/** Whether one mould's joints run more evenly than another's. */
const truer = (one: Fit, other: Fit): boolean => one.joints[1] - one.joints[0] < other.joints[1] - other.joints[0];

function courseMould(
  site: Site,
  fit: Fit | null,
  plan: MouldPlan,
  names: ReadonlyMap<number, string>,
  limits: FitLimits,
): CourseMould {
  const base = { domeId: site.domeId, course: site.course.index, count: site.course.count };
  const mould = fit && plan.moulds[fit.mould];
  const placement = mould && placeBlock(mould.parent, site, site.course.count, limits);
  if (!fit || !mould || !placement) return { ...base, laid: null, misfit: misfitOf(site, limits) };
  const id = names.get(fit.mould) as string;
  const laid = { id, mould, placement, joints: fit.joints, perpend: middleJoint(mould, placement) };
  return { ...base, laid, misfit: null };
}
