import { groupOf } from '../folder/carry.js';
import type { DryRun, Written } from '../folder/write.js';
import type { Terminal } from '../terminal.js';

const inMegabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;

const inFiles = (count: number): string => (count === 1 ? '1 file' : `${count} files`);

/** What stands in the folder now, group by group. */
export function printWritten(terminal: Terminal, output: string, { files, carried }: Omit<Written, 'notes'>): void {
  const size = files.reduce((sum, entry) => sum + entry.size, 0);
  terminal.out();
  terminal.out(['strong', `Written to ${output}`], `: ${inFiles(files.length + 1)}, ${inMegabytes(size)}`);
  const kept = new Set(carried.files.map(({ path }) => path));
  for (const group of new Set(files.map(({ path }) => groupOf(path)))) {
    const own = files.filter(({ path }) => groupOf(path) === group);
    const asBefore = own.every(({ path }) => kept.has(path)) ? ', as before' : '';
    terminal.out(`  ${group.padEnd(10)}${inFiles(own.length)}${asBefore}`);
  }
  if (carried.dropped.length > 0) {
    terminal.out(['warn', `  Left out, ${carried.because}: ${carried.dropped.join(', ')}.`]);
    terminal.out('  Run build without --only to make them anew.');
  }
}

const SIGNS = { added: '+', changed: '~', removed: '-' } as const;

/** What writing would do: new files, changed ones, removed ones. */
export function printDryRun(terminal: Terminal, output: string, would: DryRun): void {
  terminal.out();
  const { added, changed, removed, same } = would;
  const counts = `${added.length} new, ${changed.length} changed, ${same.length} as before, ${removed.length} removed`;
  terminal.out(['strong', `Nothing was written to ${output}`], `; it would be: ${counts}`);
  for (const what of ['added', 'changed', 'removed'] as const)
    for (const path of would[what]) terminal.out(`  ${SIGNS[what]} ${path}`);
}
