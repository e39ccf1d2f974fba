import { describe, expect, it } from 'vitest';
import { cutOf } from '../../lib/drawings/cut.js';
import { type Part, partAt } from '../../lib/drawings/parts.js';
import { planFigure } from '../../lib/drawings/plan-figure.js';
import { sectionPlane } from '../../lib/drawings/section-plane.js';
import { sliceLevel } from '../../lib/drawings/slice-level.js';
import { uprightCut } from '../../lib/drawings/upright-cut.js';
import { loopsArea } from '../../lib/math/curves.js';
import { intervalsLength } from '../../lib/math/intervals.js';
import { integrateSoftEnds } from '../../lib/math/quadrature.js';
import type { Vec2 } from '../../lib/math/vec.js';
import { type HouseSetout, setOutHouse } from '../../lib/setout/house.js';
import { levelMaterial } from '../../lib/setout/material.js';
import { domeOf, houseOf, openingOf } from '../tools/house.js';
import { variety } from './houses.js';

const close = (value: number, exact: number, relative = 1e-6) =>
  expect(Math.abs(value / exact - 1), `${value} against ${exact}`).toBeLessThan(relative);

/** Area in a circle between the lines u = ±half, on one side of the axis: r² asin(h/r) + h √(r² − h²). */
const strip = (r: number, half: number) => r * r * Math.asin(half / r) + half * Math.sqrt(r * r - half * half);

describe('cut of a plan', () => {
  const at = 1200;
  const area = (house: HouseSetout, part?: Part) => loopsArea(planFigure(house, at).cut.loops(part));
  // Hemisphere of 3 m on 0.6 m: the cut lies 0.6 m above the springing.
  const [inner, outer] = [Math.sqrt(3000 ** 2 - 600 ** 2), Math.sqrt(3250 ** 2 - 600 ** 2)];

  it('is an annulus without openings', () => {
    close(area(setOutHouse(houseOf())), Math.PI * (outer ** 2 - inner ** 2), 1e-12);
  });

  it('loses a door, wins a barrel, and parts blocks from cast jambs', () => {
    for (const bearingDeg of [0, 37.3, 180, 359.9]) {
      const house = setOutHouse(houseOf({ openings: [openingOf({ bearingDeg })] }));
      const [half, ring, face] = [500, 200, 3550];
      const annulus = Math.PI * (outer ** 2 - inner ** 2);
      const blocks = annulus - (strip(outer, half + ring) - strip(inner, half + ring));
      const jambs = 2 * ring * face - (strip(inner, half + ring) - strip(inner, half));
      close(area(house, 'blocks'), blocks, 1e-9);
      close(area(house, 'arch'), jambs, 1e-9);
      close(area(house), blocks + jambs, 1e-9);
    }
  });

  it('keeps the wall behind a niche', () => {
    const arch = { ring: 150, face: 'flush', madeAs: 'cast', voussoirs: null } as const;
    const house = setOutHouse(
      houseOf({
        openings: [
          openingOf({
            use: 'niche',
            width: 800,
            height: 700,
            sill: 900,
            depth: 100,
            head: { shape: 'flat', rise: 0 },
            arch,
          }),
        ],
      }),
    );
    const back = Math.sqrt(3100 ** 2 - 600 ** 2);
    close(area(house), Math.PI * (outer ** 2 - inner ** 2) - (strip(back, 400) - strip(inner, 400)), 1e-9);
  });

  it.each(variety())('has the area that level rays measure: %s', (_, house) => {
    for (const z of [300, 1200, 1700]) {
      const edges = sliceLevel(house, z);
      const cut = cutOf(edges, ([x, y]) => partAt(house, [x, y, z]));
      // Rays along +y at x; panels end wherever an outline may begin, turn or end.
      const stops = new Set<number>();
      for (const dome of house.domes) {
        const radii = [dome.radiusAt(z), dome.outerRadiusAt(z), dome.curb?.clearRadius ?? 0];
        for (const arch of house.arches)
          if (arch.clear.kind === 'parallel') radii.push(dome.radiusAt(z, arch.clear.depth));
        for (const r of radii) for (const s of [-1, 1]) stops.add(dome.at[0] + s * r);
      }
      for (const { edge } of cut.borders) {
        for (const p of edge.kind === 'line'
          ? [edge.from, edge.to]
          : [edge.start, edge.end].map(
              (a): Vec2 => [edge.centre[0] + edge.radius * Math.cos(a), edge.centre[1] + edge.radius * Math.sin(a)],
            ))
          stops.add(p[0]);
      }
      const xs = [...stops].filter(Number.isFinite).sort((a, b) => a - b);
      const measured = xs.slice(1).reduce((sum, x, i) => {
        const from = xs[i] as number;
        if (x - from < 1e-6) return sum;
        return sum + integrateSoftEnds((t) => intervalsLength(levelMaterial(house, z, [t, 0], [0, 1])), from, x, 24);
      }, 0);
      close(loopsArea(cut.loops()), measured);
      const parts = (['blocks', 'arch', 'skewback', 'curb', 'plug'] as const).map((p) => loopsArea(cut.loops(p)));
      close(
        parts.reduce((a, b) => a + b, 0),
        measured,
      );
    }
  });
});

describe('cut of a section', () => {
  const masonry = ['blocks', 'arch', 'skewback', 'curb', 'plug'] as const;

  it('is half an annulus on two stems for a hemisphere', () => {
    const house = setOutHouse(houseOf());
    const cut = uprightCut(house, sectionPlane(house));
    const area = masonry.reduce((sum, p) => sum + loopsArea(cut.loops(p)), 0);
    close(area, (Math.PI / 2) * (3250 ** 2 - 3000 ** 2) + 2 * 250 * 600, 1e-9);
    close(loopsArea(cut.loops('footing')), 2 * 500 * 400, 1e-9);
  });

  it('of a hemisphere beside its axis is half an annulus of the smaller circles', () => {
    const house = setOutHouse(houseOf({ domes: [domeOf({ stemWall: 0 })], footing: null, slab: null }));
    for (const off of [400, 1500, 2800]) {
      const cut = uprightCut(house, { through: [off, 0], right: [0, 1] });
      // Two spheres cut at the distance c: √(R² − c²).
      const area = masonry.reduce((sum, p) => sum + loopsArea(cut.loops(p)), 0);
      close(area, (Math.PI / 2) * (3250 ** 2 - 3000 ** 2), 1e-6);
    }
  });

  it.each(variety())('has the area that level rays measure: %s', (_, house) => {
    for (const bearingDeg of [sectionPlane(house).bearingDeg, 17]) {
      const plane = sectionPlane(house, { bearingDeg });
      const cut = uprightCut(house, plane);
      const stops = new Set<number>([0]);
      for (const { edge } of cut.borders) {
        if (edge.kind === 'line') for (const p of [edge.from, edge.to]) stops.add(p[1]);
        else for (const a of [edge.start, edge.end]) stops.add(edge.centre[1] + edge.radius * Math.sin(a));
      }
      for (const d of house.domes) for (const z of [d.crownZ, d.topZ, d.springingZ]) stops.add(z);
      const zs = [...stops].sort((a, b) => a - b);
      const measured = zs.slice(1).reduce((sum, z, i) => {
        const from = zs[i] as number;
        if (z - from < 1e-4) return sum;
        return (
          sum +
          integrateSoftEnds((t) => intervalsLength(levelMaterial(house, t, plane.through, plane.right)), from, z, 24)
        );
      }, 0);
      close(loopsArea(cut.loops()), measured);
    }
  });
});
