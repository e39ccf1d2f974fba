import * as texts from '../base/texts/package.js';
import type { Mesh } from '../documents/mesh.js';
import type { Scene } from '../documents/scene.js';
import { looseBlocks } from '../models/print/loose.js';
import { planPrint } from '../models/print/plan.js';
import { printModel } from '../models/print/print-model.js';
import { groupedScene, plateScenes } from '../models/print/scenes.js';
import { changeTable, filamentOf, partTable } from '../models/print/tables.js';
import type { Kernel } from '../solids/kernel.js';
import { writeCsv } from '../writers/csv.js';
import { writeStl } from '../writers/stl.js';
import { writeThreeMf } from '../writers/threemf.js';
import type { ModelSet } from './model.js';
import type { Study } from './study.js';

/** What of the house the print takes over: the solids of its blocks, and its scene. */
export interface PrintSources {
  readonly blocks: readonly Mesh[];
  readonly built: Scene;
}

/**
 * The scale model: each plate as 3MF, each part and the whole as STL, tables of parts and of what is thickened, and the
 * house in its blocks as one 3MF. Where the scale can't be printed there is none; a check tells why.
 */
export function printFiles(kernel: Kernel, { setout, laid }: Study, { blocks, built }: PrintSources): ModelSet {
  const { plan } = planPrint(setout);
  const { print, project } = setout.house;
  if (!plan) return { files: [], summary: [] };
  const { title } = project;
  const model = printModel(kernel, plan, looseBlocks(setout, laid.blocks, blocks));
  const folder = `model/print-1-${print.scale}`;
  const files = [
    { path: `${folder}/whole.stl`, bytes: writeStl([model.whole], { title }) },
    ...model.parts.map((part) => ({
      path: `${folder}/parts/${part.name}.stl`,
      bytes: writeStl([part.mesh], { title: `${title}: ${part.name}` }),
    })),
    ...plateScenes(model).map((scene, k) => ({ path: `${folder}/plate-${k + 1}.3mf`, bytes: writeThreeMf(scene) })),
    {
      path: `${folder}/blocks.3mf`,
      bytes: writeThreeMf(groupedScene(built, print.scale), { scale: 1 / print.scale }),
    },
    { path: `${folder}/parts.csv`, bytes: writeCsv(partTable(model)) },
    { path: `${folder}/thickened.csv`, bytes: writeCsv(changeTable(model)) },
  ];
  const count = model.parts.reduce((n, part) => n + part.count, 0);
  const supported = model.parts.filter((part) => part.supported).map((part) => part.name);
  const line = texts.printedModelAt(print.scale, count, model.plates, (filamentOf(model) / 1000).toFixed(0));
  return { files, summary: [supported.length > 0 ? texts.supportWantedBy(line, supported.join(', ')) : line] };
}
