import { describe, expect, it } from 'vitest';
import { addFilm, noteFilmBox, removeFilm } from '../../src/editing';
import type { Id } from '../../src/model';
import { edited, freshIds, smallBook } from './book';

/** The small book, whose run lies on its roll, with a spare roll in its box that no run is on. */
function twoRolls() {
  const { book } = smallBook();
  const [roll] = Object.values(book.film);
  if (roll?.kind !== 'roll') throw new Error('the small book has a roll');
  let spare = '' as Id<'film'>;
  const both = edited(book, (draft) => {
    spare = addFilm(draft, { ...roll, name: 'Spare' }, freshIds());
    const box = { lot: 'L-1', bestBefore: null, opened: null, reorder: null, order: '' };
    noteFilmBox(draft, spare, box, freshIds());
  });
  return { both, used: roll.id, spare, left: roll.lengthLeft };
}
const without = ({ both }: ReturnType<typeof twoRolls>, id: string) =>
  edited(both, (draft) => removeFilm(draft, id, freshIds()));

describe('a film that is removed', () => {
  it('stays with the run that is on it, archived, and so does what is left of it', () => {
    const rolls = twoRolls();
    const { film, entry, item } = without(rolls, rolls.used);
    expect([film[rolls.used]?.archived, film[rolls.spare]?.archived]).toEqual([true, false]);
    expect([entry, item]).toEqual([rolls.both.entry, rolls.both.item]);
  });

  it('is gone with its box where no run is on it; the ledger says what was thrown away', () => {
    const rolls = twoRolls();
    expect(rolls.both.item[rolls.spare]).toMatchObject({ lot: 'L-1' });
    const { film, entry, item } = without(rolls, rolls.spare);
    expect(film).toEqual({ [rolls.used]: rolls.both.film[rolls.used] });
    expect(item[rolls.spare]).toBeUndefined();
    expect(Object.values(entry).filter(({ id }) => !rolls.both.entry[id])).toMatchObject([
      { item: rolls.spare, kind: 'discarded', amount: -rolls.left },
    ]);
  });

  it('is none that is gone already', () => {
    const rolls = twoRolls();
    expect(without(rolls, 'gone')).toEqual(rolls.both);
  });
});
