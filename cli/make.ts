import type { Options } from 'yargs';
import { COMMA, SET } from './command.js';
import { startDrawingThread } from './drawing-thread.js';
import { UsageError } from './exit.js';
import type { Delivery } from './folder/carry.js';
import { type Input, readInput } from './input.js';
import {
  type HousePackage,
  type Memory,
  OUTPUT_GROUPS,
  type OutputGroup,
  type PackageOptions,
  packing,
  reading,
} from './library.js';
import { didYouMean } from './suggest.js';
import * as texts from './texts/build.js';
import { tools } from './tools.js';
import { version } from './version.js';

/** What `build` and `watch` take to make a package. */
export const MAKING = {
  output: {
    alias: 'o',
    type: 'string',
    demandOption: true,
    requiresArg: true,
    describe: texts.folderOfPackage,
  },
  only: {
    type: 'string',
    array: true,
    requiresArg: true,
    describe: texts.makeSomeGroupsAlone(OUTPUT_GROUPS.join(', ')),
  },
  ...SET,
  ...COMMA,
  force: { type: 'boolean', default: false, describe: texts.moveFolderThatHolds },
} as const satisfies Record<string, Options>;

export interface MakingArguments {
  file: string;
  output: string;
  only: string[] | undefined;
  set: string[] | undefined;
  'decimal-comma': boolean;
  force: boolean;
}

/** A package made in memory, and what its folder shall know of it. */
export interface Making {
  readonly made: HousePackage;
  readonly delivery: Delivery;
}

/** `drawings,tables` and `--only drawings --only tables` alike; `null` when everything is asked for. */
export function groupsAsked(only: readonly string[] | undefined): readonly OutputGroup[] | null {
  if (only === undefined) return null;
  const names = only.flatMap((part) => part.split(',')).map((name) => name.trim());
  return names.map((name) => {
    const group = OUTPUT_GROUPS.find((known) => known === name);
    if (group !== undefined) return group;
    throw new UsageError(
      texts.onlyKnowsNot(JSON.stringify(name)),
      didYouMean(name, OUTPUT_GROUPS, texts.itKnows(OUTPUT_GROUPS.join(', '))),
    );
  });
}

/** Reads a description and makes its package. */
export async function makePackage(
  given: MakingArguments,
  progress: (stage: string) => void,
  memory?: Memory,
): Promise<Making> {
  const groups = groupsAsked(given.only);
  const comma = given['decimal-comma'];
  const also = [...(given.set ?? []), ...(comma ? ['--decimal-comma'] : [])];
  const input = readInput(given.file, also);
  const options = {
    ...(groups && { only: groups }),
    ...(memory && { memory }),
    csv: { decimalComma: comma },
    progress,
  };
  const made = await buildBeside(input, given.set ?? [], options);
  const { files, checks } = made;
  return { made, delivery: { files, only: groups, description: input.sha256, version, checks } };
}

/** Builds with all that is drawn on paper on a thread of its own where something else is asked for as well. */
async function buildBeside(
  input: Input,
  set: readonly string[],
  options: PackageOptions & Required<Pick<PackageOptions, 'progress'>>,
): Promise<HousePackage> {
  const beside = (options.only ?? OUTPUT_GROUPS).length > 1 ? startDrawingThread() : null;
  try {
    options.progress('reading');
    const [{ readDescription }, { buildPackage }] = await Promise.all([reading(), packing()]);
    const house = readDescription(input.text, input.name, { set });
    return await buildPackage(house, { ...tools, ...(beside && { drawApart: beside.draw }) }, options);
  } finally {
    await beside?.dismiss();
  }
}
