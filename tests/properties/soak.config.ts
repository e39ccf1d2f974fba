import { defineConfig } from 'vitest/config';

/** The long run over random houses: every output of two thousand of them, some hours. */
export default defineConfig({
  test: { include: ['tests/properties/outputs.test.ts'], env: { SOAK: 'long' }, reporters: ['verbose'] },
});
