import type { Mesh } from '../documents/mesh.js';
import { mouldNames } from '../masonry/plan.js';
import { housePage } from '../models/page.js';
import { type PageSource, writeModelPage } from '../writers/html-model.js';
import type { PackageFile } from './file.js';
import type { Study } from './study.js';

/** Solids of a house that several files show: its blocks in their order, and its parts. */
export interface HouseMeshes {
  readonly blocks: readonly Mesh[];
  readonly parts: readonly Mesh[];
}

/** The page on which the house is turned, one file that needs no network. */
export async function pageFile(known: Study, { blocks, parts }: HouseMeshes, source: PageSource): Promise<PackageFile> {
  const { setout, laid, plan } = known;
  const page = housePage({ setout, blocks: laid.blocks, solids: blocks, parts, mouldOf: mouldNames(plan) });
  return { path: 'model/house.html', bytes: await writeModelPage(page, source) };
}
