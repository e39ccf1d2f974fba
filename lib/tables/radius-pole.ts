import { CAUTION } from '../base/cautions.js';
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
    title: 'Radius pole',
    columns: [
      textColumn('dome', 'dome'),
      textColumn('sets', 'sets'),
      countColumn('course', 'course'),
      numberColumn('pivot-level', 'pivot above the floor', site),
      numberColumn('arm', 'pivot beyond the axis, away from the block', site),
      numberColumn('length', 'pole, pivot to intrados lower edge', site),
      degreesColumn('angle', 'pole rises from level'),
      numberColumn('springing-height', 'edge above the springing', site),
      numberColumn('level', 'edge above the floor', site),
      numberColumn('radius', 'ring radius at the edge', site),
      degreesColumn('bed', 'head plate rises from level'),
      numberColumn('plate', 'head plate, length along the bed', site),
      numberColumn('upper-level', 'upper inner edge above the floor', site),
      numberColumn('upper-radius', 'upper inner edge from the axis', site),
      numberColumn('check', 'check: foot of the axis to the edge', site),
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
      'The edge is the lower inner edge of the blocks, over their bed joint. The head plate lies in the prolongation of the pole, its upper face on the line through the pivot: the bed of the block rests on it while the ring is open.',
      'Check each setting with a tape from the foot of the axis on the finished floor, before the first block of a ring; more than 3 mm or 1/8 in off tells of a slip.',
      CAUTION.rings,
      CAUTION.authority,
    ],
  };
}

function rigNote(dome: DomeSetout): string {
  const rig = rigOf(dome);
  if (rig.kind === 'template')
    return `${dome.id}: no pole reaches the shell; the table of the meridian template sets its courses.`;
  if (rig.arm > 0)
    return `${dome.id}: the mast ends at the springing; on it turns an arm that carries the pivot, always on the side away from the block.`;
  return `${dome.id}: the pole turns on the axis itself; the mast ends at the pivot.`;
}

const noTemplate = (domes: readonly DomeSetout[]): string[] =>
  domes.length === 0 ? ['No template is needed: a radius pole reaches every course of this house.'] : [];

/** Ordinates of the boards that turn on a mast where no pole can; without rows where every dome has its pole. */
export function templateTable(house: HouseSetout): Table {
  const { site } = tableUnits(house.house.units);
  const domes = templated(house);
  return {
    id: 'meridian-template',
    title: 'Meridian template, ordinates',
    columns: [
      textColumn('dome', 'dome'),
      countColumn('course', 'sets course'),
      numberColumn('height', 'height above the springing', site),
      numberColumn('ordinate', 'ordinate from the axis', site),
      numberColumn('along', 'along the edge from the springing', site),
      degreesColumn('bed', 'bed batten rises from level'),
      numberColumn('check', 'check: straight from the point before', site),
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
      'The working edge touches the intrados. Ordinates are from the axis: take off half the mast where boards are fixed to its face. Points without a course only draw the curve.',
      'Hang the template plumb and turn it once round with nothing laid: its edge must pass every jamb alike.',
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
    title: 'Meridian template, boards to cut',
    columns: [
      textColumn('dome', 'dome'),
      countColumn('board', 'board, from the springing up'),
      numberColumn('chord', 'cut length along the chord', site),
      numberColumn('width', 'least width of the board', site),
      numberColumn('quarter', 'curve over the chord at a quarter', site),
      numberColumn('half', 'curve over the chord at the middle', site),
      numberColumn('three-quarters', 'curve over the chord at three quarters', site),
      degreesColumn('lower-cut', 'lower end cut, from the chord'),
      degreesColumn('upper-cut', 'upper end cut, from the chord'),
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
    notes: [
      ...noTemplate(domes),
      'Join the boards with a second layer whose joints are staggered. Bend a strip through the three marks and both ends to draw the curve; then check the ordinates.',
      CAUTION.authority,
    ],
  };
}
