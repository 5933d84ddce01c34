import { describe, expect, it } from 'vitest';
import { addFilm, addRun } from '../../src/editing';
import { filmsAhead, type Id } from '../../src/model';
import { edited, freshIds, smallBook } from '../editing/book';

describe('the films that what waits may come to lie on', () => {
  const { book } = smallBook();
  const [roll] = Object.values(book.film);
  if (!roll) throw new Error('no film');
  const { id: first, changed: _, ...fields } = roll;
  let second = '' as Id<'film'>;
  const two = edited(book, (draft) => {
    second = addFilm(draft, { ...fields, name: 'Wide roll' }, freshIds());
    addRun(draft, { name: 'Run 2', film: second, takes: 'chosen' }, freshIds());
    addRun(draft, { name: 'Run 10', film: first, takes: 'chosen' }, freshIds());
  });
  const idsOf = (...states: readonly ('draft' | 'locked' | 'printed')[]) => {
    const runs = Object.values(two.run).map((each, at) => ({ ...each, state: states[at] ?? 'draft' }));
    return filmsAhead({
      ...two,
      run: Object.fromEntries(runs.map((each) => [each.id, each])) as typeof two.run,
    }).map(({ id }) => id);
  };

  it.each([
    ['drafts', ['draft', 'draft', 'draft'], [first, second]],
    ['drafts beside a run that is sent to print', ['locked', 'draft', 'locked'], [second]],
    ['no draft', ['locked', 'locked', 'locked'], [first]],
    ['all printed', ['printed', 'printed', 'printed'], []],
  ] as const)('are told by the book alone: %s', (_, states, films) => {
    expect(idsOf(...states)).toEqual(films);
  });
});
