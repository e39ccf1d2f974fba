import { defineConfig } from 'vitest/config';

/** The long run over random houses: every output of two thousand of them, some hours; and of changed samples. */
export default defineConfig({
  test: {
    include: ['tests/properties/outputs.test.ts', 'tests/properties/mutated.test.ts'],
    env: { SOAK: 'long' },
    reporters: ['verbose'],
  },
});
