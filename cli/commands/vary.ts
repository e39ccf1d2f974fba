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
import * as texts from '../texts/houses.js';
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
    ['vary house.yaml --set domes.room.radius=2.25..2.75/0.25', texts.fromOneSize],
    ['vary house.yaml --set "domes.room.profile=catenary|pointed"', texts.oneOfSomeWords],
    ['vary house.yaml --set wall.thickness=200..250/50mm --chart moulds', texts.chartOfAnotherFigure],
  ],
  names: FILE,
  options: {
    set: {
      ...SET.set,
      demandOption: true,
      describe: texts.whatToVaryPath,
    },
    chart: {
      type: 'string',
      default: 'safety',
      requiresArg: true,
      describe: texts.figureOfChart(CHARTS.join(', ')),
    },
    ...PRINTED,
    ...COMMA,
    ...COMMON,
  },
  run: async (given, terminal) => {
    const { file, set = [], chart } = given;
    const charted = CHARTS.find((known) => known === chart);
    if (charted === undefined) {
      const mend = didYouMean(chart, CHARTS, texts.itKnows(CHARTS.join(', ')));
      throw new UsageError(texts.chartKnowsNot(JSON.stringify(chart)), mend);
    }
    const format = formatOf(given);
    const [{ descriptionUnits }, { variantsOf, variantTable }] = await Promise.all([reading(), varying()]);
    const variants = variantsOf(set);
    const { name, text } = readInput(file);
    const progress = progressOn(terminal);
    progress.stage(texts.housesCount(variants.length));
    const results = await varyBeside({ text, name }, variants, (done) => {
      if (done < variants.length) progress.stage(texts.doneOf(done, variants.length));
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
