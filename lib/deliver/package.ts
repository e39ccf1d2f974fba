import { CAUTIONS } from '../base/cautions.js';
import type { Check } from '../base/figures.js';
import type { House, LengthUnit } from '../description/house.js';
import type { Table } from '../documents/table.js';
import type { KernelSource } from '../solids/kernel.js';
import type { CsvOptions } from '../writers/csv.js';
import type { PageSource } from '../writers/html-model.js';
import type { PdfSource } from '../writers/pdf/source.js';
import type { DrawingSet } from './drawings.js';
import type { PackageFile } from './file.js';
import { judged } from './judged.js';
import { type Study, study } from './study.js';
import { TABLES, tablesOf } from './tables.js';

/** Groups of outputs, each a folder of the package; `report` is the file `report.html`. */
export const OUTPUT_GROUPS = ['drawings', 'model', 'tables', 'report'] as const;
/** One group of outputs. */
export type OutputGroup = (typeof OUTPUT_GROUPS)[number];

/** What the library can't make itself and takes from its caller. */
export interface Tools {
  /** The geometry kernel: the manifold-3d package's module and the bytes of its `manifold.wasm`. */
  readonly kernel: () => Promise<KernelSource>;
  /** What makes PDF; without it the drawings have no PDF set. */
  readonly pdf?: () => Promise<PdfSource>;
  /** The script of the model's page; without it there is no page. */
  readonly page?: () => Promise<PageSource>;
  /** Draws on another thread at the same time, by `drawHouse`; drawn on this one when missing. */
  readonly drawApart?: (house: House) => Promise<DrawingSet>;
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
  /** Told before each stage. */
  readonly progress?: (stage: string) => void;
}

/** Checks a house without making anything; needs no geometry kernel. */
export const checkHouse = (house: House): Verdict => verdict(study(house));

/** Every table of the house, in the order of `TABLES`. */
export const houseTables = (house: House): Table[] => tablesOf(study(house));

/** One table of the house by its id; `undefined` where there is none of that id. */
export const houseTable = (house: House, id: string): Table | undefined =>
  TABLES.find((table) => table.id === id)?.of(study(house));

/**
 * The whole walk: description to every output. Pure apart from the kernel's bytes: the same house gives the same bytes.
 * @throws Error naming the part when a solid isn't closed; nothing is written by the library itself.
 */
export async function buildPackage(house: House, tools: Tools, options: PackageOptions = {}): Promise<HousePackage> {
  const wanted = OUTPUT_GROUPS.filter((group) => options.only?.includes(group) ?? true);
  const tell = options.progress ?? (() => undefined);
  // Drawings know nothing of blocks and solids, and take as long as both.
  const aside = wanted.length > 1 && wanted.includes('drawings') ? tools.drawApart?.(house) : undefined;
  // Trouble there is told when its files are waited for.
  aside?.catch(() => undefined);
  tell('laying courses');
  const known = study(house);
  const made = new Map<OutputGroup, Made>();
  for (const group of wanted) {
    if (aside && group === 'drawings') continue;
    tell(STAGES[group]);
    made.set(group, await make(known, group, tools, options));
  }
  if (aside) {
    tell(STAGES.drawings);
    made.set('drawings', toldOfDrawings(await aside));
  }
  const { summary, ...rest } = verdict(known);
  const parts = wanted.flatMap((group) => made.get(group) ?? []);
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
  drawings: 'drawing',
  model: 'making solids',
  tables: 'writing tables',
  report: 'writing the report',
};

/** Drawings, solids and workbooks bring much code with them, which only those wait for who ask for them. */
async function make(known: Study, group: OutputGroup, tools: Tools, { csv }: PackageOptions): Promise<Made> {
  if (group === 'drawings') {
    const [{ drawingSet }, pdf] = await Promise.all([import('./drawings.js'), tools.pdf?.()]);
    return toldOfDrawings(await drawingSet(known.setout, pdf));
  }
  if (group === 'model') {
    const [{ modelFiles }, kernel, page] = await Promise.all([import('./model.js'), tools.kernel(), tools.page?.()]);
    return modelFiles(known, kernel, page);
  }
  if (group === 'report') return { files: await (await import('./report-file.js')).reportFiles(known), summary: [] };
  return { files: await (await import('./table-files.js')).tableFiles(known, csv), summary: [] };
}

const toldOfDrawings = ({ files, summary }: DrawingSet): Made => ({ files, summary: [`drawings: ${summary}`] });

function verdict(known: Study): Verdict {
  const { checks, summary } = judged(known);
  return { checks, summary, cautions: CAUTIONS, units: known.setout.house.units };
}
