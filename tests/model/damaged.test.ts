import fc from 'fast-check';
import { expect, it } from 'vitest';
import { smallSettings } from '../editing/book';
import { playedBook } from '../editing/played-book';
import { openDamaged } from './mutate';
import { stored } from './stored';

it('a book that is damaged in any place opens, and loses nothing that does not hang on it', () => {
  const first = smallSettings();
  const records = stored(playedBook(50, 5));
  fc.assert(
    fc.property(fc.gen(), (gen) => {
      const { lost } = openDamaged(records, first, (most) => gen(fc.nat, { max: most - 1 }));
      expect(lost).toEqual([]);
    }),
    { numRuns: 1000, seed: 14 },
  );
});
