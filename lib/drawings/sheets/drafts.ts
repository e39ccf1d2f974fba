import type { Block } from '../../documents/block.js';
import type { View } from '../../documents/drawing.js';
import type { SheetSize } from '../../documents/sheet-size.js';
import type { HouseSetout } from '../../setout/house.js';
import { bareView, type Draft } from '../draft.js';
import { elevationDraft, SIDES } from '../elevation.js';
import type { FootSpec } from '../foot.js';
import { planDraft } from '../plan.js';
import { sectionDraft } from '../section.js';
import { houseSections } from '../section-plane.js';
import { writtenUnits } from '../words.js';
import { furnitureOf } from './furniture.js';
import { composePage, type Page } from './page.js';

/** Views that share a sheet, and their scale. */
export interface Group {
  /** Places of the views in the set. */
  readonly members: readonly number[];
  readonly scale: number;
}

/** Places in the set: the plan, the elevations from north to west, then the sections. */
export const PLAN = 0;
export const ELEVATIONS: readonly number[] = SIDES.map((_, i) => PLAN + 1 + i);

/** Margins and the least that stands beside a figure, paper mm. */
export const LEAST_BESIDE = 50;

/** The views of a house in the order of the set, each laid out once for each scale that is tried. */
export class Drafts {
  readonly units: Draft['units'];
  private readonly drafts: readonly Draft[];
  private readonly drawn = new Map<string, { readonly view: View; readonly foot: FootSpec }>();
  private readonly pages = new Map<string, Page | null>();

  constructor(house: HouseSetout) {
    this.units = writtenUnits(house.house);
    this.drafts = [
      planDraft(house),
      ...SIDES.map((side) => elevationDraft(house, side)),
      ...houseSections(house).map((plane) => sectionDraft(house, plane)),
    ];
  }

  /** Places of the sections. */
  get sections(): number[] {
    const before = ELEVATIONS.length + 1;
    return Array.from({ length: this.drafts.length - before }, (_, i) => before + i);
  }

  /** Paper that the figures of some views take up by themselves, mm². */
  figureArea(members: readonly number[], scale: number): number {
    return members.reduce((sum, i) => {
      const [width, height] = this.figureSize(i, scale);
      return sum + width * height;
    }, 0);
  }

  /** A group's sheet, or `null` when the group is too much for it. */
  page(size: SheetSize, group: Group, tables: readonly Block[] = []): Page | null {
    const key = `${size.name} ${group.scale} ${group.members.join()}`;
    const known = tables.length === 0 ? this.pages.get(key) : undefined;
    if (known !== undefined) return known;
    const page = this.compose(size, group, tables);
    if (tables.length === 0) this.pages.set(key, page);
    return page;
  }

  private compose(size: SheetSize, { members, scale }: Group, tables: readonly Block[]): Page | null {
    // A figure that is larger than the sheet need not be laid out to know it.
    const tooLarge = members.some((i) => {
      const [width, height] = this.figureSize(i, scale);
      return width > size.width - LEAST_BESIDE || height > size.height - LEAST_BESIDE;
    });
    if (tooLarge) return null;
    const drawn = members.map((i) => this.draw(i, scale));
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

  private figureSize(i: number, scale: number): readonly [width: number, height: number] {
    const { min, max } = (this.drafts[i] as Draft).figure;
    return [(max[0] - min[0]) / scale, (max[1] - min[1]) / scale];
  }

  private draw(i: number, scale: number): { readonly view: View; readonly foot: FootSpec } {
    const key = `${i} ${scale}`;
    const known = this.drawn.get(key);
    if (known) return known;
    const draft = this.drafts[i] as Draft;
    const sketch = draft.draw(scale);
    const drawn = { view: bareView(draft, sketch), foot: sketch.foot };
    this.drawn.set(key, drawn);
    return drawn;
  }
}
