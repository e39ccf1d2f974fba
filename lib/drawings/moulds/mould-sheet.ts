import type { WrittenUnits } from '../../base/measures.js';
import { feetAndInches, formatAngle, formatLength, MM_PER_INCH } from '../../base/measures.js';
import { CAUTION } from '../../base/texts/cautions.js';
import * as texts from '../../base/texts/drawing-moulds.js';
import { CUBIC_FOOT_MM3 } from '../../base/units.js';
import type { House } from '../../description/house.js';
import { type Block, placeBlock, stackBlocks } from '../../documents/block.js';
import type { PaperPrimitive } from '../../documents/drawing.js';
import { viewBounds } from '../../documents/drawing-bounds.js';
import { mouldScales, scaleWords } from '../../documents/scales.js';
import { words } from '../../documents/shapes.js';
import type { PlacedView, Sheet } from '../../documents/sheet.js';
import { drawingSpace, ISO_SHEETS, type SheetSize, US_SHEETS } from '../../documents/sheet-size.js';
import type { Column, Table } from '../../documents/table.js';
import { tableBlock } from '../../documents/table-block.js';
import { wrapText } from '../../documents/text-fit.js';
import { textWidth } from '../../documents/text-size.js';
import { TITLE_BLOCK } from '../../documents/title-block.js';
import type { LaidHouse } from '../../masonry/block.js';
import type { CutEdge } from '../../masonry/cuts.js';
import { type CastForm, castForms } from '../../masonry/forms.js';
import { massKg, wetDensity } from '../../masonry/mass.js';
import { type FaceDimensions, formDimensions } from '../../masonry/moulds/dimensions.js';
import { type CastShape, castShape, LINING } from '../../masonry/moulds/shape.js';
import type { MasonryPlan } from '../../masonry/plan.js';
import { type Stop, stopAlong } from '../../masonry/stops.js';
import { DEG } from '../../math/vec.js';
import { type MouldRelease, mouldRelease } from '../../works/mould-release.js';
import { titleBlockOf } from '../sheets/title.js';
import { developedBed } from './developed.js';
import { workshopUnits } from './mould-templates.js';
import { mouldViews } from './mould-views.js';
import { type FaceRib, faceRibs } from './ribs.js';

/** Four views in a row, two rows; what is left below is for tables and notes. */
const COLUMNS = 4;
const BELOW = 106;
const CAPTION = 8;
const PAD = 3;
const NOTE = 2.5;

/** One sheet for each mould and each form of longer blocks, on the smallest sheet of the series. */
export function mouldSheets(plan: Pick<MasonryPlan, 'setout' | 'moulds'>, laid: LaidHouse): Sheet[] {
  const { house } = plan.setout;
  const units = workshopUnits(plan);
  const forms = castForms(plan, laid);
  return forms.map((form, i) => {
    const shape = castShape(form.block, house.blocks);
    const { size, views } = fitted(shape, units, form.stops);
    const release = mouldRelease(form.id, shape, house.casting.bedBoards);
    const scale = scaleWords(views[0]?.view.scale ?? 1, units);
    return {
      id: form.id,
      size,
      views,
      paper: [...captions(views), ...belowViews(size, house, form, shape, release, units)],
      titleBlock: {
        ...titleBlockOf(house.project, texts.mouldTitle(form.id), {
          scale,
          size: size.name,
          sheet: i + 1,
          sheets: forms.length,
        }),
        documentType: texts.mouldDrawingPreliminary,
      },
    };
  });
}

/** The views at the largest scale at which each has room in its cell. */
function fitted(
  shape: CastShape,
  units: WrittenUnits,
  stops: readonly Stop[],
): { size: SheetSize; views: PlacedView[] } {
  const size = (units === 'feet-inches' ? US_SHEETS : ISO_SHEETS)[0] as SheetSize;
  const space = drawingSpace(size);
  const [wide, high] = [(space.right - space.left) / COLUMNS, (space.top - space.bottom - BELOW) / 2];
  const scales = mouldScales(units);
  // Standing on its head, a block takes up its length.
  const length = 2 * shape.at(0.5, 1, 1)[0];
  for (const scale of scales) {
    if (length / scale > high && scale !== scales[scales.length - 1]) continue;
    const views = mouldViews(shape, scale, units, stops);
    const boxes = views.map(viewBounds);
    const fits = boxes.every(
      ({ min, max }) => (max[0] - min[0]) / scale <= wide - PAD && (max[1] - min[1]) / scale <= high - PAD - CAPTION,
    );
    if (!fits && scale !== scales[scales.length - 1]) continue;
    return {
      size,
      views: views.map((view, i): PlacedView => {
        const { min, max } = boxes[i] as (typeof boxes)[number];
        const middle = [space.left + ((i % COLUMNS) + 0.5) * wide, space.top - Math.floor(i / COLUMNS) * high];
        const centre = [(min[0] + max[0]) / 2 / scale, (min[1] + max[1]) / 2 / scale];
        const y = (middle[1] as number) - (high - CAPTION) / 2;
        return { view, at: [(middle[0] as number) - (centre[0] as number), y - (centre[1] as number)] };
      }),
    };
  }
  throw new RangeError('no scale is left to draw a mould at');
}

/** The title of each view at the foot of its cell. */
function captions(views: readonly PlacedView[]): PaperPrimitive[] {
  return views.map(({ view, at }) => {
    const { min, max } = viewBounds(view);
    const x = at[0] + (min[0] + max[0]) / 2 / view.scale;
    return words('text', view.title, [x, at[1] + min[1] / view.scale - 6], 3.5, 'centre');
  });
}

function belowViews(
  size: SheetSize,
  house: House,
  form: CastForm,
  shape: CastShape,
  release: MouldRelease,
  units: WrittenUnits,
): PaperPrimitive[] {
  const space = drawingSpace(size);
  const top = space.bottom + BELOW - PAD;
  const left = space.left + PAD;
  const tables = [sizeTable(house, form, units), bevelTable(house, form, shape, units)].map((table) =>
    tableBlock(table),
  );
  const beside = left + (tables[0] as Block).width + 2 * PAD;
  const afterBevels = beside + (tables[1] as Block).width + 2 * PAD;
  const notesLeft = space.right - TITLE_BLOCK.width + PAD;
  const ribs = faceRibs(shape).length > 0 ? [tableBlock(ribTable(shape, units), notesLeft - PAD - beside)] : [];
  const boards = form.stops.length > 0 ? [boardsBlock(house, form, units, notesLeft - PAD - afterBevels)] : [];
  const notes = notesBlock(notesOf(house, form, units), TITLE_BLOCK.width - 2 * PAD);
  const cell = (space.right - space.left) / COLUMNS;
  const more = notesBlock(releaseNotes(house, form, release, units), cell - 2 * PAD);
  const row = (space.top - space.bottom - BELOW) / 2;
  return [
    ...placeBlock(
      stackBlocks([tables[0] as Block, notesBlock([roundingNote(house, units)], (tables[0] as Block).width)], PAD),
      [left, top],
    ),
    ...placeBlock(stackBlocks([tables[1] as Block, ...ribs], PAD), [beside, top]),
    ...boards.flatMap((block) => placeBlock(block, [afterBevels, top])),
    ...placeBlock(notes, [notesLeft, top]),
    // Many notes begin beside the foot of the first row, so that they end above those below.
    ...placeBlock(more, [space.left + 3 * cell + PAD, Math.max(space.top - row - PAD, top + PAD + more.height)]),
  ];
}

const half = (mm: number): number => Math.round(2 * mm) / 2;

/** Parts of an inch that a workshop cuts to, as in the tables of moulds. */
const PARTS = 32;

/** How a table on the sheet prints a length: in a column of its own, and in a text. */
function printed(units: WrittenUnits) {
  const column = (key: string, label: string): Column =>
    units === 'feet-inches'
      ? { key, label, kind: 'number', unit: 'in', inchParts: PARTS }
      : { key, label, kind: 'number', unit: 'mm', decimals: 1 };
  const of = (mm: number): number => (units === 'feet-inches' ? mm / MM_PER_INCH : half(mm));
  const figure = (mm: number): string => (units === 'feet-inches' ? feetAndInches(of(mm), PARTS) : of(mm).toFixed(1));
  return { column, of, figure, unit: units === 'feet-inches' ? '' : 'mm' };
}

const SIZES: readonly (readonly [string, (f: FaceDimensions) => number])[] = [
  [texts.lowerEdgeArc, (f) => f.edges.lower.arc],
  [texts.lowerEdgeChord, (f) => f.edges.lower.chord],
  [texts.midHeightArc, (f) => f.edges.middle.arc],
  [texts.midHeightChord, (f) => f.edges.middle.chord],
  [texts.upperEdgeArc, (f) => f.edges.upper.arc],
  [texts.upperEdgeChord, (f) => f.edges.upper.chord],
  [texts.heightAlongFace, (f) => f.height],
  ['diagonal', (f) => f.diagonal],
  [texts.sagittaLowerEdge, (f) => f.sagittaLower],
  [texts.sagittaUpperEdge, (f) => f.sagittaUpper],
  [texts.sagittaUpFace, (f) => f.sagittaUp],
];

function sizeTable(house: House, { block }: CastForm, units: WrittenUnits): Table {
  const d = formDimensions(block, house.blocks);
  const { column, of } = printed(units);
  return {
    id: 'sizes',
    title: texts.innerSizesOfMould,
    columns: [
      { key: 'size', label: texts.size, kind: 'text' },
      column('intrados', 'intrados'),
      column('extrados', 'extrados'),
    ],
    rows: SIZES.map(([size, pick]) => ({ size, intrados: of(pick(d.intrados)), extrados: of(pick(d.extrados)) })),
  };
}

function bevelTable(house: House, { block }: CastForm, shape: CastShape, units: WrittenUnits): Table {
  const d = formDimensions(block, house.blocks);
  const { unit, figure } = printed(units);
  const length = (mm: number) => (unit === '' ? figure(mm) : `${figure(mm)} ${unit}`);
  const radii = (['lower', 'upper'] as const).map((edge) => {
    const { innerRadius, outerRadius } = developedBed(shape, edge);
    const value =
      innerRadius === null || outerRadius === null ? 'straight' : `${length(innerRadius)}; ${length(outerRadius)}`;
    return { what: texts.bedRadii(edge), value };
  });
  return {
    id: 'bevels',
    title: texts.bevelsAndBeds,
    columns: [
      { key: 'what', label: texts.what, kind: 'text' },
      { key: 'value', label: texts.value, kind: 'text' },
    ],
    rows: [
      { what: 'thickness', value: length(d.thickness) },
      { what: texts.betweenBeds, value: formatAngle(d.bedAngleRad / DEG) },
      { what: texts.headAcrossWall, value: formatAngle(d.headAcrossRad / DEG) },
      { what: texts.headUpFace, value: formatAngle(d.headUpRad / DEG) },
      ...radii,
    ],
  };
}

const BOARD_EDGES: readonly (readonly [CutEdge, string])[] = [
  ['innerLower', texts.intradosLower],
  ['innerUpper', texts.intradosUpper],
  ['outerLower', texts.extradosLower],
  ['outerUpper', texts.extradosUpper],
];

/** As many boards as the sheet has room for side by side. */
function boardsBlock(house: House, form: CastForm, units: WrittenUnits, room: number): Block {
  for (let most = form.stops.length; ; most--) {
    const block = tableBlock(stopTable(house, form, units, most));
    if (block.width <= room || most === 1) return block;
  }
}

/** Where the stop board stands for each block that will be cut, along the edges of the mould; blocks alike are told as one. */
function stopTable(house: House, { stops }: CastForm, units: WrittenUnits, most: number): Table {
  const { unit, figure } = printed(units);
  const boards = new Map<string, { numbers: number[]; cells: readonly string[] }>();
  for (const stop of stops) {
    const along = stopAlong(stop, house.blocks);
    const cells = [
      stop.keeps === 'start' ? texts.leftHead : texts.rightHead,
      ...BOARD_EDGES.map(([edge]) => figure(along[edge])),
    ];
    const known = boards.get(cells.join()) ?? { numbers: [], cells };
    known.numbers.push(stop.block.number);
    boards.set(cells.join(), known);
  }
  const shown = [...boards.values()].slice(0, most);
  const text = (key: string, label: string) => ({ key, label, kind: 'text' }) as const;
  return {
    id: 'stops',
    title: boards.size > shown.length ? texts.stopBoardsOf(shown.length, boards.size) : texts.stopBoards,
    columns: [
      text('edge', unit === '' ? texts.block : texts.blockInUnit(unit)),
      ...shown.map(({ numbers }, k) => text(`board-${k}`, numbers.join(', '))),
    ],
    rows: [texts.headKept, ...BOARD_EDGES.map(([, label]) => label)].map((edge, row) => ({
      edge,
      ...Object.fromEntries(shown.map(({ cells }, k) => [`board-${k}`, cells[row] as string])),
    })),
  };
}

const SHARES = [
  [0, 'start'],
  [0.25, '1/4'],
  [0.5, '1/2'],
  [0.75, '3/4'],
  [1, 'end'],
] as const;

/** One column a rib, so that fractions have room. */
function ribTable(shape: CastShape, units: WrittenUnits): Table {
  const { unit, figure } = printed(units);
  const ribs = faceRibs(shape);
  const row = (what: string, of: (rib: FaceRib) => string) => ({
    what,
    ...Object.fromEntries(ribs.map((rib, k) => [`rib-${k}`, of(rib)])),
  });
  const text = (key: string, label: string) => ({ key, label, kind: 'text' }) as const;
  return {
    id: 'ribs',
    title: texts.ribsEdgeAboveStraight,
    columns: [
      text('what', unit === '' ? texts.rib : texts.ribInUnit(unit)),
      ...ribs.map((rib, k) => text(`rib-${k}`, `${rib.face} ${rib.way}`)),
    ],
    rows: [
      row(texts.offMiddle, (rib) => standing(rib, figure)),
      row(texts.length, (rib) => figure(rib.length)),
      ...SHARES.map(([share, label]) => row(label, (rib) => figure(rib.edge(share)[1]))),
    ],
  };
}

/** How far from the middle of the mould ribs stand: in it, on either side, or both. */
function standing({ pieces, place }: FaceRib, size: (mm: number) => string): string {
  return pieces === 1 ? '0' : `${pieces === 2 ? '' : '0, '}±${size(place)}`;
}

const PACKED = [
  ['innerLower', texts.atIntradosAndLower],
  ['innerUpper', texts.atIntradosAndUpper],
  ['outerLower', texts.atExtradosAndLower],
  ['outerUpper', texts.atExtradosAndUpper],
] as const;

const POUND = 0.45359237;

function notesOf(house: House, { block, courses, shapedFor, places }: CastForm, units: WrittenUnits): string[] {
  const { shrinkage } = house.blocks;
  const size = (mm: number) => sized(mm, units);
  const { volume } = formDimensions(block, house.blocks);
  const feet = units === 'feet-inches';
  const kg = massKg(volume, wetDensity(house.material));
  const fresh = feet
    ? `${(volume / CUBIC_FOOT_MM3).toFixed(3)} ft³, ${(kg / POUND).toFixed(1)} lb`
    : `${(volume / 1e6).toFixed(2)} L, ${kg.toFixed(1)} kg`;
  return [
    places === 1
      ? texts.forCoursesShaped(courses.join(' '), shapedFor)
      : texts.forLongerBlocks(courses.join(' '), places, shapedFor),
    texts.fillingTakesOfFresh(fresh),
    texts.innerSizesLarger(Math.round(shrinkage * 1e4) / 100),
    house.blocks.faces === 'flat' ? texts.allSidesArePlane : texts.ribsStandSquare(size(LINING)),
    `${CAUTION.cement} ${CAUTION.lifting}`,
  ];
}

/** How far sizes on the sheet may be rounded, beside how far a block may be off. */
function roundingNote({ blocks: { tolerance } }: House, units: WrittenUnits): string {
  const feet = units === 'feet-inches';
  const off = feet ? MM_PER_INCH / (2 * PARTS) : 0.25;
  const told = feet ? texts.roundedToInchParts : texts.roundedToHalfMm;
  const may = feet
    ? `${feetAndInches(tolerance / MM_PER_INCH, PARTS)} (${tolerance.toFixed(1)} mm)`
    : `${tolerance} mm`;
  return `${told} ${off <= tolerance ? texts.roundingIsPartOf(may) : texts.roundingIsMoreThan(may)}`;
}

/** A length in a sentence. */
const sized = (mm: number, units: WrittenUnits): string =>
  `${formatLength(mm, units)}${units === 'feet-inches' ? '' : ' mm'}`;

function releaseNotes({ casting }: House, { stops }: CastForm, release: MouldRelease, units: WrittenUnits): string[] {
  const days = casting.demouldDays;
  const { packing } = release;
  const pack = PACKED.map(([corner, name]) => `${sized(packing[corner], units)} ${name}`).join(', ');
  return [
    texts.partsFloorForms,
    texts.itStandsOnOne(pack),
    texts.afterTakeOff(
      days,
      release.steps.map((s, i) => texts.stepWithDraft(i + 1, s.moves, s.way, formatAngle(s.draftRad / DEG))).join('; '),
    ),
    release.steps.some((s) => s.draftRad < 0) ? texts.undercutHoldsBlockSee : texts.nothingHoldsBlock,
    ...(stops.length > 0 ? [texts.dashedStopBoards] : []),
  ];
}

function notesBlock(notes: readonly string[], width: number): Block {
  const lines = notes.flatMap((note) => wrapText(note, width, NOTE));
  const step = NOTE + 1.6;
  return {
    width: Math.max(0, ...lines.map((text) => textWidth(text, NOTE))),
    height: lines.length * step,
    primitives: lines.map((text, i) => words('text', text, [0, -NOTE - i * step], NOTE)),
  };
}
