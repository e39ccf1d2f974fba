import type { SheetKind } from '../../description/house.js';
import type { Table } from '../../documents/table.js';
import type { Draft } from '../draft.js';
import type { HandedOver } from '../handed.js';
import type { TextPart } from './text-parts.js';

/** Sheets that tell of one subject: its views, then its tables and texts. */
export interface Chapter {
  readonly kind: SheetKind;
  /** What sheets without views are called, and those whose views name no title of their own. */
  readonly title: string;
  readonly drafts: readonly Draft[];
  /** Views that can't be begun before other stages' results are known. */
  readonly late: (handed: HandedOver) => readonly Draft[];
  /**
   * `house`: the one scale of plans, elevations and sections; `near-house`: the largest at which no more sheets are
   * taken than at that one or, where a sheet has no room for a view at it, the next smaller; else scales in the order in
   * which they are tried.
   */
  readonly scales: 'house' | 'near-house' | readonly number[];
  readonly tables: (handed: HandedOver) => readonly Table[];
  /** Tables that stand beside the views where there is room, and are told elsewhere too. */
  readonly beside: readonly Table[];
  readonly texts: readonly TextPart[];
}
