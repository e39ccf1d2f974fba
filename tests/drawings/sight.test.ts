import { describe, expect, it } from 'vitest';
import type { Vec2, Vec3 } from '../../lib/math/vec.js';
import { inMaterial, levelMaterial } from '../../lib/setout/material.js';
import { randomClusters, samples, variety } from './houses.js';
import { FAR, type Pictured, PLAN_CUT, pictured, placesOn, randoms } from './oracle.js';

/** Whether what is seen jumps or bends across a line: depths at 1 and 3 mm on both sides. */
function breaks({ depthAt }: Pictured, at: Vec2, across: Vec2): boolean {
  const depth = (d: number) => depthAt([at[0] + d * across[0], at[1] + d * across[1]]);
  const [a, b, c, d] = [depth(-3), depth(-1), depth(1), depth(3)];
  if (b === c) return a !== b || c !== d;
  if (![a, b, c, d].every(Number.isFinite)) return true;
  const [before, over, after] = [(b - a) / 2, (c - b) / 2, (d - c) / 2];
  // On a smooth face the middle slope lies between its neighbours; at a crease or jump it doesn't, or they differ.
  return Math.abs(over) > 3 * Math.max(Math.abs(before), Math.abs(after)) + 0.05 || Math.abs(after - before) > 0.03;
}

/** Largest change of depth over 3 mm within a distance; in a smooth face that runs away steeply it is small. */
function largestStep({ depthAt }: Pictured, at: Vec2, reach: number): number {
  let most = 0;
  for (const [dx, dy] of [
    [1, 0],
    [0, 1],
  ] as const) {
    let before = depthAt([at[0] - reach * dx, at[1] - reach * dy]);
    for (let d = 3 - reach; d <= reach; d += 3) {
      const depth = depthAt([at[0] + d * dx, at[1] + d * dy]);
      // Nothing behind nothing is no change.
      if (depth !== before) most = Math.max(most, Math.abs(depth - before));
      before = depth;
    }
  }
  return most;
}

const atFloor = ({ name, depthAt }: Pictured, at: Vec2): boolean =>
  name === 'plan' ? Math.abs(depthAt(at) - PLAN_CUT) < 1 : Math.abs(at[1]) < 1;

const text = (at: Vec2): string => at.map((v) => v.toFixed(1)).join(', ');

describe('what figures show', () => {
  const houses = [...variety(), ...samples().filter(([, house]) => house.domes.length > 1), ...randomClusters(6, 99)];
  const made = new Map(houses.map(([name, house]) => [name, pictured(house)]));
  const figures = (name: string): Pictured[] => made.get(name) ?? [];

  it.each(houses)('rays and points agree on what is solid: %s', (_, house) => {
    const random = randoms(5);
    for (let i = 0; i < 60; i++) {
      const turn = random() * 2 * Math.PI;
      const direction: Vec2 = [Math.cos(turn), Math.sin(turn)];
      const [mx, my] = house.domes[i % house.domes.length]?.at ?? [0, 0];
      const origin: Vec2 = [mx + (random() - 0.5) * 7000, my + (random() - 0.5) * 7000];
      const z = -300 + random() * 4300;
      const solid = levelMaterial(house, z, origin, direction);
      for (let j = 0; j < 20; j++) {
        const t = (random() - 0.5) * 9000;
        if (solid.some(([a, b]) => Math.abs(t - a) < 0.01 || Math.abs(t - b) < 0.01)) continue;
        const p: Vec3 = [origin[0] + t * direction[0], origin[1] + t * direction[1], z];
        expect([p, inMaterial(house, p)]).toEqual([p, solid.some(([a, b]) => t > a && t < b)]);
      }
    }
  });

  it.each(houses)('every drawn edge parts two faces or two depths: %s', (name) => {
    const random = randoms(7);
    const wrong: string[] = [];
    let looked = 0;
    for (const figure of figures(name)) {
      for (const { at, across } of placesOn(figure.primitives, ['visible'], 120)) {
        if (random() > 0.5) continue;
        // Between parts that are both cut, and at the floor's level, a line may part materials in one face.
        if (figure.depthAt(at) === 0 || atFloor(figure, at)) continue;
        looked++;
        if (!breaks(figure, at, across)) wrong.push(`${figure.name}, at ${text(at)}`);
      }
    }
    expect(looked).toBeGreaterThan(25);
    expect(wrong).toEqual([]);
  });

  it.each(houses)('no jump in depth is left undrawn: %s', (name) => {
    const random = randoms(11);
    const wrong: string[] = [];
    const reach = 12;
    let jumps = 0;
    for (const figure of figures(name)) {
      const drawn = placesOn(figure.primitives, ['visible', 'cut', 'ground'], 8).map((p) => p.at);
      for (let i = 0; i < 400; i++) {
        const { low, high } = figure;
        const at: Vec2 = [low[0] + random() * (high[0] - low[0]), low[1] + random() * (high[1] - low[1])];
        const jump = largestStep(figure, at, reach);
        if (jump < 300) continue;
        jumps++;
        if (!drawn.some((p) => Math.hypot(p[0] - at[0], p[1] - at[1]) < reach + 6))
          wrong.push(`${figure.name}, at ${text(at)}: ${jump.toFixed(0)}`);
      }
    }
    expect(jumps).toBeGreaterThan(10);
    expect(wrong).toEqual([]);
  });

  it.each(houses)('every joint lies on the wall’s face that is seen: %s', (name, house) => {
    const random = randoms(3);
    let looked = 0;
    const wrong: string[] = [];
    const [south] = figures(name);
    if (!south) throw new Error('a house has a south elevation');
    for (const { at } of placesOn(south.primitives, ['joint'], 200)) {
      if (random() > 0.15) continue;
      looked++;
      const [x, y] = [at[0], south.depthAt(at) - FAR];
      const onFace = house.domes.some((d) => {
        const r = Math.hypot(x - d.at[0], y - d.at[1]);
        return Math.abs(r - d.outerRadiusAt(at[1])) < 1 || Math.abs(r - d.radiusAt(at[1])) < 1;
      });
      if (!onFace) wrong.push(text(at));
    }
    expect(looked).toBeGreaterThan(20);
    expect(wrong).toEqual([]);
  });
});
