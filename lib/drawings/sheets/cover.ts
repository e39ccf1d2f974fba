import { CAUTIONS } from '../../base/cautions.js';
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
  columns: [column('what', 'what'), column('value', 'value')],
  rows: rows.map(([what, value]) => ({ what, value })),
});

const NOT_GIVEN = 'not given: to be set by the engineer';

/** Whose house it is, where, and what it consists of. */
export function projectTable(setout: HouseSetout, handed: HandedOver): Table {
  const { house, domes, arches, passages } = setout;
  const { project } = house;
  const size = (mm: number) => formatLength(mm, house.units);
  const said: (readonly [string, string])[] = [
    ['project', project.title],
    ['number', project.number],
    ['address', project.address],
    ['client', project.client],
    ['drawn by', project.drawnBy],
    ['date', project.date ?? 'undated'],
    ['revision', project.revision],
  ];
  const floors = house.rooms.flatMap((room) => handed.floors[room.id] ?? []);
  return pairs('project', 'Project', [
    ...said.filter(([, value]) => value !== ''),
    ['domes', domes.map((d) => `${d.id} (${roomNames(setout, d).join(', ')})`).join('; ')],
    ['openings', arches.length === 0 ? 'none' : String(arches.length)],
    ...(passages.length > 0 ? [['passages', passages.map((p) => p.id).join(', ')] as const] : []),
    ['height above ground', size(Math.max(...domes.map((d) => d.topZ)) - house.site.ground)],
    ...(floors.length > 0
      ? [
          [
            'net floor, all rooms',
            areaWords(
              floors.reduce((s, f) => s + f, 0),
              writtenUnits(house),
            ),
          ] as const,
        ]
      : []),
    ['finished floor above ground', size(-house.site.ground)],
  ]);
}

/** What the house is to bear, as the description gives it. */
export function loadTable({ house }: HouseSetout): Table {
  const { site } = house;
  const pressure = (kpa: number | null) => (kpa === null ? NOT_GIVEN : formatQuantity(kpa, 'pressure', house.units));
  const plain = (value: number | null) => (value === null ? NOT_GIVEN : String(value));
  return pairs('loads', 'Design loads and ground', [
    ['snow on the ground', pressure(site.snowKpa)],
    ['wind pressure', pressure(site.windKpa)],
    ['wind coefficients', site.windCoefficients === null ? NOT_GIVEN : site.windCoefficients.join(', ')],
    ['horizontal earthquake, part of the weight', plain(site.seismicCoefficient)],
    ['combined by', site.combinations],
    ['soil may carry', pressure(site.bearingCapacityKpa)],
    ['friction of footing on soil', plain(site.soilFriction)],
    ['frost depth below ground', site.frostDepth === null ? NOT_GIVEN : formatLength(site.frostDepth, house.units)],
  ]);
}

/** What the house is made of, as the description gives it. */
export function materialTable({ house }: HouseSetout): Table {
  const { material: m, wall, blocks, footing, slab, tie, units } = house;
  const size = (mm: number) => formatLength(mm, units);
  const mpa = (value: number) =>
    units === 'ft' || units === 'in' ? `${(value * 145.0377).toFixed(0)} psi` : `${value} MPa`;
  const density = (value: number) => formatQuantity(value, 'density', units);
  return pairs('materials', 'Materials', [
    ['blocks, cast cellular concrete', `dry density ${density(m.dryDensity)}`],
    [
      'strength of blocks on cubes',
      m.compressiveStrengthMpa === null
        ? 'not given: test cubes before building'
        : `mean ${mpa(m.compressiveStrengthMpa)}`,
    ],
    ['water to cement; sand to cement', `${m.waterCement}; ${m.sandCement}`],
    ['wall', `${size(wall.thickness)}, courses ${size(blocks.courseHeight)}, joints ${size(blocks.joint)}`],
    ['mortar', `strength ${mpa(m.mortarStrengthMpa)}, density ${density(m.mortarDensity)}`],
    [
      'render',
      `${size(wall.renderInside)} inside, ${size(wall.renderOutside)} outside, density ${density(m.renderDensity)}`,
    ],
    ['footing', footing ? `concrete ring ${size(footing.width)} wide, ${size(footing.depth)} below floor` : 'none'],
    ['floor slab', slab ? `concrete ${size(slab.thickness)}` : 'none'],
    [
      'ring tie',
      tie === null
        ? 'not described'
        : tie === 'none'
          ? 'none'
          : `closed hoop of ${tie.bars} bars ${size(tie.diameter)}, yield ${mpa(tie.yieldMpa)}${tie.lap === null ? '' : `, lap ${size(tie.lap)}`}`,
    ],
  ]);
}

/** What holds for every sheet of the set. */
export const generalNotes = ({ house }: HouseSetout): TextPart => ({
  heading: 'General notes',
  paragraphs: [
    'Figured dimensions govern over scaled ones. They are of the structure, without render, unless a note says otherwise; levels are from the finished floor.',
    'Bearings are clockwise from project north, which is up on every plan; the north point tells true north.',
    'Marks: openings, passages and rooms by their names; a block by dome, course (1 the lowest) and number (clockwise from bearing 0); sections by letters.',
    `Set out each dome from its axis: see the floor plan for centres and radii${house.rooms.length > 0 ? ', names and net floors of rooms' : ''}. Check diagonals and distances between axes before digging.`,
    'Details follow the common practice of masonry and shell building, which has no single source; local code and licensed practice govern where they ask for more.',
    'Courses are laid ring by ring; what holds each course until its ring is closed stands on the laying sheet. Centering stays until its arch has its strength.',
    'Where a drawing and a table differ, ask before building.',
  ],
});

export const cautionPart: TextPart = { heading: 'Cautions', paragraphs: CAUTIONS };
