import { formatLength, formatLevel } from '../../lib/base/measures.js';
import { measureOf } from '../../lib/documents/dimensioning.js';
import type { DimensionPrimitive, View } from '../../lib/documents/drawing.js';
import type { Sheet } from '../../lib/documents/sheet.js';
import { masonryReach } from '../../lib/drawings/extent.js';
import { crownOf, cutDome } from '../../lib/drawings/section-domes.js';
import { houseSections, type SectionPlane } from '../../lib/drawings/section-plane.js';
import { bearingWords, openingName, writtenUnits } from '../../lib/drawings/words.js';
import type { HouseSetout } from '../../lib/setout/house.js';

/** What a set of sheets has to tell, each with what tells it missing. */
interface Asked {
  readonly what: string;
  readonly told: boolean;
}

/** Sizes, levels, bearings and names that the views of a house require and its sheets don't tell. */
export function missingOn(sheets: readonly Sheet[], house: HouseSetout): string[] {
  const views = sheets.flatMap((s) => s.views.map((v) => v.view));
  const named = (id: string) => views.filter((v) => v.id === id || v.id.startsWith(`${id}-`));
  const paper = sheets
    .flatMap((s) => s.paper)
    .flatMap((p) => (p.kind === 'text' ? [p.text] : []))
    .join(' ');
  const asked = [
    ...named('plan').flatMap((view) => ofPlan(view, house, paper)),
    ...ofElevations(named('elevation'), house),
    ...houseSections(house).flatMap((plane) =>
      named(`section-${plane.mark.toLowerCase()}`).flatMap((view) => ofSection(view, plane, house, paper)),
    ),
  ];
  return asked.filter((a) => !a.told).map((a) => a.what);
}

const dims = (view: View): DimensionPrimitive[] => view.primitives.filter((p) => p.kind === 'dimension');
const wordsOf = (view: View): string =>
  view.primitives.flatMap((p) => (p.kind === 'text' || p.kind === 'leader' ? [p.text] : [])).join(' ');

/** Whether a dimension of a view measures a length; lengths that can't be told apart from nothing needn't be. */
const measured = (view: View, mm: number): boolean =>
  mm < 1 || dims(view).some((d) => d.type !== 'angle' && Math.abs(measureOf(d) - mm) < 1e-6);
const marked = (view: View, z: number): boolean =>
  view.primitives.some((p) => p.kind === 'level' && Math.abs(p.level - z) < 1);

function ofPlan(view: View, house: HouseSetout, paper: string): Asked[] {
  const units = writtenUnits(house.house);
  const size = (mm: number) => formatLength(mm, units);
  const words = `${wordsOf(view)} ${paper}`;
  const single = house.domes.length === 1;
  const marks = view.primitives.filter((p) => p.kind === 'symbol' && p.name.startsWith('section-mark')).length;
  return [
    ...house.arches.flatMap((arch): Asked[] => {
      const clear = dims(view).some(
        (d) => d.type === 'aligned' && d.prefix === 'clear ' && Math.abs(measureOf(d) - arch.section.width) < 1e-6,
      );
      return [
        { what: `plan: name of ${arch.id}`, told: words.includes(openingName(arch)) },
        { what: `plan: bearing of ${arch.id}`, told: words.includes(bearingWords(arch.opening.bearingDeg)) },
        {
          what: `plan: width of ${arch.id}`,
          told: clear || words.includes(`clear ${size(arch.section.width)}`),
        },
      ];
    }),
    ...house.domes.map((dome): Asked => {
      const radius = dims(view).some(
        (d) => d.type === 'radius' && Math.abs(measureOf(d) - dome.springingRadius) < 1e-6,
      );
      return {
        what: `plan: radius of ${dome.id}`,
        told: radius || (!single && words.includes(`R${size(dome.springingRadius)}`)),
      };
    }),
    ...house.domes.map((dome): Asked => {
      const thickness = measured(view, dome.thickness) || !single;
      return { what: `plan: wall of ${dome.id}`, told: thickness && words.includes(size(dome.thickness)) };
    }),
    ...house.passages.map((p) => ({ what: `plan: width of ${p.id}`, told: words.includes(size(p.section.width)) })),
    ...(
      [
        [1, 0],
        [0, 1],
      ] as const
    ).map((along): Asked => {
      const [a, b] = masonryReach(house, along);
      return { what: `plan: whole along ${along}`, told: measured(view, b - a) };
    }),
    { what: 'plan: marks of sections', told: marks === 2 * houseSections(house).length },
    { what: 'plan: level of its cut', told: /Cut .* above finished floor/.test(words) },
  ];
}

function ofElevations(views: readonly View[], house: HouseSetout): Asked[] {
  const { ground } = house.house.site;
  const top = Math.max(...house.domes.map((d) => d.topZ));
  const [dome] = house.domes;
  const single = house.domes.length === 1;
  return [
    ...views.flatMap((view): Asked[] => {
      const across = /north|south/.test(view.id) ? ([1, 0] as const) : ([0, 1] as const);
      const [a, b] = masonryReach(house, across);
      const levels = [ground, 0, ...(dome && single ? [dome.springingZ, dome.topZ] : [])];
      return [
        { what: `${view.id}: whole width`, told: measured(view, b - a) },
        { what: `${view.id}: whole height`, told: measured(view, top - ground) },
        ...levels.map((z) => ({ what: `${view.id}: level ${formatLevel(z, 'metric')}`, told: marked(view, z) })),
      ];
    }),
    // Each falls within 45 degrees of one of the four; in a yard other domes may hide it, and the schedule tells it.
    ...house.arches
      .filter((arch) => single && arch.clear.kind === 'through')
      .map(({ id, section }) => ({
        what: `elevations: height of ${id}`,
        told: views.some((view) => measured(view, section.crownZ - section.sill)),
      })),
  ];
}

function gapsOf(places: readonly number[]): number[] {
  const sorted = [...places].sort((a, b) => a - b);
  return sorted.slice(1).map((x, i) => x - (sorted[i] as number));
}

function ofSection(view: View, plane: SectionPlane, house: HouseSetout, paper: string): Asked[] {
  const units = writtenUnits(house.house);
  const [footing] = house.footings;
  const [slab] = house.slabs;
  const { ground } = house.house.site;
  const cut = plane.domes.map((dome) => cutDome(house, plane, dome));
  const size = (what: string, mm: number): Asked => ({ what: `${view.id}: ${what}`, told: measured(view, mm) });
  const level = (what: string, z: number): Asked => ({ what: `${view.id}: level of ${what}`, told: marked(view, z) });
  return [
    level('ground', ground),
    level('floor', 0),
    size('whole height', Math.max(...plane.domes.map((d) => d.topZ)) - ground),
    ...(footing ? [size('depth of footing', -footing.bottomZ)] : []),
    ...(slab ? [size('slab', -slab.bottomZ)] : []),
    ...cut.flatMap(({ dome, faces, footing: bare, arches }): Asked[] => [
      level(`springing of ${dome.id}`, dome.springingZ),
      level(`crown of ${dome.id}`, crownOf(dome)),
      level(`top of ${dome.id}`, dome.topZ),
      size(`stem wall of ${dome.id}`, dome.springingZ),
      size(`rise of ${dome.id}`, crownOf(dome) - dome.springingZ),
      size(`crown of ${dome.id}`, dome.topZ - crownOf(dome)),
      ...gapsOf(faces).map((gap, i) => size(`face ${i} of ${dome.id}`, gap)),
      ...(bare && dome === cut.find((c) => c.footing)?.dome ? [size('footing', bare[1] - bare[0])] : []),
      ...arches.flatMap(({ id, section }) => [
        size(`height of ${id}`, section.crownZ - section.sill),
        level(`head of ${id}`, section.crownZ),
        level(`sill of ${id}`, section.sill),
      ]),
      ...(dome.curb
        ? [
            size(`oculus of ${dome.id}`, 2 * dome.curb.clearRadius),
            size(`curb of ${dome.id}`, dome.curb.bedOuter[0] - dome.curb.clearRadius),
            {
              what: `curb of ${dome.id} inside`,
              told: paper.includes(
                `${formatLength(dome.shell.at(dome.curb.bedS).r - dome.curb.clearRadius, units)} at the intrados`,
              ),
            },
          ]
        : []),
    ]),
  ];
}
