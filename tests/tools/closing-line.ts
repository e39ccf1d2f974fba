import type { Reporter, TestModule } from 'vitest/node';

const SKIPPED_HINT = 'A skipped test counts as failed here: a run says what holds, not what was left out.';

/**
 * Prints `N passed, N failed` as the last line. Under CI a skipped test fails the run, and so does an empty run.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      const own = { ...count };
      for (const test of module.children.allTests()) count[test.result().state]++;
      const ran = count.passed + count.failed > own.passed + own.failed;
      if (module.state() === 'failed' && !ran) count.failed++;
    }
    const left = count.skipped + count.pending;
    const strict = process.env.CI === 'true';
    if (strict && left > 0) {
      process.exitCode = 1;
      console.log(SKIPPED_HINT);
    }
    if (strict && count.passed === 0) process.exitCode = 1;
    console.log(`${count.passed} passed, ${count.failed + (strict ? left : 0)} failed`);
  }
}
