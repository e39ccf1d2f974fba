import { CAUTIONS } from '../base/cautions.js';
import type { Check } from '../base/figures.js';
import type { House } from '../description/house.js';
import type { Mesh } from '../documents/mesh.js';
import type { Table } from '../documents/table.js';
import { houseViews } from '../drawings/house-views.js';
import { type Balance, balanceOf } from '../masonry/balance.js';
import type { LaidHouse } from '../masonry/block.js';
import { bondHouse } from '../masonry/bond/bond.js';
import { masonryChecks } from '../masonry/checks.js';
import { layBlocks } from '../masonry/lay.js';
import { type MasonryPlan, planMasonry } from '../masonry/plan.js';
import { planChecks } from '../masonry/plan-checks.js';
import { type HouseSetout, setOutHouse } from '../setout/house.js';
import { blockSolids } from '../solids/block-solids.js';
import { houseSolids } from '../solids/house-solids.js';
import { type KernelSource, loadKernel } from '../solids/kernel.js';
import { blockTable } from '../tables/blocks.js';
import { bondTable } from '../tables/bonds.js';
import { courseTable } from '../tables/courses.js';
import { cutTable } from '../tables/cuts.js';
import { mouldTable } from '../tables/moulds.js';
import { openingTable } from '../tables/openings.js';
import { volumeTable } from '../tables/volumes.js';
import { writeCsv } from '../writers/csv.js';
import { writeDxf } from '../writers/dxf.js';
import { writeStl } from '../writers/stl.js';
import { writeSvg } from '../writers/svg.js';
import { setoutChecks } from './checks.js';

/** Groups of outputs, each a folder of the package. */
export const OUTPUT_GROUPS = ['drawings', 'model', 'tables'] as const;
export type OutputGroup = (typeof OUTPUT_GROUPS)[number];

/** What the library can't make itself and takes from its caller. */
export interface Tools {
  /** The geometry kernel: the manifold-3d package's module and the bytes of its `manifold.wasm`. */
  readonly kernel: () => Promise<KernelSource>;
  /** Makes one group's files at the same time on another thread, by `groupFiles`; on this one when missing. */
  readonly apart?: (house: House, group: OutputGroup) => Promise<readonly PackageFile[]>;
}

export interface PackageFile {
  /** Relative, with forward slashes. */
  readonly path: string;
  readonly bytes: Uint8Array;
}

export interface Verdict {
  readonly checks: readonly Check[];
  /** Lines that tell what the house is made of. */
  readonly summary: readonly string[];
  readonly cautions: readonly string[];
}

export interface HousePackage extends Verdict {
  readonly files: readonly PackageFile[];
}

export interface PackageOptions {
  /** Groups to make; all when missing. */
  readonly only?: readonly OutputGroup[];
  /** Told before each stage. */
  readonly progress?: (stage: string) => void;
}

/** Everything that is known of a house before solids and drawings are made. */
interface Study {
  /** In bond, with the perpends that the moulds leave. */
  readonly setout: HouseSetout;
  readonly plan: MasonryPlan;
  readonly laid: LaidHouse;
  readonly balance: Balance;
}

function study(house: House): Study {
  const plan = planMasonry(setOutHouse(house));
  const { setout } = plan;
  const laid = layBlocks(setout);
  return { setout, plan, laid, balance: balanceOf(setout, laid) };
}

/** Checks a house without making anything; needs no geometry kernel. */
export const checkHouse = (house: House): Verdict => verdict(study(house));

/** Every table of the house. */
export const houseTables = (house: House): Table[] => tablesOf(study(house));

/** One table of the house, without the work that only others need; `undefined` when there is none of that name. */
export function houseTable(house: House, id: string): Table | undefined {
  const make = Object.entries(TABLES).find(([name]) => name === id)?.[1];
  return make?.(study(house));
}

/**
 * The whole walk: description to every output. Pure apart from the kernel's bytes: the same house gives the same bytes.
 * @throws Error naming the part when a solid isn't closed; nothing is written by the library itself.
 */
export async function buildPackage(house: House, tools: Tools, options: PackageOptions = {}): Promise<HousePackage> {
  const wanted = OUTPUT_GROUPS.filter((group) => options.only?.includes(group) ?? true);
  const tell = options.progress ?? (() => undefined);
  // Drawings know nothing of blocks and solids, and take as long as both.
  const aside = wanted.length > 1 && wanted.includes('drawings') ? tools.apart?.(house, 'drawings') : undefined;
  // Trouble there is told when its files are waited for.
  aside?.catch(() => undefined);
  tell('laying courses');
  const known = study(house);
  const made = new Map<OutputGroup, readonly PackageFile[]>();
  for (const group of wanted) {
    if (aside && group === 'drawings') continue;
    tell(STAGES[group]);
    made.set(group, await filesOf(known, group, tools));
  }
  if (aside) {
    tell(STAGES.drawings);
    made.set('drawings', await aside);
  }
  return { ...verdict(known), files: wanted.flatMap((group) => made.get(group) ?? []) };
}

/** The files of one group alone. */
export const groupFiles = (house: House, group: OutputGroup, tools: Tools): Promise<readonly PackageFile[]> =>
  group === 'drawings'
    ? Promise.resolve(drawingFiles(bondHouse(setOutHouse(house)).setout))
    : filesOf(study(house), group, tools);

const STAGES: Readonly<Record<OutputGroup, string>> = {
  drawings: 'drawing',
  model: 'making solids',
  tables: 'writing tables',
};

async function filesOf(known: Study, group: OutputGroup, tools: Tools): Promise<readonly PackageFile[]> {
  if (group === 'drawings') return drawingFiles(known.setout);
  if (group === 'model') return modelFiles(known, tools);
  return tablesOf(known).map((table) => ({ path: `tables/${table.id}.csv`, bytes: writeCsv(table) }));
}

const drawingFiles = (setout: HouseSetout): PackageFile[] =>
  houseViews(setout).flatMap((view) => [
    { path: `drawings/${view.id}.dxf`, bytes: writeDxf(view) },
    { path: `drawings/${view.id}.svg`, bytes: writeSvg(view) },
  ]);

async function modelFiles({ setout, laid }: Study, tools: Tools): Promise<PackageFile[]> {
  const kernel = await loadKernel(await tools.kernel());
  const { whole, parts } = houseSolids(kernel, setout);
  const blocks = blockSolids(kernel, setout, laid.blocks);
  const title = setout.house.project.title;
  const stl = (path: string, meshes: readonly Mesh[], scale = 1) => ({
    path: `model/${path}.stl`,
    bytes: writeStl(meshes, { scale, title }),
  });
  const { scale } = setout.house.print;
  return [
    stl('house', [whole]),
    stl(`house-1-${scale}`, [whole], 1 / scale),
    stl('blocks', blocks),
    ...parts.map((part) => stl(`parts/${part.name.replaceAll(':', '-')}`, [part])),
  ];
}

/** How each table is made, in the order listed. */
const TABLES = {
  blocks: ({ plan, laid }: Study) => blockTable(plan, laid),
  courses: ({ plan, laid }: Study) => courseTable(plan, laid),
  moulds: ({ plan, laid }: Study) => mouldTable(plan, laid),
  cuts: ({ plan, laid }: Study) => cutTable(plan, laid),
  bonds: ({ plan }: Study) => bondTable(plan),
  openings: ({ setout }: Study) => openingTable(setout),
  volumes: ({ setout, balance }: Study) => volumeTable(setout, balance),
};

const tablesOf = (known: Study): Table[] => Object.values(TABLES).map((make) => make(known));

function verdict({ setout, plan, laid, balance }: Study): Verdict {
  const cut = laid.blocks.filter((b) => b.cutBy.length > 0).length;
  const { domes, arches } = setout;
  const courses = domes.reduce((n, d) => n + d.courses.length, 0);
  return {
    checks: [...masonryChecks(setout, laid, balance), ...planChecks(plan), ...setoutChecks(setout)],
    summary: [
      `${count(domes.length, 'dome')}, ${count(courses, 'course')}, ${count(arches.length, 'opening')}`,
      `${count(laid.blocks.length, 'block')}, ${cut} of them cut; ${count(laid.slivers.length, 'remnant')} left to mortar`,
      `${plan.bond} bond; ${count(plan.moulds.moulds.length, 'mould')}, ${plan.moulds.proven ? 'proven the fewest' : `at least ${plan.moulds.atLeast} needed`}`,
      `masonry ${(balance.envelope / 1e9).toFixed(3)} m3, of it blocks ${(balance.blocks / 1e9).toFixed(3)} m3`,
    ],
    cautions: CAUTIONS,
  };
}

const count = (n: number, noun: string): string => `${n} ${noun}${n === 1 ? '' : 's'}`;
