import { writtenUnit } from '../../base/reader-units.js';
import { CAUTIONS } from '../../base/texts/cautions.js';
import * as texts from '../../base/texts/drawing-sheets.js';
import { formatLength, formatQuantity } from '../../base/units.js';
import type { Column, Table } from '../../documents/table.js';
import type { HouseSetout } from '../../setout/house.js';
import type { HandedOver } from '../handed.js';
import { roomNames } from '../plan-rooms.js';
import { areaWords, writtenUnits } from '../words.js';
import type { TextPart } from './text-parts.js';

const column = (key: string, label: string): Column => ({ key, label, kind: 'text' });

const pairs = (id: string, title: string, rows: readonly (readonly [string, string])[]): Table => ({
  id,
  title,
  columns: [column('what', texts.what), column('value', texts.value)],
  rows: rows.map(([what, value]) => ({ what, value })),
});

const NOT_GIVEN = texts.notGiven;

/** Whose house it is, where, and what it consists of. */
export function projectTable(setout: HouseSetout, handed: HandedOver): Table {
  const { house, domes, arches, passages } = setout;
  const { project } = house;
  const size = (mm: number) => formatLength(mm, house.units);
  const said: (readonly [string, string])[] = [
    [texts.project, project.title],
    [texts.number, project.number],
    [texts.address, project.address],
    [texts.client, project.client],
    [texts.drawnBy, project.drawnBy],
    [texts.date, project.date ?? texts.undated],
    [texts.revision, project.revision],
  ];
  return pairs('project', texts.projectTitle, [
    ...said.filter(([, value]) => value !== ''),
    [texts.domes, domes.map((d) => `${d.id} (${roomNames(setout, d).join(', ')})`).join('; ')],
    [texts.openingsCount, arches.length === 0 ? texts.none : String(arches.length)],
    ...(passages.length > 0 ? [[texts.passages, passages.map((p) => p.id).join(', ')] as const] : []),
    [texts.heightAboveGround, size(Math.max(...domes.map((d) => d.topZ)) - house.site.ground)],
    ...(handed.roomFloor > 0
      ? [[texts.netFloorAllRooms, areaWords(handed.roomFloor, writtenUnits(house))] as const]
      : []),
    [texts.finishedFloorAboveGround, size(-house.site.ground)],
  ]);
}

/** What the house is to bear, as the description gives it. */
export function loadTable({ house }: HouseSetout): Table {
  const { site } = house;
  const pressure = (kpa: number | null) => (kpa === null ? NOT_GIVEN : formatQuantity(kpa, 'pressure', house.units));
  const plain = (value: number | null) => (value === null ? NOT_GIVEN : String(value));
  return pairs('loads', texts.designLoadsAndGround, [
    [texts.snowOnGround, pressure(site.snowKpa)],
    [texts.windPressure, pressure(site.windKpa)],
    [texts.windCoefficients, site.windCoefficients === null ? NOT_GIVEN : site.windCoefficients.join(', ')],
    [texts.horizontalEarthquakePart, plain(site.seismicCoefficient)],
    ...(site.seismicVertical === null ? [] : [[texts.uprightEarthquakePart, plain(site.seismicVertical)] as const]),
    [texts.combinedBy, site.combinations],
    [texts.soilMayCarry, pressure(site.bearingCapacityKpa)],
    [texts.frictionOfFooting, plain(site.soilFriction)],
    [texts.frostDepthBelowGround, site.frostDepth === null ? NOT_GIVEN : formatLength(site.frostDepth, house.units)],
  ]);
}

/** What the house is made of, as the description gives it. */
export function materialTable({ house }: HouseSetout): Table {
  const { material: m, wall, blocks, footing, slab, tie, units } = house;
  const size = (mm: number) => formatLength(mm, units);
  const mpa = (value: number) =>
    units === 'ft' || units === 'in' ? `${Number((value * 145.0377).toPrecision(4))} psi` : `${value} MPa`;
  const density = (value: number) => writtenUnit(formatQuantity(value, 'density', units));
  return pairs('materials', texts.materialsTitle, [
    [texts.blocksCastCellularConcrete, texts.dryDensity(density(m.dryDensity))],
    [
      texts.strengthOfBlocks,
      m.compressiveStrengthMpa === null ? texts.notGivenTestCubes : texts.meanStrength(mpa(m.compressiveStrengthMpa)),
    ],
    [texts.waterToCementSand, `${m.waterCement}; ${m.sandCement}`],
    [texts.wall, texts.coursesJoints(size(wall.thickness), size(blocks.courseHeight), size(blocks.joint))],
    [texts.mortar, texts.strengthDensity(mpa(m.mortarStrengthMpa), density(m.mortarDensity))],
    [
      texts.render,
      texts.insideOutsideDensity(size(wall.renderInside), size(wall.renderOutside), density(m.renderDensity)),
    ],
    [texts.footing, footing ? texts.concreteRingWideBelow(size(footing.width), size(footing.depth)) : texts.none],
    [texts.floorSlab, slab ? texts.concreteSlab(size(slab.thickness)) : texts.none],
    [
      texts.ringTie,
      tie === null
        ? texts.notDescribed
        : tie === 'none'
          ? texts.none
          : texts.closedHoopOfBars(
              tie.bars,
              size(tie.diameter),
              mpa(tie.yieldMpa),
              tie.lap === null ? '' : texts.lapLength(size(tie.lap)),
            ),
    ],
  ]);
}

/** What holds for every sheet of the set. */
export const generalNotes = ({ house }: HouseSetout): TextPart => ({
  heading: texts.generalNotes,
  paragraphs: [
    texts.figuredDimensionsGovernOver,
    texts.bearingsAreClockwise,
    texts.marksOpeningsPassages,
    texts.setOutEachDome(house.rooms.length),
    texts.detailsFollowCommonPractice,
    texts.coursesAreLaidRing,
    texts.whereDrawingAndTable,
  ],
});

export const cautionPart: TextPart = { heading: texts.cautions, paragraphs: CAUTIONS };
