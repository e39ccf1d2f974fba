import { type Check, givenFigure } from '../base/figures.js';
import * as texts from '../base/texts/mould-work.js';
import type { House } from '../description/house.js';
import type { LaidHouse } from '../masonry/block.js';
import { castForms } from '../masonry/forms.js';
import { type CastShape, castShape } from '../masonry/moulds/shape.js';
import type { MasonryPlan } from '../masonry/plan.js';
import { asin, hypot } from '../math/elementary.js';
import { DEG, type Vec3 } from '../math/vec.js';

/** A bed board that stays is held to so much draft, for a block slides between two of them; common practice, no source. */
const LEAST_DRAFT_DEG = 1;
const SOURCE = texts.derivedLeastDraft;

/** One step of taking a mould apart: what moves, which way, past which sides of the block. */
export interface ReleaseStep {
  readonly moves: string;
  readonly way: 'outward' | 'up the meridian' | 'down the meridian';
  /** Least angle by which the sides that it slides off open towards the way, radians; negative: they hold it. */
  readonly draftRad: number;
  /** The side with the least draft. */
  readonly tightest: string;
}

/** How a mould stands, what is struck, and how it comes apart. */
export interface MouldRelease {
  readonly mould: string;
  readonly steps: readonly ReleaseStep[];
  /** Heights of the floor's corners over the lowest of them when the struck head is level, mm. */
  readonly packing: Readonly<Record<'innerLower' | 'innerUpper' | 'outerLower' | 'outerUpper', number>>;
}

type Side = 'intrados' | 'extrados' | 'lower bed' | 'upper bed' | 'floor head';

/** Places on a side at which its normal is taken, in shares. */
const SHARES = [0, 0.25, 0.5, 0.75, 1];
/** Step of the difference that gives a normal, as a share. */
const STEP = 1e-4;

/**
 * Every mould stands on one head, the only plane sides that a fluid mix can end on being the heads: the other is open
 * and struck level. The form of the extrados comes off first, then the bed boards unless they are fixed, last the
 * block is drawn outward off the form of the intrados and the floor.
 */
export function mouldRelease(name: string, shape: CastShape, bedBoards: House['casting']['bedBoards']): MouldRelease {
  const loose = bedBoards === 'loose';
  const stays: readonly Side[] = ['intrados', 'floor head', ...(loose ? [] : (['lower bed', 'upper bed'] as const))];
  const step = (moves: string, way: ReleaseStep['way'], sides: readonly Side[], off: 1 | -1): ReleaseStep => {
    const drafts = sides.map((side) => ({ side, draft: draftOf(shape, side, way, off) }));
    const least = drafts.reduce((a, b) => (b.draft < a.draft ? b : a));
    return { moves, way, draftRad: least.draft, tightest: least.side };
  };
  return {
    mould: name,
    steps: [
      step(texts.formOfExtrados, 'outward', ['extrados'], 1),
      ...(loose
        ? [
            step(texts.boardOfUpperBed, 'up the meridian', ['upper bed'], 1),
            step(texts.boardOfLowerBed, 'down the meridian', ['lower bed'], 1),
          ]
        : []),
      step('block', 'outward', stays, -1),
    ],
    packing: packingOf(shape),
  };
}

function packingOf(shape: CastShape): MouldRelease['packing'] {
  const { base, perOut, perUp } = shape.head;
  // Distance of the floor's corners from the plane of the struck head, the mirror image of the floor's.
  const deep = (s: 0 | 1, depth: 0 | 1): number => {
    const [across, up, out] = shape.at(s, depth, 1);
    return (across + base + perOut * out + perUp * up) / hypot(1, perOut, perUp);
  };
  const corners = { innerLower: deep(0, 0), innerUpper: deep(1, 0), outerLower: deep(0, 1), outerUpper: deep(1, 1) };
  const most = Math.max(...Object.values(corners));
  return {
    innerLower: most - corners.innerLower,
    innerUpper: most - corners.innerUpper,
    outerLower: most - corners.outerLower,
    outerUpper: most - corners.outerUpper,
  };
}

const WAYS: Readonly<Record<ReleaseStep['way'], Vec3>> = {
  outward: [0, 0, 1],
  'up the meridian': [0, 1, 0],
  'down the meridian': [0, -1, 0],
};

/** Least angle between a side and the way: `off` 1 when the side itself goes away, −1 when the block leaves it. */
function draftOf(shape: CastShape, side: Side, way: ReleaseStep['way'], off: 1 | -1): number {
  const towards = WAYS[way];
  let least = Number.POSITIVE_INFINITY;
  for (const i of SHARES) {
    for (const j of SHARES) {
      const normal = normalAt(shape, side, i, j);
      const along = normal[0] * towards[0] + normal[1] * towards[1] + normal[2] * towards[2];
      least = Math.min(least, asin(Math.max(-1, Math.min(1, off * along))));
    }
  }
  return least;
}

/** Outward unit normal of the block on a side, (across, up, out). */
function normalAt(shape: CastShape, side: Side, i: number, j: number): Vec3 {
  const point = (a: number, b: number): Vec3 => {
    switch (side) {
      case 'intrados':
        return shape.at(b, 0, 2 * a - 1);
      case 'extrados':
        return shape.at(b, 1, 2 * a - 1);
      case 'lower bed':
        return shape.at(0, b, 2 * a - 1);
      case 'upper bed':
        return shape.at(1, b, 2 * a - 1);
      case 'floor head':
        return shape.at(a, b, 1);
    }
  };
  const [a, b] = [Math.min(i, 1 - STEP), Math.min(j, 1 - STEP)];
  const here = point(a, b);
  const cross = crossOf(minus(point(a + STEP, b), here), minus(point(a, b + STEP), here));
  const length = hypot(...cross);
  // Turned by each side's own order of shares.
  const sign = side === 'intrados' || side === 'upper bed' ? -1 : 1;
  return [(sign * cross[0]) / length, (sign * cross[1]) / length, (sign * cross[2]) / length];
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const crossOf = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** The releases of all moulds of a house, those of longer blocks among them. */
export function mouldReleases(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): MouldRelease[] {
  const { blocks, casting } = plan.setout.house;
  return castForms(plan, laid).map(({ id, block }) => mouldRelease(id, castShape(block, blocks), casting.bedBoards));
}

/** Whether every block comes out of its mould. */
export function releaseCheck(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): Check[] {
  const releases = mouldReleases(plan, laid);
  if (releases.length === 0) return [];
  const last = releases.map((r) => ({ mould: r.mould, step: r.steps[r.steps.length - 1] as ReleaseStep }));
  const all = releases.flatMap((r) => r.steps.map((step) => ({ mould: r.mould, step })));
  const worst = all.reduce((a, b) => (b.step.draftRad < a.step.draftRad ? b : a));
  const held = [...new Set(all.filter(({ step }) => step.draftRad < -FLAT_RAD).map(({ mould }) => mould))];
  const fixed = plan.setout.house.casting.bedBoards === 'fixed';
  const tight = fixed ? last.filter(({ step }) => step.draftRad < LEAST_DRAFT_DEG * DEG).map(({ mould }) => mould) : [];
  const state = held.length > 0 ? 'fails' : tight.length > 0 ? 'attention' : 'ok';
  const told = held.length > 0 ? held : tight;
  return [
    {
      id: 'mould-release',
      statement:
        state === 'fails'
          ? texts.blocksAreHeld
          : state === 'attention'
            ? texts.blocksSlideOutBetween
            : texts.everyBlockComesOut,
      state,
      demand: givenFigure('mould-release.least', texts.draftThatIsNeeded, fixed ? LEAST_DRAFT_DEG : 0, 'deg', {
        formula: texts.nothingMayHoldBlock,
        source: SOURCE,
      }),
      capacity: givenFigure('mould-release.draft', texts.leastDraft, worst.step.draftRad / DEG + 0, 'deg', {
        formula: texts.leastAngleBetweenSide,
        source: texts.derived,
        inputs: { mould: worst.mould, side: worst.step.tightest, moves: worst.step.moves, moulds: told.join(' ') },
      }),
      source: SOURCE,
      advice: state === 'ok' ? texts.nothingToChange : texts.setCastingBedBoards(told.join(', ')),
    },
  ];
}

/** A side turned by less than this is parallel to the way: rounding. */
const FLAT_RAD = 1e-6;
