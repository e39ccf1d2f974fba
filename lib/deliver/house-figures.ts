import type { Check, CheckState } from '../base/figures.js';
import type { House } from '../description/house.js';
import { floorArea } from '../dwelling/dwelling.js';
import { judged } from './judged.js';
import { type Study, study } from './study.js';

/** What a house is chosen by. */
export interface HouseFigures {
  /** Inside the finished walls, m2. */
  readonly floor: number;
  readonly blocks: number;
  readonly moulds: number;
  /** Masonry, m3. */
  readonly masonry: number;
  /** Of the materials; `null` while a price or a quantity is missing. */
  readonly cost: number | null;
  /** Three letters; empty without prices. */
  readonly currency: string;
  /** Least geometric factor of safety of domes, arches and piers; `null` where none could be computed. */
  readonly safety: number | null;
  readonly fails: number;
  readonly attention: number;
  readonly worst: WorstCheck | null;
}

/** The check that is farthest from well. */
export interface WorstCheck {
  readonly id: string;
  readonly state: CheckState;
  /** Demand over capacity; `null` where the check isn't about two numbers. */
  readonly ratio: number | null;
  readonly statement: string;
}

/** The figures of one house. Takes what its checks take: everything but drawings and solids. */
export function houseFigures(house: House): HouseFigures {
  const known = study(house);
  return figuresOf(known, judged(known).checks);
}

/** The same of what is known already. */
export function figuresOf(known: Study, checks: readonly Check[]): HouseFigures {
  const { plan, laid, balance, works, setout } = known;
  // A geometric factor is the capacity of the check that asks for it.
  const factors = checks.flatMap(({ id, capacity }) => (capacity?.id === `${id}.factor` ? [capacity.value] : []));
  const worst = worstOf(checks);
  return {
    floor: floorArea(setout),
    blocks: laid.blocks.length,
    moulds: plan.moulds.moulds.length,
    masonry: balance.envelope / 1e9,
    cost: works.bill.total,
    currency: works.bill.currency,
    safety: factors.length > 0 ? Math.min(...factors) : null,
    fails: checks.filter((check) => check.state === 'fails').length,
    attention: checks.filter((check) => check.state === 'attention').length,
    worst,
  };
}

const RANK: Readonly<Record<CheckState, number>> = { fails: 2, attention: 1, ok: 0 };

/** The worst state, and of these the greatest demand over capacity. */
function worstOf(checks: readonly Check[]): WorstCheck | null {
  const [worst] = [...checks].sort((a, b) => RANK[b.state] - RANK[a.state] || (b.ratio ?? 0) - (a.ratio ?? 0));
  if (!worst) return null;
  return { id: worst.id, state: worst.state, ratio: worst.ratio ?? null, statement: worst.statement };
}
