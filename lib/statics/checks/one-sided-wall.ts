import { type Check, type Figure, givenFigure } from '../../base/figures.js';
import * as texts from '../../base/texts/statics-shell.js';
import type { HouseSetout } from '../../setout/house.js';
import type { DomeStatics, Statics } from '../results.js';
import type { WallDemand } from '../wall-demand.js';
import { computed, ratioOf, SAFE_THEOREM, stockierShape } from './judge.js';

/** A demand under one load or combination; `null` where no thrust fits. */
interface Found {
  readonly under: string;
  readonly value: number | null;
}

/** What a check of the wall under loads from one side says. */
interface Asked {
  readonly id: string;
  readonly statement: string;
  readonly found: readonly Found[];
  readonly demand: readonly [label: string, unit: string, formula: string];
  readonly capacity: Figure;
  /** State where the demand is greater, and what to change then. */
  readonly beyond: 'attention' | 'fails';
  readonly change: string;
  readonly advice: string;
  readonly source?: string;
}

/**
 * Stress, joints and footing of a dome under loads from one side: the stress on the line of thrust that is least hard,
 * the others on those that keep farthest from the faces. Estimates; what lacks an input is asked for where dead load and snow are judged.
 */
export function oneSidedWallChecks(setout: HouseSetout, found: DomeStatics, { strength }: Statics): Check[] {
  const { site, material } = setout.house;
  const combined = found.oneSided.flatMap((one) => one.combined);
  if (combined.length === 0) return [];
  const underEach = (of: (wall: WallDemand) => number): Found[] =>
    combined.map(({ formula, wall }) => ({ under: formula, value: wall && of(wall) }));
  const asked: Asked[] = [];
  const capacityOf = (id: string, label: string, value: number, unit: string) =>
    givenFigure(`${id}.capacity`, label, value, unit);
  if (strength) {
    const id = `one-sided-stress.${found.id}`;
    asked.push({
      id,
      statement: texts.wallBearsOneSided(found.id),
      found: underEach((wall) => wall.stressMpa),
      demand: [texts.greatestCompression, 'MPa', texts.stressOfLine],
      capacity: computed(
        `${id}.capacity`,
        texts.designStrengthOfMasonry,
        strength.designMpa,
        'MPa',
        texts.masonryStrengthFormula,
        texts.masonryStrengthSource,
        { 'block strength fb (MPa)': strength.blockMpa, 'partial factor': material.partialFactor },
      ),
      beyond: 'fails',
      change: texts.noLineIsBorne(stockierShape(found)),
      advice: texts.hingesMayCrush,
      source: texts.stressOfLineSource(SAFE_THEOREM),
    });
  }
  const joints = `one-sided-sliding.${found.id}`;
  asked.push({
    id: joints,
    statement: texts.jointsHoldOneSided(found.id),
    found: underEach((wall) => wall.friction),
    demand: [texts.frictionNeeded, '1', texts.frictionOfLine],
    capacity: capacityOf(joints, texts.frictionCounted, material.friction, '1'),
    beyond: 'attention',
    change: texts.steadierJoints(stockierShape(found)),
    advice: texts.anotherLineMayNeedLess,
  });
  const gathered = Math.max(found.footing?.gathering ?? 1, found.footing?.jamb?.times ?? 1);
  const pressures = found.oneSided.map(({ load, pressureKpa }) => ({
    under: texts.deadLoadAnd(load),
    value: pressureKpa === null ? null : pressureKpa * gathered,
  }));
  if (found.footing && site.bearingCapacityKpa !== null) {
    const id = `one-sided-bearing.${found.id}`;
    asked.push({
      id,
      statement: texts.soilBearsOneSided(found.id),
      found: pressures,
      demand: [texts.pressureOneSided, 'kPa', texts.pressureOfLine],
      capacity: capacityOf(id, texts.bearingCapacity, site.bearingCapacityKpa, 'kPa'),
      beyond: 'fails',
      change: texts.widerFooting,
      advice: texts.estimateOnWholeLunes,
    });
  }
  return asked.map(judged);
}

function judged({ id, statement, found, capacity, ...asked }: Asked): Check {
  const { beyond, change, advice, source = SAFE_THEOREM } = asked;
  const [label, unit, formula] = asked.demand;
  const worst = found.reduce<Found | null>(
    (most, one) => (one.value !== null && (most === null || one.value > (most.value ?? 0)) ? one : most),
    null,
  );
  const without = found.find(({ value }) => value === null);
  const demand = computed(`${id}.demand`, label, worst?.value ?? 0, unit, formula, source, {
    kind: 'estimate',
    ...(worst ? { 'worst under': worst.under } : {}),
  });
  const over = worst?.value != null && worst.value > capacity.value;
  return {
    id,
    statement,
    state: over ? beyond : 'attention',
    ...(worst?.value == null ? {} : { demand, ratio: ratioOf(worst.value, capacity.value) }),
    capacity,
    source,
    advice: `${advice}${over ? ` ${change}` : ''}${without ? texts.noThrustUnder(without.under) : ''}`,
  };
}
