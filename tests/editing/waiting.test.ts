import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addRun,
  type BookDraft,
  chooseCopies,
  lockRun,
  moveToRun,
  session,
  setPlaces,
} from '../../src/editing';
import { type Book, type Copy, embeddedIn, type Id, openRuns } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { anyEdit } from './any-edit';
import { context, edited, freshIds, smallBook } from './book';

/** Copies that wait for a run that is on its way or gone: no act could place them. */
const stuck = (book: Book): Copy[] => {
  const open = new Set<string>(openRuns(book).flatMap(({ id, state }) => (state === 'draft' ? [id] : [])));
  return Object.values(book.copy).filter(
    ({ state, run }) => state === 'waiting' && run !== null && !open.has(run),
  );
};

type Give = (draft: BookDraft, run: Id<'run'>, copies: readonly Id<'copy'>[]) => void;

/** Copies on a run that is sent to print which it does not print: nothing was embedded of them. */
const astray = (book: Book): Copy[] =>
  Object.values(book.copy).filter((copy) => {
    const run = book.run[copy.run ?? ''];
    if (copy.state !== 'placed' || !run || run.state === 'draft') return false;
    return !embeddedIn(run).some(({ copies }) => copies.some(({ id }) => id === copy.id));
  });

describe('a copy that waits', () => {
  const { book, front, tag } = smallBook();
  const copiesOf = (id: Id<'transfer'>) =>
    Object.values(book.copy)
      .filter(({ transfer }) => transfer === id)
      .map((copy) => copy.id);
  const [first, ...others] = copiesOf(front) as [Id<'copy'>, ...Id<'copy'>[]];
  const film = Object.values(book.film)[0]?.id as Id<'film'>;
  let run = '' as Id<'run'>;
  const locked = edited(book, (draft) => {
    run = addRun(draft, { name: 'Rush', film, takes: 'chosen' }, freshIds());
    chooseCopies(draft, run, [first, ...others]);
    const place = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
    setPlaces(draft, run, [[first, place]]);
    lockRun(draft, run, context());
  });

  it('is let go of by the run it was chosen for when that is locked without it', () => {
    expect(others.map((id) => locked.copy[id]?.run)).toEqual(others.map(() => null));
    expect(locked.copy[first]?.run).toBe(run);
  });

  it.each([
    ['chosen for', chooseCopies],
    ['moved to', moveToRun],
    [
      'placed on',
      (draft, to, [copy]) =>
        setPlaces(
          draft,
          to,
          copy ? [[copy, { x: fromMm(200), y: fromMm(10), angle: UPRIGHT, pinned: false }]] : [],
        ),
    ],
  ] satisfies [string, Give][])('cannot be %s a run that is locked', (_, give) => {
    const [copy] = copiesOf(tag) as [Id<'copy'>];
    const after = edited(locked, (draft) => give(draft, run, [copy]));
    expect(after.copy[copy]).toEqual(locked.copy[copy]);
  });

  it('can be taken by some run, whatever was done', () => {
    fc.assert(
      fc.property(fc.array(anyEdit, { size: 'max', maxLength: 30 }), (draws) => {
        let now = book;
        for (const draw of draws) {
          const edit = draw(now);
          if (edit) now = session(now, edit, freshIds()).book;
          expect(stuck(now)).toEqual([]);
          expect(astray(now)).toEqual([]);
        }
      }),
      { numRuns: 200 },
    );
  });
});
