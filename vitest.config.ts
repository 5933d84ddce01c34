import { defineConfig } from 'vitest/config';

const STORE = 'tests/app/store/**/*.test.{ts,tsx}';

export default defineConfig({
  test: {
    testTimeout: 30_000,
    pool: 'threads',
    projects: [
      {
        extends: true,
        // Pure code keeps nothing between tests: modules are read once a worker, not once a file.
        test: { name: 'pure', include: ['tests/**/*.test.{ts,tsx}'], exclude: [STORE], isolate: false },
      },
      // A store lives as long as its module, so each file has its own.
      { extends: true, test: { name: 'store', include: [STORE] } },
    ],
  },
});
