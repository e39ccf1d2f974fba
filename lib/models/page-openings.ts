import { formatLength } from '../base/measures.js';
import * as texts from '../base/texts/model-scene.js';
import { DEFAULT_SURFACE } from '../base/tolerances.js';
import type { PageDimension, PageOpening } from '../documents/model-page.js';
import type { Section } from '../math/section.js';
import type { Vec2, Vec3 } from '../math/vec.js';
import type { ArchSetout } from '../setout/arch.js';
import type { HouseSetout } from '../setout/house.js';
import type { PassageSetout } from '../setout/passage.js';
import { sectionPolygon } from '../solids/sections.js';

/** Dimensions stand this far out of the face and beside the ring, mm. */
const CLEAR_OF = 60;
const BESIDE = 150;

/** A length as dimensions tell it; metric ones with their unit, since nothing beside them names it. */
export type Wording = (mm: number) => string;

export const wordingOf = (units: HouseSetout['house']['units']): Wording =>
  units === 'ft' || units === 'in'
    ? (mm) => formatLength(mm, 'feet-inches')
    : (mm) => `${formatLength(mm, 'metric')} mm`;

/** Openings and then passages, each with its sizes where it stands. */
export function pageOpenings(setout: HouseSetout): PageOpening[] {
  const say = wordingOf(setout.house.units);
  return [...setout.arches.map((arch) => openingOf(arch, say)), ...setout.passages.map((p) => passageOf(p, say))];
}

function openingOf(arch: ArchSetout, say: Wording): PageOpening {
  const { opening, section, ring } = arch;
  const niche = opening.use === 'niche';
  const v = faceOf(arch) + (niche ? -CLEAR_OF : CLEAR_OF);
  const place = placeIn(arch.dome.at, arch.along, arch.across, v);
  return {
    name: arch.id,
    facts: [
      [texts.what, opening.use],
      ...sizesOf(section, say),
      [texts.ring, say(ring)],
      [texts.madeAs, opening.arch.madeAs === 'cast' ? texts.castInOne : texts.voussoirsCount(opening.arch.voussoirs)],
      ...(opening.depth === null ? [] : ([[texts.depth, say(opening.depth)]] as const)),
    ],
    dimensions: dimensionsOf(section, ring, place, say),
    pane: paneOf(section, place),
    middle: place(0, (section.sill + section.crownZ) / 2),
    fromRad: niche ? arch.bearingRad + Math.PI : arch.bearingRad,
  };
}

function passageOf(passage: PassageSetout, say: Wording): PageOpening {
  const { section, domes, ring } = passage;
  const [from, to] = passage.stretchAt(0, section.springingZ);
  const place = placeIn(domes[0].at, passage.along, passage.across, (from + to) / 2);
  return {
    name: passage.id,
    facts: [[texts.what, 'passage'], ...sizesOf(section, say), [texts.ring, say(ring)]],
    dimensions: dimensionsOf(section, ring, place, say),
    pane: [],
    middle: place(0, section.crownZ / 2),
    fromRad: passage.bearingRad + Math.PI / 2,
  };
}

/** Distance from the axis of the face that one looks at: flat face, extrados at mid-height, or a niche's intrados. */
function faceOf({ dome, section, faceV, opening }: ArchSetout): number {
  const z = (section.sill + section.crownZ) / 2;
  const v = opening.use === 'niche' ? dome.radiusAt(z) : (faceV ?? dome.outerRadiusAt(z));
  return Number.isNaN(v) ? dome.springingRadius : v;
}

type Place = (u: number, z: number) => Vec3;

const placeIn =
  (at: Vec2, along: Vec2, across: Vec2, v: number): Place =>
  (u, z) => [at[0] + along[0] * v + across[0] * u, at[1] + along[1] * v + across[1] * u, z];

const sizesOf = (section: Section, say: Wording): [string, string][] => [
  ['width', say(section.width)],
  ['height', say(section.crownZ - section.sill)],
  ...(section.sill > 0 ? ([['sill', say(section.sill)]] as [string, string][]) : []),
  ['head', section.head.shape],
];

function dimensionsOf(section: Section, ring: number, place: Place, say: Wording): PageDimension[] {
  const { sill, crownZ, width, springingZ } = section;
  const half = width / 2;
  const beside = half + ring + BESIDE;
  const dimension = (from: Vec3, to: Vec3, mm: number): PageDimension => ({ from, to, text: say(mm) });
  const level = Math.min(springingZ, sill + (crownZ - sill) / 3);
  return [
    dimension(place(-half, level), place(half, level), width),
    dimension(place(beside, sill), place(beside, crownZ), crownZ - sill),
    ...(sill > 0 ? [dimension(place(beside, 0), place(beside, sill), sill)] : []),
  ];
}

const paneOf = (section: Section, place: Place): Vec3[] =>
  sectionPolygon(section, 0, section.sill, 4 * DEFAULT_SURFACE, { bottom: '', sides: '' }).points.map(([u, z]) =>
    place(u, z),
  );
