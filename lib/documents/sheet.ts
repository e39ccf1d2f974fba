import { remembered } from '../base/remembered.js';
import * as texts from '../base/texts/sheet-frame.js';
import type { Vec2 } from '../math/vec.js';
import { type Block, placeBlock } from './block.js';
import { DocumentError } from './document-error.js';
import type { PaperPrimitive, View } from './drawing.js';
import { auditView } from './drawing-audit.js';
import { type Bounds2, viewBounds } from './drawing-bounds.js';
import { sheetFrame } from './sheet-frame.js';
import { drawingSpace, type SheetSize } from './sheet-size.js';
import { TITLE_BLOCK, type TitleBlock, titleBlockForm } from './title-block.js';

/** A view on a sheet: its model's origin lies at `at`, mm from the sheet's lower left corner, at the view's own scale. */
export interface PlacedView {
  readonly view: View;
  readonly at: Vec2;
}

/** One sheet of paper: views at their scales, paper content in mm from its lower left corner, frame and title block. */
export interface Sheet {
  readonly id: string;
  readonly size: SheetSize;
  readonly views: readonly PlacedView[];
  readonly paper: readonly PaperPrimitive[];
  readonly titleBlock: TitleBlock;
  /** What stands along the whole lower edge of the frame in place of the drawn title block. */
  readonly strip?: Block;
}

/** All that is drawn on the paper itself, frame and title block or strip first. */
export function sheetForm(sheet: Sheet): PaperPrimitive[] {
  const { left, right, bottom } = drawingSpace(sheet.size);
  const form = sheet.strip
    ? placeBlock(sheet.strip, [left, bottom + sheet.strip.height])
    : titleBlockForm(sheet.titleBlock, right, bottom);
  return [...sheetFrame(sheet.size), ...form, ...sheet.paper];
}

/** What a sheet is called in lists and titles of documents. */
export const sheetName = ({ titleBlock: t }: Sheet): string => texts.sheetOf(t.project, t.title, t.sheet, t.sheets);

/** Box of a placed view on paper, mm. */
export function placedBounds({ view, at }: PlacedView): Bounds2 {
  const { min, max } = viewBounds(view);
  const on = (p: Vec2): Vec2 => [at[0] + p[0] / view.scale, at[1] + p[1] / view.scale];
  return { min: on(min), max: on(max) };
}

export interface SheetFault {
  readonly code: 'unsound-view' | 'outside-frame' | 'views-overlap' | 'on-title-block';
  readonly message: string;
}

/** Everything that would make a sheet unreadable; an empty list means sound. */
export const auditSheet = remembered((sheet: Sheet): readonly SheetFault[] => {
  const faults: SheetFault[] = [];
  const bad = (code: SheetFault['code'], message: string): void => {
    faults.push({ code, message });
  };
  const form: View = { id: sheet.id, title: '', scale: 1, units: 'metric', primitives: sheet.paper };
  for (const view of [form, ...sheet.views.map((v) => v.view)])
    for (const fault of auditView(view)) bad('unsound-view', `${view.id}: ${fault.message}`);
  if (faults.length > 0) return faults;

  const space = drawingSpace(sheet.size);
  const frame: Bounds2 = { min: [space.left, space.bottom], max: [space.right, space.top] };
  const block: Bounds2 = {
    min: [sheet.strip ? space.left : space.right - TITLE_BLOCK.width, space.bottom],
    max: [space.right, space.bottom + (sheet.strip?.height ?? TITLE_BLOCK.height)],
  };
  const boxes = sheet.views.map((v) => ({ name: texts.theView(v.view.title), box: placedBounds(v) }));
  if (sheet.paper.length > 0) boxes.push({ name: texts.theNotes, box: viewBounds(form) });
  for (const { name, box } of boxes)
    if (!within(box, frame)) bad('outside-frame', texts.reachesOutOfFrame(name, sheet.size.name));
  boxes.forEach(({ name, box }, i) => {
    if (i >= sheet.views.length) return;
    if (overlap(box, block)) bad('on-title-block', texts.liesOnTitleBlock(name));
    for (const other of boxes.slice(i + 1, sheet.views.length))
      if (overlap(box, other.box)) bad('views-overlap', texts.overlaps(name, other.name.toLowerCase()));
  });
  return faults;
});

/** @throws DocumentError that tells every fault of the sheet at once. */
export function requireSoundSheet(sheet: Sheet): void {
  const faults = auditSheet(sheet);
  const [first] = faults;
  if (first) throw new DocumentError(first.code, sheet.id, faults.map((f) => f.message).join(' '));
}

const within = (a: Bounds2, b: Bounds2): boolean =>
  [0, 1].every((i) => (a.min[i] as number) >= (b.min[i] as number) && (a.max[i] as number) <= (b.max[i] as number));

const overlap = (a: Bounds2, b: Bounds2): boolean =>
  [0, 1].every((i) => (a.min[i] as number) < (b.max[i] as number) && (b.min[i] as number) < (a.max[i] as number));
