import { defineConfig } from 'vitest/config';

/**
 * The tests of the folder whose code is changed; each must notice by itself, not by way of another folder's. Code that counts
 * what reaches it is slow: a test has time enough on a busy machine, and what a change makes endless is ended from outside.
 */
export default defineConfig({
  test: { include: [`tests/${process.env.MUTATION_FOLDER}/**/*.test.ts`], testTimeout: 180_000 },
});
