import { writeFileSync } from 'node:fs';
import type { Reporter, SerializedError, TestModule } from 'vitest/node';

/**
 * Ends a run with 'N passed, N failed', alone on the last line, for people and machines. A module that failed
 * before it had any tests, and an error outside of every test, each count as one failed. Where several runs make
 * one (scripts/test.mjs), the counts go to the file it names in TEST_COUNTS_FILE, and it prints the line.
 */
export class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly SerializedError[]) {
    const counts = { passed: 0, failed: errors.length, skipped: 0, pending: 0 };
    for (const module of modules) {
      const tests = [...module.children.allTests()];
      for (const test of tests) counts[test.result().state]++;
      const failedInTests = tests.some((test) => test.result().state === 'failed');
      if (!module.ok() && !failedInTests) counts.failed++;
    }
    const { passed, failed, skipped } = counts;
    const file = process.env.TEST_COUNTS_FILE;
    if (file) writeFileSync(file, JSON.stringify({ passed, failed }));
    if (skipped > 0) process.stdout.write(`\n${skipped} skipped\n`);
    if (!file) process.stdout.write(`\n${passed} passed, ${failed} failed\n`);
  }
}
