/**
 * `npm run walk [-- --seeds 20 --seed 1 --acts 500 --trail]`: lets random users loose in the built app, one a seed, and ends with an
 * error at the first thing on the screen that the book does not say. `--trail` tells every act.
 */
import { parseArgs } from 'node:util';
import { walkAll } from '.';

const { values } = parseArgs({
  options: {
    seeds: { type: 'string', default: '20' },
    seed: { type: 'string', default: '1' },
    acts: { type: 'string', default: '500' },
    trail: { type: 'boolean', default: false },
  },
});

const agreed = await walkAll({
  first: Number(values.seed),
  walks: Number(values.seeds),
  steps: Number(values.acts),
  trail: values.trail,
});
if (!agreed) process.exitCode = 1;
