import { defineConfig } from 'vitest/config';

/** The tests of the folder whose code is changed; each must notice by itself, not by way of another folder's. */
export default defineConfig({
  test: { include: [`tests/${process.env.MUTATION_FOLDER}/**/*.test.ts`], testTimeout: 30_000 },
});
