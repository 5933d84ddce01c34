import { defineConfig } from 'vitest/config';

/** Tests of a store, which lives as long as its module, and of modules with others put in place of what they import. */
const APART = ['tests/app/store/**/*.test.{ts,tsx}', 'tests/layout/run-view.test.ts'];

export default defineConfig({
  test: {
    testTimeout: 30_000,
    pool: 'threads',
    // Left to itself it leaves one core free, which is half of a small machine.
    maxWorkers: '100%',
    setupFiles: ['tests/property-seed.ts', 'tests/built-ins.ts'],
    projects: [
      {
        extends: true,
        // Pure code keeps nothing between tests: modules are read once a worker, not once a file.
        test: { name: 'pure', include: ['tests/**/*.test.{ts,tsx}'], exclude: APART, isolate: false },
      },
      {
        extends: true,
        // In processes, since threads of one would hear each other’s tabs.
        test: {
          name: 'apart',
          include: APART,
          pool: 'forks',
          isolate: false,
          setupFiles: ['tests/app/store/anew.ts'],
        },
      },
    ],
  },
});
