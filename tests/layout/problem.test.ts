import { describe, expect, it } from 'vitest';
import { edits, session } from '../../src/editing';
import { candidateOf, holds, laidBy, placesOf, problemOf } from '../../src/layout';
import { type Copy, runOf } from '../../src/model';
import { createPlanner } from '../../src/packing';
import { fromMm, UPRIGHT, um } from '../../src/units';
import { freshIds, smallBook } from '../editing/book';

/** A book with a filler of 100 x 80 mm and an ordered copy like it on the film, a row each; others wait. */
function withFiller(rows: { first: number; filler: number }) {
  const { book, front } = smallBook();
  const ids = freshIds();
  const counted = session(book, edits.setCount(front, 1, 'filler'), ids).book;
  const open = runOf(counted, null);
  const own = Object.values(counted.copy).filter(({ transfer }) => transfer === front);
  const filler = own.find(({ role }) => role === 'filler');
  const [first] = own;
  if (!open || !filler || !first) throw new Error('no filler');
  const at = (y: number) => ({ x: fromMm(5), y: fromMm(y), angle: UPRIGHT, pinned: false });
  const lies: [Copy['id'], ReturnType<typeof at>][] = [
    [first.id, at(rows.first)],
    [filler.id, at(rows.filler)],
  ];
  return { ...open, filler, book: session(counted, edits.setPlaces(open.run.id, lies), ids).book };
}

describe('a filler', () => {
  const { book, run, film, filler } = withFiller({ first: 10, filler: 95 });

  it.each([
    { kept: 'what is pinned', keep: 'pinned' },
    { kept: 'what begins before it', keep: { before: fromMm(50) } },
  ] as const)('gives way to a layout around $kept', ({ keep }) => {
    const problem = problemOf(book, run, film, keep);
    const places = placesOf(createPlanner(problem.problem, 1).best(), problem, film);
    expect(places).toContainEqual([filler.id, null]);
    const laid = session(book, edits.layOut(run.id, places), freshIds());
    expect(laid.takenOff).toEqual([]);
    expect(laid.book.copy[filler.id]?.place).toBeNull();
  });

  it('stays where all that lies on the film does, or what begins before a place behind it', () => {
    for (const keep of ['placed', { before: um(fromMm(96)) }] as const) {
      const problem = problemOf(book, run, film, keep);
      const places = placesOf(createPlanner(problem.problem, 1).best(), problem, film);
      expect(places.map(([id]) => id)).not.toContain(filler.id);
    }
  });

  it('gives way when its run is tried another way', () => {
    const { book: own, ...open } = withFiller({ first: 95, filler: 10 });
    const candidate = candidateOf(own, open.run, { film: open.film });
    const { laid } = laidBy(candidate, createPlanner(candidate.problem.problem, 1).best());
    expect(laid && holds(laid)).toBe(true);
  });
});
