import { groupOf } from '../folder/carry.js';
import type { DryRun, Written } from '../folder/write.js';
import type { Terminal } from '../terminal.js';
import * as texts from '../texts/build.js';

const inMegabytes = (bytes: number): string => texts.megabytes((bytes / 1e6).toFixed(1));

const inFiles = (count: number): string => texts.filesCount(count);

/** What stands in the folder now, group by group. */
export function printWritten(terminal: Terminal, output: string, { files, carried }: Omit<Written, 'notes'>): void {
  const size = files.reduce((sum, entry) => sum + entry.size, 0);
  terminal.out();
  terminal.out(['strong', texts.writtenTo(output)], `: ${inFiles(files.length + 1)}, ${inMegabytes(size)}`);
  const kept = new Set(carried.files.map(({ path }) => path));
  for (const group of new Set(files.map(({ path }) => groupOf(path)))) {
    const own = files.filter(({ path }) => groupOf(path) === group);
    const asBefore = own.every(({ path }) => kept.has(path)) ? texts.asBefore : '';
    terminal.out(`  ${group.padEnd(10)}${inFiles(own.length)}${asBefore}`);
  }
  if (carried.dropped.length > 0) {
    terminal.out(['warn', texts.leftOut(carried.because, carried.dropped.join(', '))]);
    terminal.out(texts.runBuildWithoutOnly);
  }
}

const SIGNS = { added: '+', changed: '~', removed: '-' } as const;

/** What writing would do: new files, changed ones, removed ones. */
export function printDryRun(terminal: Terminal, output: string, would: DryRun): void {
  terminal.out();
  const { added, changed, removed, same } = would;
  const counts = texts.newChangedAsBefore(added.length, changed.length, same.length, removed.length);
  terminal.out(['strong', texts.nothingWasWritten(output)], texts.itWould(counts));
  for (const what of ['added', 'changed', 'removed'] as const)
    for (const path of would[what]) terminal.out(`  ${SIGNS[what]} ${path}`);
}
