import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addRun, chooseCopies, editOrder, editRun, setPlaces } from '../../src/editing';
import { copiesToLay, isAsked, layRun, problemOf, untakenBy } from '../../src/layout';
import { type Book, filmOf, type Id } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, freshIds, smallBook } from '../editing/book';
import { playedBook } from '../editing/played-book';

const { book, order, front, tag } = smallBook();
const run = Object.keys(book.run)[0] as Id<'run'>;
const film = Object.keys(book.film)[0] as Id<'film'>;
const copiesOf = (transfer: Id<'transfer'>) =>
  Object.values(book.copy).flatMap((copy) => (copy.transfer === transfer ? [copy.id] : []));
const untaken = (of: Book) => untakenBy(of, of.run[run] ?? expect.fail());

describe('what a run leaves waiting', () => {
  it.each([
    ['nothing of a run that takes all', book, { elsewhere: 0, unchosen: 0, unready: 0 }],
    [
      'what other runs were chosen for',
      edited(book, (draft) => {
        const other = addRun(draft, { name: 'Rush', film, takes: 'chosen' }, freshIds());
        chooseCopies(draft, other, copiesOf(tag));
      }),
      { elsewhere: 2, unchosen: 0, unready: 0 },
    ],
    [
      'what was not chosen for it',
      edited(book, (draft) => {
        editRun(draft, run, { takes: 'chosen' });
        chooseCopies(draft, run, copiesOf(front));
      }),
      { elsewhere: 0, unchosen: 2, unready: 0 },
    ],
    [
      'what waits for a proof',
      edited(book, (draft) => editOrder(draft, order, { awaits: { proof: true, blanks: false } })),
      { elsewhere: 0, unchosen: 0, unready: 5 },
    ],
    [
      'nothing that is archived',
      edited(book, (draft) => editOrder(draft, order, { archived: true })),
      { elsewhere: 0, unchosen: 0, unready: 0 },
    ],
    [
      'nothing that lies on a film',
      edited(book, (draft) => {
        editRun(draft, run, { takes: 'chosen' });
        setPlaces(draft, run, [
          [copiesOf(front)[0] as Id<'copy'>, { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false }],
        ]);
      }),
      { elsewhere: 0, unchosen: 4, unready: 0 },
    ],
  ])('is %s', (_, of, counts) => expect(untaken(of)).toEqual(counts));

  it('is, with what it lays out, every copy without a place, in whatever book', () => {
    fc.assert(
      fc.property(fc.nat({ max: 10_000 }), (seed) => {
        const played = playedBook(40, seed);
        for (const draft of Object.values(played.run)) {
          const own = filmOf(played, draft);
          if (draft.state !== 'draft' || !own) continue;
          const lies = new Set<string>(layRun(played, draft)?.copies.map(({ id }) => id));
          const laid = copiesToLay(problemOf(played, draft, own, 'placed')).filter(({ id }) => !lies.has(id));
          const { elsewhere, unchosen, unready } = untakenBy(played, draft);
          const open = Object.values(played.copy).filter(
            ({ state, role, transfer }) =>
              state === 'waiting' &&
              role !== 'filler' &&
              played.order[played.transfer[transfer]?.order ?? '']?.archived === false,
          );
          expect(laid.length + elsewhere + unchosen + unready).toBe(open.length);
          expect(open.filter((copy) => isAsked(played, draft, copy)).length).toBe(laid.length);
        }
      }),
      { numRuns: 60 },
    );
  });
});
