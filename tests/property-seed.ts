/**
 * Properties draw anew each time they are run by hand. With a seed in `PROPERTY_SEED` all draw the same again: so does `npm test`,
 * in which what fails is due to the change at hand.
 */
import fc from 'fast-check';

const { PROPERTY_SEED } = process.env;
if (PROPERTY_SEED !== undefined) fc.configureGlobal({ seed: Number(PROPERTY_SEED) });
