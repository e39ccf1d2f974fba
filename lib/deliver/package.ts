import type { Check } from '../base/figures.js';
import type { Memory } from '../base/memory.js';
import { once } from '../base/remembered.js';
import { CAUTIONS } from '../base/texts/cautions.js';
import * as texts from '../base/texts/package.js';
import type { House, LengthUnit } from '../description/house.js';
import type { Table } from '../documents/table.js';
import type { HandedOver } from '../drawings/handed.js';
import type { KernelSource } from '../solids/kernel.js';
import type { CsvOptions } from '../writers/csv.js';
import type { PageSource } from '../writers/html-model.js';
import type { PdfSource } from '../writers/pdf/source.js';
import { DRAWN_GROUPS, type DrawnGroup, drawGroup } from './drawn.js';
import type { DrawnSet, PackageFile } from './file.js';
import { OUTPUT_GROUPS, type OutputGroup } from './groups.js';
import { handedOver } from './handed.js';
import { type Judgement, judged } from './judged.js';
import { type Study, study } from './study.js';

/** What the library can't make itself and takes from its caller. */
export interface Tools {
  /** The geometry kernel: the manifold-3d package's module and the bytes of its `manifold.wasm`. */
  readonly kernel: () => Promise<KernelSource>;
  /** What makes PDF; without it the drawings have no PDF set. */
  readonly pdf?: () => Promise<PdfSource>;
  /** The script of the model's page; without it there is no page. */
  readonly page?: () => Promise<PageSource>;
  /** Draws on another thread at the same time, by `drawHouse`; drawn on this one when missing. */
  readonly drawApart?: (
    house: House,
    groups: readonly DrawnGroup[],
    handed: Promise<HandedOver>,
  ) => Promise<ReadonlyMap<DrawnGroup, DrawnSet>>;
}

/** What was found out of a house. Figures stand in SI: mm, kPa, kN, kg, m2. */
export interface Verdict {
  readonly checks: readonly Check[];
  /** Lines that tell what the house is made of. */
  readonly summary: readonly string[];
  readonly cautions: readonly string[];
  /** The units of the description: figures are told in them, and stand in SI here. */
  readonly units: LengthUnit;
}

/** Every file of a package in memory, and what was found out of the house. */
export interface HousePackage extends Verdict {
  readonly files: readonly PackageFile[];
}

/** What to make, how, and whom to tell of progress. */
export interface PackageOptions {
  /** Groups to make; all when missing. */
  readonly only?: readonly OutputGroup[];
  /** How CSV is written; numbers with a decimal point when missing. */
  readonly csv?: CsvOptions;
  /** Of what was made for such a house before; geometry of its domes that is the same isn't made again. */
  readonly memory?: Memory;
  /** Told before each stage. */
  readonly progress?: (stage: string) => void;
}

/** Checks a house without making anything; needs no geometry kernel. */
export function checkHouse(house: House): Verdict {
  const known = study(house);
  return verdict(known, judged(known));
}

/** Every table of the house, in the order of `TABLES`. */
export const houseTables = async (house: House): Promise<Table[]> =>
  (await import('./tables.js')).tablesOf(study(house));

/** One table of the house by its id; `undefined` where there is none of that id. */
export const houseTable = async (house: House, id: string): Promise<Table | undefined> =>
  (await import('./tables.js')).TABLES.find((table) => table.id === id)?.of(study(house));

/**
 * The whole walk: description to every output. Pure apart from the kernel's bytes: the same house gives the same bytes.
 * @throws Error naming the part when a solid isn't closed; nothing is written by the library itself.
 */
export async function buildPackage(house: House, tools: Tools, options: PackageOptions = {}): Promise<HousePackage> {
  const wanted = OUTPUT_GROUPS.filter((group) => options.only?.includes(group) ?? true);
  const tell = options.progress ?? (() => undefined);
  const drawn = DRAWN_GROUPS.filter((group) => wanted.includes(group));
  let handOver: (handed: HandedOver) => void = () => undefined;
  const handed = new Promise<HandedOver>((resolve) => {
    handOver = resolve;
  });
  const aside = wanted.length > 1 && drawn.length > 0 ? tools.drawApart?.(house, drawn, handed) : undefined;
  // The tables list the sheets; where these aren't drawn there, they are laid out here.
  const register = drawn.includes('drawings') ? aside?.then((sets) => registerOf(sets)) : undefined;
  // Trouble there is told when its files are waited for.
  for (const waited of [aside, register]) waited?.catch(() => undefined);
  tell(texts.layingCourses);
  const known = study(house, register, options.memory);
  if (register) handOver(handedOver(known));
  const judgement = once(() => judged(known));
  const made = new Map<OutputGroup, Made>();
  // Tables come last, for they may wait for the register.
  for (const group of [...wanted].sort((a, b) => Number(a === 'tables') - Number(b === 'tables'))) {
    if (aside && drawn.some((one) => one === group)) continue;
    tell(STAGES[group]);
    made.set(group, await make(known, judgement, group, tools, options));
  }
  if (aside) {
    tell(drawn.map((group) => STAGES[group]).join(', '));
    for (const [group, set] of await aside) made.set(group, told(group, set));
  }
  const { summary, ...rest } = verdict(known, judgement());
  const parts = wanted.flatMap((group) => made.get(group) ?? []);
  options.memory?.turn();
  return {
    ...rest,
    summary: [...summary, ...parts.flatMap((part) => part.summary)],
    files: parts.flatMap((part) => part.files),
  };
}

/** What one group came to, and lines that tell of it. */
interface Made {
  readonly files: readonly PackageFile[];
  readonly summary: readonly string[];
}

const STAGES: Readonly<Record<OutputGroup, string>> = {
  drawings: texts.drawing,
  model: texts.makingSolids,
  moulds: texts.drawingMoulds,
  templates: texts.drawingTemplates,
  tables: texts.writingTables,
  report: texts.writingReport,
};

/** Drawings, solids and workbooks bring much code with them, which only those wait for who ask for them. */
async function make(
  known: Study,
  judgement: () => Judgement,
  group: OutputGroup,
  tools: Tools,
  { csv, memory }: PackageOptions,
): Promise<Made> {
  if (isDrawn(group)) return told(group, await drawGroup(group, known, await tools.pdf?.()));
  if (group === 'model') {
    const [{ modelFiles }, kernel, page] = await Promise.all([import('./model.js'), tools.kernel(), tools.page?.()]);
    return modelFiles(known, kernel, page, memory);
  }
  if (group === 'report')
    return { files: await (await import('./report-file.js')).reportFiles(known, judgement()), summary: [] };
  return { files: await (await import('./table-files.js')).tableFiles(known, csv), summary: [] };
}

function registerOf(sets: ReadonlyMap<DrawnGroup, DrawnSet>): Table {
  const register = sets.get('drawings')?.register;
  if (!register) throw new Error('the drawings came without their register');
  return register;
}

const isDrawn = (group: OutputGroup): group is DrawnGroup => DRAWN_GROUPS.some((drawn) => drawn === group);

const told = (group: DrawnGroup, { files, summary }: DrawnSet): Made => ({ files, summary: [`${group}: ${summary}`] });

function verdict(known: Study, { checks, summary }: Judgement): Verdict {
  return { checks, summary, cautions: CAUTIONS, units: known.setout.house.units };
}
