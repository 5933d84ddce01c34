import { type FilmSize, inOtherSize } from '../../src/costing';
import type { OtherWay } from '../../src/editing';
import type { Trial } from '../../src/layout';
import { asId, type Book, type Film, waysToCut } from '../../src/model';
import { type Micrometres, mayLieAt, QUARTER, um } from '../../src/units';
import type { Words } from '../words';
import { shortLength, type Ways } from '../words/format';

/** Another way to lay a run out. */
export interface Way {
  readonly label: string;
  readonly trial: Trial;
  readonly takes: OtherWay['takes'];
}

/** A film that is not in stock: no record has its id. */
const NEW = asId<'film'>('tried');

const togethers = ['any', 'apart', 'by-due'] as const;

/**
 * The film as it is set, every other film in stock, and what of the film's settings could be otherwise.
 * @param hasOrders whether there are several orders, which could lie apart
 */
export function waysOf(book: Book, film: Film, words: Words, hasOrders: boolean): Way[] {
  const { compare, filmForm } = words;
  const others = Object.values(book.film).filter(({ id, archived }) => !archived && id !== film.id);
  const isUpright = Object.values(book.transfer).some(({ turn }) => !mayLieAt(turn, QUARTER));
  return [
    { label: compare.same(film.name), trial: { film }, takes: 'film' },
    ...others.map(
      (other): Way => ({ label: compare.other(other.name), trial: { film: other }, takes: 'film' }),
    ),
    ...(isUpright ? [{ label: compare.turn, trial: { film, allTurn: true }, takes: 'turns' } as const] : []),
    ...waysToCut(book, film)
      .filter((cutting) => cutting !== film.cutting)
      .map(
        (cutting): Way => ({
          label: filmForm.cuttings[cutting],
          trial: { film: { ...film, cutting } },
          takes: 'settings',
        }),
      ),
    ...togethers
      .filter((kind) => hasOrders && kind !== film.together.kind)
      .map(
        (kind): Way => ({
          label: filmForm.togethers[kind],
          trial: { film: { ...film, together: { kind } } },
          takes: 'settings',
        }),
      ),
  ];
}

/** The same film in another size, as much of it as is wanted. */
export function otherSize(film: Film, size: FilmSize, label: string): Way {
  const other = { ...inOtherSize(film, size), id: NEW, name: label };
  return { label, trial: { film: other, endless: true }, takes: 'new-film' };
}

export const otherWidth = (film: Film, width: Micrometres, { compare }: Words, ways: Ways): Way =>
  otherSize(
    film,
    film.kind === 'roll' ? { kind: 'roll', width } : { kind: 'sheets', width, length: film.length },
    compare.width(film.name, shortLength(width, ways)),
  );

export const otherGap = (film: Film, gap: Micrometres, words: Words, ways: Ways): Way => ({
  label: words.compare.gap(shortLength(gap, ways)),
  // Half a gap is whole micrometres.
  trial: { film: { ...film, gap: um(2 * Math.ceil(gap / 2)) } },
  takes: 'settings',
});
