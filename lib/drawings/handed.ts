import type { Table } from '../documents/table.js';
import type { Statics } from '../statics/results.js';

/** What one gets through: a rectangle of whole sides. */
export interface ClearOpening {
  readonly width: number;
  readonly height: number;
}

/** What sheets show of other stages' results, handed over as neutral documents by the caller. */
export interface HandedOver {
  /** Forces of each dome, for sections with the line of thrust. */
  readonly statics: Statics | null;
  /** Tables of the sheets for structure and laying; a sheet without any is left out. */
  readonly structure: readonly Table[];
  readonly laying: readonly Table[];
  /** Tables of moulds and courses, beside the developed courses. */
  readonly moulds: readonly Table[];
  /** Net floor of each room by its id, m2. */
  readonly floors: Readonly<Record<string, number>>;
  /** Net floor of all rooms together, each place counted once, m2; 0 where none is described. */
  readonly roomFloor: number;
  /** Clear rectangle inside frame and leaf of each opening that goes through, by its id, mm. */
  readonly clears: Readonly<Record<string, ClearOpening>>;
  /** Level of the ring tie in each dome that has one, by the dome's id, mm above the floor. */
  readonly ties: Readonly<Record<string, number>>;
  /** Mould of each course, or its two, by dome and course: `hall 3`. */
  readonly mouldOf: Readonly<Record<string, string>>;
  /** Numbers of the blocks that are laid in each course, by dome and course; `null`: not known yet. */
  readonly laidIn: Readonly<Record<string, readonly number[]>> | null;
}

export const NOTHING_HANDED: HandedOver = {
  statics: null,
  structure: [],
  laying: [],
  moulds: [],
  floors: {},
  roomFloor: 0,
  clears: {},
  ties: {},
  mouldOf: {},
  laidIn: null,
};
