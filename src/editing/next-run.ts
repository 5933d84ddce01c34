import { tooLargeFor } from '../layout';
import { type Book, type Copy, type Id, openRuns } from '../model';
import { leftOfFilm } from '../stock';
import { compareEach } from '../units';
import { addFilm, type FilmFields } from './films';
import { addRun, finishRun } from './runs';
import { type BookDraft, bookSoFar, type EditContext } from './step';

const waitingIn = (book: Book): Copy[] => Object.values(book.copy).filter(({ state }) => state === 'waiting');

/**
 * The film that a new run begins on: of films of the kind in use, and not put away, those on which most of the transfers that it is for
 * fit by their size; of these the fullest, which is that with most film, or sheets, left; the one in use among equals.
 * @param copies those that the run is for: all that wait, if nothing else is said
 */
export function filmForNextRun(
  book: Book,
  inUse: Id<'film'>,
  copies: readonly Copy[] = waitingIn(book),
): Id<'film'> {
  const own = book.film[inUse];
  const transfers = [...new Set(copies.map(({ transfer }) => book.transfer[transfer]))].filter(
    (transfer) => transfer !== undefined,
  );
  const films = Object.values(book.film)
    .filter(({ kind, archived }) => kind === own?.kind && !archived)
    .map((film) => ({
      id: film.id,
      rank: [
        transfers.filter((transfer) => tooLargeFor(film, transfer) === null).length,
        leftOfFilm(film),
        Number(film.id === inUse),
      ],
    }));
  const [best] = films.sort((a, b) => compareEach(b.rank, a.rank));
  return best?.id ?? inUse;
}

/** Begins the next run on the fullest film of a run's kind, if the last one open is printed now: there is always a film to lay copies on. */
export function openNextRun(draft: BookDraft, printed: string, name: string, context: EditContext): void {
  const { film, received = null } = draft.run[printed] ?? {};
  if (!film || received || openRuns(draft).length > 0) return;
  addRun(draft, { name, film: filmForNextRun(bookSoFar(draft), film) }, context);
}

/**
 * Begins a run where none is open, as in a book of which the last could not be read: on a film that is not put away, the fullest of its
 * kind.
 * @param film what lies in the printer where the book has none
 */
export function beginRun(
  draft: BookDraft,
  { name, film }: { name: string; film: FilmFields },
  context: EditContext,
): Id<'run'> {
  const book = bookSoFar(draft);
  const [any] = Object.values(book.film).filter(({ archived }) => !archived);
  return addRun(
    draft,
    { name, film: any ? filmForNextRun(book, any.id) : addFilm(draft, film, context) },
    context,
  );
}

/**
 * Closes the printing of a run.
 * @param next the name of the run that is begun if no other is open
 */
export function finishRunAndGoOn(draft: BookDraft, id: Id<'run'>, next: string, context: EditContext): void {
  finishRun(draft, id, context);
  openNextRun(draft, id, next, context);
}
