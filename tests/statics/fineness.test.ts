import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readDescription } from '../../lib/description/read.js';
import { setOutHouse } from '../../lib/setout/house.js';
import { domeThrust } from '../../lib/statics/dome-thrust.js';
import { unitLoads } from '../../lib/statics/loads.js';
import { luneOf } from '../../lib/statics/lune.js';
import { strengthOf } from '../../lib/statics/strength.js';
import { placeTie } from '../../lib/statics/tie.js';
import { drift, earthquake } from '../../lib/statics/unsymmetrical.js';
import { cutLevel } from '../../lib/statics/voids.js';

const SAMPLES = readdirSync('samples').filter((name) => /^[a-z-]+\.yaml$/.test(name));

/** Every geometric factor of a sample's domes, and what part of each load from one side they bear, with so many sections. */
function factors(name: string, sections?: number): Map<string, number> {
  const setout = setOutHouse(readDescription(readFileSync(`samples/${name}`, 'utf8'), name));
  const { wall, site, material } = setout.house;
  const strengthMpa = strengthOf(material)?.designMpa ?? null;
  const found = new Map<string, number>();
  for (const dome of setout.domes) {
    const cutZ = cutLevel(setout, dome);
    const tie = placeTie(setout, dome, cutZ);
    const lune = luneOf(dome, unitLoads(setout, dome), {
      ...wall,
      footing: setout.footings.find((f) => f.domeId === dome.id) ?? null,
      ...(tie && { tieZ: tie.z }),
      ...(sections !== undefined && { sections }),
    });
    found.set(`${dome.id} thrust`, domeThrust(lune, cutZ, tie).factor);
    found.set(`${dome.id} without tie`, domeThrust(lune, cutZ, null).factor);
    const standing = { lune, tie, cutZ, strengthMpa, friction: material.friction };
    const sided = [...(site.snowKpa ? [drift(standing, site)] : []), earthquake(standing, 0.05, site)];
    for (const { load, factor, combined } of sided) {
      found.set(`${dome.id} ${load}`, factor);
      for (const [i, one] of combined.entries()) found.set(`part of ${load} ${i} on ${dome.id}`, one.borne ?? 0);
    }
  }
  return found;
}

describe('sections of a dome', () => {
  it.each(SAMPLES)('as many again move no factor by 1e-4, and no part of a load by 6e-4 of it: %s', (name) => {
    const finer = factors(name, 480);
    const moved = [...factors(name)].filter(([of, factor]) => {
      const by = Math.abs(factor - (finer.get(of) as number));
      return of.startsWith('part') ? by >= 6e-4 * factor && by > 0 : by >= 1e-4;
    });
    expect(moved).toEqual([]);
    expect(finer.size).toBeGreaterThanOrEqual(3);
  });
});
