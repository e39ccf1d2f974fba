import type { Check } from '../base/figures.js';
import type { Memory } from '../base/memory.js';
import { once } from '../base/remembered.js';
import type { House } from '../description/house.js';
import type { Table } from '../documents/table.js';
import type { SheetSet } from '../drawings/sheets/house-sheets.js';
import { type Dwelling, dwellingOf } from '../dwelling/dwelling.js';
import { type Balance, balanceOf } from '../masonry/balance.js';
import type { LaidHouse } from '../masonry/block.js';
import { type CastPieces, castPieces } from '../masonry/cast-pieces.js';
import { layBlocks } from '../masonry/lay.js';
import { formNames } from '../masonry/longer.js';
import { type MasonryPlan, planMasonry } from '../masonry/plan.js';
import { type HouseSetout, setOutHouse } from '../setout/house.js';
import { staticsChecks } from '../statics/checks.js';
import { type CourseLaying, layingOf } from '../statics/laying-courses.js';
import type { Statics } from '../statics/results.js';
import { staticsOf } from '../statics/statics.js';
import { tieSteelKg } from '../statics/tie.js';
import { drawingRegister } from '../tables/drawing-register.js';
import { courseMould, type MouldOf } from '../works/calendar.js';
import { type Warmth, warmthOf } from '../works/warmth.js';
import { type Works, worksOf } from '../works/works.js';

/** Everything that is known of a house before solids and drawings are made; each part worked out when first asked for. */
export interface Study {
  /** The permit set, laid out; drawing brings much code with it, which only those wait for who ask for it. */
  readonly sheets: Promise<SheetSet>;
  /** The list of its sheets. */
  readonly register: Promise<Table>;
  /** Bond and moulds. */
  readonly plan: MasonryPlan;
  /** In bond, with the perpends that the moulds leave. */
  readonly setout: HouseSetout;
  readonly laid: LaidHouse;
  /** Voussoirs, arch rings, segments of rings, crown plugs. */
  readonly pieces: CastPieces;
  readonly balance: Balance;
  readonly statics: Statics;
  /** What must hold for the house to stand. */
  readonly stands: readonly Check[];
  readonly laying: readonly CourseLaying[];
  readonly dwelling: Dwelling;
  readonly works: Works;
  readonly warmth: Warmth;
}

/**
 * @param drawn the list of sheets, where another thread draws them
 * @param memory of courses that were laid before
 */
export function study(house: House, drawn?: Promise<Table>, memory?: Memory): Study {
  const plan = planMasonry(setOutHouse(house));
  const { setout } = plan;
  const nameOf = formNames(plan);
  // A course that no mould of the family fits has one of its own.
  const mouldOf: MouldOf = (block) => nameOf(block) ?? courseMould(block);
  const laid = once(() => layBlocks(setout, memory));
  const pieces = once(() => castPieces(setout));
  const balance = once(() => balanceOf(setout, laid(), pieces()));
  const statics = once(() => staticsOf(setout));
  const stands = once(() => staticsChecks(setout, statics()));
  const works = once(() => worksOf(setout, laid(), balance(), { ringSteelKg: tieSteelKg(setout), mouldOf }));
  const laying = once(() => layingOf(setout, laid()));
  const dwelling = once(() => dwellingOf(setout));
  const sheets = once(async () => {
    const [{ houseSheets }, { handedOver }] = await Promise.all([
      import('../drawings/sheets/house-sheets.js'),
      import('./handed.js'),
    ]);
    return houseSheets(setout, handedOver(known));
  });
  const register = once(async () => drawn ?? drawingRegister((await sheets()).sheets));
  const warmth = once(() => warmthOf(setout));
  const known: Study = {
    plan,
    setout,
    get laid() {
      return laid();
    },
    get pieces() {
      return pieces();
    },
    get balance() {
      return balance();
    },
    get statics() {
      return statics();
    },
    get stands() {
      return stands();
    },
    get laying() {
      return laying();
    },
    get dwelling() {
      return dwelling();
    },
    get works() {
      return works();
    },
    get sheets() {
      return sheets();
    },
    get register() {
      return register();
    },
    get warmth() {
      return warmth();
    },
  };
  return known;
}
