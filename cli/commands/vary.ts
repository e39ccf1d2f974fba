import { COMMA, COMMON, type Command, type CommonArguments, FILE, SET } from '../command.js';
import { EXIT, UsageError } from '../exit.js';
import { readInput } from '../input.js';
import { reading, type Table, type VariantResult, varying } from '../library.js';
import { printChart } from '../print/chart.js';
import { printJson } from '../print/json.js';
import { formatOf, PRINTED, printOneTable, type TableArguments } from '../print/tables.js';
import { progressOn } from '../progress.js';
import { didYouMean } from '../suggest.js';
import type { Terminal } from '../terminal.js';
import { varyBeside } from '../vary-threads.js';

/** Figures that the chart can show. */
const CHARTS = ['safety', 'floor', 'blocks', 'moulds', 'masonry', 'cost', 'fails'] as const;

interface Arguments extends CommonArguments, TableArguments {
  file: string;
  set: string[] | undefined;
  chart: string;
}

export const vary: Command<Arguments> = {
  examples: [
    ['vary house.yaml --set domes.room.radius=2.25..2.75/0.25', 'from one size to another by steps'],
    ['vary house.yaml --set "domes.room.profile=catenary|pointed"', 'one of some words'],
    ['vary house.yaml --set wall.thickness=200..250/50mm --chart moulds', 'the chart of another figure'],
  ],
  names: FILE,
  options: {
    set: {
      ...SET.set,
      demandOption: true,
      describe: 'What to vary: PATH=FROM..TO/STEP or PATH=A|B; several make every pair',
    },
    chart: {
      type: 'string',
      default: 'safety',
      requiresArg: true,
      describe: `Figure of the chart: ${CHARTS.join(', ')}`,
    },
    ...PRINTED,
    ...COMMA,
    ...COMMON,
  },
  run: async (given, terminal) => {
    const { file, set = [], chart } = given;
    const charted = CHARTS.find((known) => known === chart);
    if (charted === undefined) {
      const mend = didYouMean(chart, CHARTS, `It knows: ${CHARTS.join(', ')}.`);
      throw new UsageError(`--chart doesn't know ${JSON.stringify(chart)}.`, mend);
    }
    const format = formatOf(given);
    const [{ descriptionUnits }, { variantsOf, variantTable }] = await Promise.all([reading(), varying()]);
    const variants = variantsOf(set);
    const { name, text } = readInput(file);
    const progress = progressOn(terminal);
    progress.stage(variants.length === 1 ? '1 house' : `${variants.length} houses`);
    const results = await varyBeside({ text, name }, variants, (done) => {
      if (done < variants.length) progress.stage(`${done} of ${variants.length} done`);
    });
    progress.end();
    const table = variantTable(results, descriptionUnits(text, set));
    if (format === 'json') printJson(terminal, { variants: results, table });
    else {
      await printOneTable(terminal, table, format, given['decimal-comma']);
      if (format === 'text') chartOf(terminal, table, results, charted);
    }
    return results.some((result) => 'figures' in result) ? EXIT.fine : EXIT.description;
  },
};

function chartOf(terminal: Terminal, table: Table, results: readonly VariantResult[], key: string): void {
  const column = table.columns.find((one) => one.key === key);
  const bars = table.rows.map((row, i) => {
    const value = row[key];
    const label = Object.values(results[i]?.variant.varied ?? {}).join(', ');
    return { label, value: typeof value === 'number' ? value : null };
  });
  const title = column?.unit ? `${column.label} (${column.unit})` : (column?.label ?? key);
  printChart(terminal, title, bars, column?.kind === 'integer' ? 0 : (column?.decimals ?? 2));
}
