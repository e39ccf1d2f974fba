import type { WrittenUnits } from '../../base/measures.js';
import type { View } from '../../documents/drawing.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import { bareView, type Draft } from '../draft.js';
import type { FootSpec } from '../foot.js';
import type { HandedOver } from '../handed.js';
import { furnitureOf } from './furniture.js';
import { composePage, type Page } from './page.js';
import type { Told } from './told.js';

/** Margins and the least that stands beside a figure, paper mm. */
const LEAST_BESIDE = 50;

/** Lays drafts out on pages; each draft is drawn once for each scale that is tried. */
export class PageMaker {
  private readonly drawn = new Map<Draft, Map<number, { readonly view: View; readonly foot: FootSpec }>>();
  private readonly alone = new Map<string, boolean>();

  constructor(
    private readonly units: WrittenUnits,
    readonly handed: HandedOver,
  ) {}

  /** Views on one sheet with what is said beside them and as many tables as find room; `null` when it is too much. */
  page(size: SheetSize, drafts: readonly Draft[], scale: number, tables: readonly Told[] = []): Page | null {
    // A figure that is larger than the sheet need not be laid out to know it.
    if (drafts.some((d) => !this.mayFit(size, d, scale))) return null;
    const drawn = drafts.map((d) => this.draw(d, scale));
    const furniture = furnitureOf(
      drawn.map((d) => d.foot),
      [scale],
      this.units,
    );
    return composePage(
      size,
      drawn.map((d) => d.view),
      furniture,
      tables,
    );
  }

  /** Whether a draft has room on a sheet by itself. */
  fits(size: SheetSize, draft: Draft, scale: number): boolean {
    const key = `${size.name} ${scale} ${draft.id}`;
    const known = this.alone.get(key);
    if (known !== undefined) return known;
    const fits = this.page(size, [draft], scale) !== null;
    this.alone.set(key, fits);
    return fits;
  }

  /** Drafts in their order on sheets that are filled one after the other; `null` when one fits none by itself. */
  filled(size: SheetSize, drafts: readonly Draft[], scale: number): (readonly Draft[])[] | null {
    const groups: Draft[][] = [];
    for (const draft of drafts) {
      const open = groups[groups.length - 1];
      if (open && this.page(size, [...open, draft], scale)) open.push(draft);
      else if (this.fits(size, draft, scale)) groups.push([draft]);
      else return null;
    }
    return groups;
  }

  /** The same sheets, but what stands last on one moved to the next where that is the emptier. */
  evened(size: SheetSize, filled: readonly (readonly Draft[])[], scale: number): (readonly Draft[])[] {
    const groups = [...filled];
    for (let k = groups.length - 1; k > 0; k--) {
      for (;;) {
        const [before, after] = [groups[k - 1], groups[k]] as [readonly Draft[], readonly Draft[]];
        const [kept, moved] = [before.slice(0, -1), [...before.slice(-1), ...after]];
        const evener = figuresArea(kept) > figuresArea(after) && figuresArea(moved) < figuresArea(before);
        if (kept.length === 0 || !evener || !this.page(size, moved, scale)) break;
        [groups[k - 1], groups[k]] = [kept, moved];
      }
    }
    return groups;
  }

  private mayFit(size: SheetSize, { figure: { min, max } }: Draft, scale: number): boolean {
    const [width, height] = [(max[0] - min[0]) / scale, (max[1] - min[1]) / scale];
    return width <= size.width - LEAST_BESIDE && height <= size.height - LEAST_BESIDE;
  }

  private draw(draft: Draft, scale: number): { readonly view: View; readonly foot: FootSpec } {
    const scales = this.drawn.get(draft) ?? new Map();
    this.drawn.set(draft, scales);
    const known = scales.get(scale);
    if (known) return known;
    const sketch = draft.draw(scale, this.handed);
    const drawn = { view: bareView(draft, sketch), foot: sketch.foot };
    scales.set(scale, drawn);
    return drawn;
  }
}

/** Of the figures of some drafts, model mm². */
const figuresArea = (drafts: readonly Draft[]): number =>
  drafts.reduce((sum, { figure: { min, max } }) => sum + (max[0] - min[0]) * (max[1] - min[1]), 0);
