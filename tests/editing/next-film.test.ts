import { describe, expect, it } from 'vitest';
import { addFilm, addOrder, addTransfer, edits, filmForNextRun, firstFilm } from '../../src/editing';
import { type Book, type Film, openRuns } from '../../src/model';
import { asMinor, fromMm } from '../../src/units';
import { edited, freshIds, smallBook } from './book';

const { book: small } = smallBook();
const [own] = Object.values(small.film);
const used = own?.id ?? expect.fail();

/** A book with rolls more, each so wide and with so much film left. */
function withRolls(
  rolls: readonly (readonly [name: string, width: number, left: number])[],
  book = small,
): Book {
  return edited(book, (draft) => {
    for (const [name, width, left] of rolls) {
      const film = firstFilm(name, 'USD', 'mm');
      if (film.kind === 'roll')
        addFilm(draft, { ...film, width: fromMm(width), lengthLeft: fromMm(left) }, freshIds());
    }
  });
}
const nameOf = (book: Book, id: Film['id']) => book.film[id]?.name;

describe('a new run', () => {
  it.each([
    [[], 'Roll'],
    [[['Full', 330, 60_000]], 'Full'],
    [
      [
        ['Full', 330, 60_000],
        ['Wide', 600, 90_000],
      ],
      'Wide',
    ],
    [[['Short', 330, 2_000]], 'Roll'],
    // The copies that wait are 100 x 80 mm and 50 x 30 mm.
    [
      [
        ['Narrow', 60, 90_000],
        ['Full', 330, 60_000],
      ],
      'Full',
    ],
  ] as const)('of rolls %j begins on the fullest that all waiting copies fit: %s', (rolls, name) => {
    const book = withRolls(rolls);
    expect(nameOf(book, filmForNextRun(book, used))).toBe(name);
  });

  it('goes on where it is if copies fit nowhere, or another is put away', () => {
    const wide = edited(withRolls([['Full', 330, 60_000]]), (draft) => {
      const order = addOrder(draft, { name: 'Banner', due: null }, freshIds());
      const size = { width: fromMm(900), height: fromMm(900), typed: { width: '900 mm', height: '900 mm' } };
      addTransfer(draft, order, { name: 'banner', ...size, turn: 'fixed' }, 1, freshIds());
    });
    // As many fit on one as on the other.
    expect(nameOf(wide, filmForNextRun(wide, used))).toBe('Full');
    const away = withRolls([['Full', 330, 60_000]]);
    const full = Object.values(away.film).find(({ name }) => name === 'Full')?.id ?? expect.fail();
    const archived = edited(away, (draft) => {
      const film = draft.film[full];
      if (film) film.archived = true;
    });
    expect(filmForNextRun(archived, used)).toBe(used);
  });

  it('stays on sheets where sheets are used', () => {
    const { printer, width, margins, gap, cutting, together, peel, curl, archived } = firstFilm(
      'x',
      'USD',
      'mm',
    );
    const book = edited(withRolls([['Full', 330, 60_000]]), (draft) => {
      addFilm(
        draft,
        {
          ...{ printer, width, margins, gap, cutting, together, peel, curl, archived },
          kind: 'sheets',
          name: 'A3',
          length: fromMm(420),
          sheetsLeft: 10,
          price: asMinor(100),
        },
        freshIds(),
      );
    });
    const id = Object.values(book.film).find(({ kind }) => kind === 'sheets')?.id ?? expect.fail();
    expect(filmForNextRun(book, id)).toBe(id);
  });

  it.each<[string, Book, string]>([
    ['the fullest film', withRolls([['Full', 330, 60_000]]), 'Full'],
    [
      'a first one, if all are put away',
      edited(small, (draft) => {
        for (const film of Object.values(draft.film)) film.archived = true;
      }),
      'First',
    ],
    ['a first one, if there is none', { ...small, film: {}, copy: {} }, 'First'],
  ])('is begun where none is open, on %s', (_, book, name) => {
    const none = { ...book, run: {} };
    const begun = edited(none, (draft) => {
      edits.beginRun({ name: 'Run 9', film: firstFilm('First', 'USD', 'mm') }).apply(draft, freshIds());
    });
    expect(openRuns(begun).map((run) => [run.name, nameOf(begun, run.film)])).toEqual([['Run 9', name]]);
  });
});
