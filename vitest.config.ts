import { defineConfig } from 'vitest/config';
import { ClosingLine } from './tests/support/closing-line.ts';

/** Rooms whose tests load the solid kernel: half a gigabyte each, so one at a time, and slow by nature. */
const kernel = ['kernel', 'solid', 'models/kernel', 'models/solid', 'workers', 'cli', 'laws', 'outside'].map(
  (room) => `tests/${room}/**/*.test.ts`,
);
const browser = ['tests/browser/**/*.test.ts'];

export default defineConfig({
  test: {
    passWithNoTests: true,
    reporters: ['default', new ClosingLine()],
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...kernel, ...browser],
          // one worker a core: the default leaves one idle
          maxWorkers: '100%',
          // laws over random designs are quick alone, and slow on a machine that does other work
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'kernel',
          include: kernel,
          pool: 'forks',
          maxWorkers: 1,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          sequence: { groupOrder: 1 },
        },
      },
      {
        test: {
          name: 'browser',
          include: browser,
          globalSetup: ['tests/browser/support/served-app.ts'],
          // One browser for all files, one file after another: each page loads a kernel of its own.
          isolate: false,
          fileParallelism: false,
          maxWorkers: 1,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          sequence: { groupOrder: 2 },
        },
      },
    ],
  },
});
