/** Wording of the commands about several houses. */

export const computeRowOfHouses = 'Compute a row of houses side by side and compare them in a table and a chart.';
export const fromOneSize = 'from one size to another by steps';
export const oneOfSomeWords = 'one of some words';
export const chartOfAnotherFigure = 'the chart of another figure';
export const whatToVaryPath = 'What to vary: PATH=FROM..TO/STEP or PATH=A|B; several make every pair';
export const figureOfChart = (charts: string): string => `Figure of the chart: ${charts}`;
export const itKnows = (charts: string): string => `It knows: ${charts}.`;
export const chartKnowsNot = (chart: string): string => `--chart doesn't know ${chart}.`;
export const housesCount = (count: number): string => (count === 1 ? '1 house' : `${count} houses`);
export const doneOf = (done: number, count: number): string => `${done} of ${count} done`;
export const tellWhatChangedBetween =
  'Tell what changed between two descriptions: figures, blocks, moulds, costs and checks.';
export const twoFiles = 'two files';
export const fileAndSame = 'a file, and the same with another value';
export const descriptionAsItWas = 'The description as it was';
export const descriptionAs = 'The description as it is; --set changes this one';
export const noVariantHasThis = '  no variant has this figure';
