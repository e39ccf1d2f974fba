import { defineConfig } from 'vitest/config';
import { SHORT_RUN } from './cli/engine.js';

/** Tests that run the built program or the packed package; all others read the sources. */
const PROGRAM = ['tests/cli/**/*.test.ts', 'tests/package/**/*.test.ts', 'tests/docs/**/*.test.ts'];

export default defineConfig({
  test: {
    // One less than the cores is the runner's own choice: on two cores every file would wait for the one before it.
    maxWorkers: '100%',
    reporters: ['default', './tests/tools/closing-line.ts'],
    projects: [
      {
        test: {
          name: 'library',
          include: ['tests/**/*.test.ts'],
          exclude: PROGRAM,
          // Files of tests are short runs too.
          execArgv: [...SHORT_RUN],
          testTimeout: 180_000,
          hookTimeout: 300_000,
        },
      },
      {
        test: {
          name: 'program',
          include: PROGRAM,
          globalSetup: './tests/tools/build.ts',
          // Files of tests are short runs too.
          execArgv: [...SHORT_RUN],
          testTimeout: 240_000,
          hookTimeout: 300_000,
        },
      },
    ],
  },
});
