import { CAUTION } from '../base/texts/cautions.js';
import * as texts from '../base/texts/table-setting-out.js';
import type { Table } from '../documents/table.js';
import { DEG } from '../math/vec.js';
import type { DomeSetout } from '../setout/dome.js';
import type { HouseSetout } from '../setout/house.js';
import { templateBoards, templatePoints } from '../works/meridian-template.js';
import { poleSettings, rigOf } from '../works/radius-pole.js';
import { countColumn, degreesColumn, numberColumn, tableUnits, textColumn } from './units.js';

const templated = (house: HouseSetout): DomeSetout[] => house.domes.filter((d) => rigOf(d).kind === 'template');

/** How the pole is set for each course of each dome. */
export function poleTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  const length = (mm: number | null) => (mm === null ? null : site.of(mm));
  return {
    id: 'radius-pole',
    title: texts.radiusPole,
    columns: [
      textColumn('dome', texts.dome),
      textColumn('sets', texts.sets),
      countColumn('course', texts.course),
      numberColumn('pivot-level', texts.pivotAboveFloor, site),
      numberColumn('arm', texts.pivotBeyondAxisAway, site),
      numberColumn('length', texts.polePivotToIntrados, site),
      degreesColumn('angle', texts.poleRisesFromLevel),
      numberColumn('springing-height', texts.edgeAboveSpringing, site),
      numberColumn('level', texts.edgeAboveFloor, site),
      numberColumn('radius', texts.ringRadiusAtEdge, site),
      degreesColumn('bed', texts.headPlateRises),
      numberColumn('plate', texts.headPlateLengthAlong, site),
      numberColumn('upper-level', texts.upperInnerEdgeAbove, site),
      numberColumn('upper-radius', texts.upperInnerEdge, site),
      numberColumn('check', texts.checkFootOfAxis, site),
    ],
    rows: house.domes.flatMap((dome) =>
      poleSettings(dome).map(({ what, course, pole, edge, upperEdge, bedRad, check }) => ({
        dome: dome.id,
        sets: what,
        course,
        'pivot-level': length(pole?.pivotZ ?? null),
        arm: length(pole?.arm ?? null),
        length: length(pole?.length ?? null),
        angle: pole ? pole.angleRad / DEG : null,
        'springing-height': length(edge[1] - dome.springingZ),
        level: length(edge[1]),
        radius: length(edge[0]),
        bed: bedRad / DEG,
        plate: length(dome.thickness),
        'upper-level': length(upperEdge?.[1] ?? null),
        'upper-radius': length(upperEdge?.[0] ?? null),
        check: length(check),
      })),
    ),
    notes: [
      ...house.domes.map(rigNote),
      texts.edgeIsLowerInner,
      texts.checkEachSetting,
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

function rigNote(dome: DomeSetout): string {
  const rig = rigOf(dome);
  if (rig.kind === 'template') return texts.noPoleReachesShell(dome.id);
  if (rig.arm > 0) return texts.mastEndsAtSpringing(dome.id);
  return texts.poleTurnsOnAxis(dome.id);
}

const noTemplate = (domes: readonly DomeSetout[]): string[] => (domes.length === 0 ? [texts.noTemplateIsNeeded] : []);

/** Ordinates of the boards that turn on a mast where no pole can; without rows where every dome has its pole. */
export function templateTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  const domes = templated(house);
  return {
    id: 'meridian-template',
    title: texts.meridianTemplateOrdinates,
    columns: [
      textColumn('dome', texts.dome),
      countColumn('course', texts.setsCourse),
      numberColumn('height', texts.heightAboveSpringing, site),
      numberColumn('ordinate', texts.ordinateFromAxis, site),
      numberColumn('along', texts.alongEdgeFromSpringing, site),
      degreesColumn('bed', texts.bedBattenRises),
      numberColumn('check', texts.checkStraightFromPoint, site),
    ],
    rows: domes.flatMap((dome) =>
      templatePoints(dome).map((point) => ({
        dome: dome.id,
        course: point.course,
        height: site.of(point.height),
        ordinate: site.of(point.ordinate),
        along: site.of(point.arcLength),
        bed: point.bedRad / DEG,
        check: point.fromLast === null ? null : site.of(point.fromLast),
      })),
    ),
    notes: [
      ...noTemplate(domes),
      texts.workingEdgeTouchesIntrados,
      texts.hangTemplatePlumb,
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

/** What to cut the template from; without rows where every dome has its pole. */
export function templateBoardTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  const domes = templated(house);
  return {
    id: 'template-boards',
    title: texts.meridianTemplateBoards,
    columns: [
      textColumn('dome', texts.dome),
      countColumn('board', texts.boardFromSpringingUp),
      numberColumn('chord', texts.cutLengthAlongChord, site),
      numberColumn('width', texts.leastWidthOfBoard, site),
      numberColumn('quarter', texts.curveOverChord, site),
      numberColumn('half', texts.curveOverChordAtMiddle, site),
      numberColumn('three-quarters', texts.curveOverChordAtThree, site),
      degreesColumn('lower-cut', texts.lowerEndCut),
      degreesColumn('upper-cut', texts.upperEndCut),
    ],
    rows: domes.flatMap((dome) =>
      templateBoards(dome, house.house.settingOut.board).map((board) => ({
        dome: dome.id,
        board: board.number,
        chord: site.of(board.chord),
        width: site.of(board.width),
        quarter: site.of(board.offsets[0]),
        half: site.of(board.offsets[1]),
        'three-quarters': site.of(board.offsets[2]),
        'lower-cut': board.endsRad[0] / DEG,
        'upper-cut': board.endsRad[1] / DEG,
      })),
    ),
    notes: [...noTemplate(domes), texts.joinBoardsWithSecond, CAUTION.authority],
  };
}
