/** `-` in the place of a file's name: standard input, or output. */
export const STDIO = '-';

/** What stands for it while the arguments are read, since yargs takes a lone dash for an option without a name. */
const STAND_IN = '\u0001stdio';

export const hideStdio = (args: readonly string[]): string[] => args.map((arg) => (arg === STDIO ? STAND_IN : arg));

/** The values that were given, with the dashes back in their places. */
export const showStdio = <A>(given: A): A =>
  Object.fromEntries(
    Object.entries(given as object).map(([name, value]) => [
      name,
      value === STAND_IN ? STDIO : Array.isArray(value) ? value.map((v) => (v === STAND_IN ? STDIO : v)) : value,
    ]),
  ) as A;
