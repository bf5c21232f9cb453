import { defineConfig } from 'vitest/config';

const solid = ['tests/kernel/**/*.test.ts', 'tests/solid/**/*.test.ts', 'tests/outside/**/*.test.ts'];
const browser = ['tests/browser/**/*.test.ts'];

export default defineConfig({
  test: {
    passWithNoTests: true,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [...solid, ...browser],
        },
      },
      {
        test: {
          name: 'kernel',
          include: solid,
          testTimeout: 120_000,
          hookTimeout: 120_000,
          maxWorkers: 1,
        },
      },
    ],
  },
});
