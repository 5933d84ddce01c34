import { onceFor } from '../units';
import type { Book } from './book';
import type { Copy } from './copy';
import { ordersByDue } from './lookup';
import { embeddedIn, type Run } from './run';

/** The copies that were spoiled at some time: wherever one lies now, it is printed again. */
export const spoiledOnce = onceFor(
  (book: Book): ReadonlySet<string> =>
    new Set<string>([
      ...Object.values(book.spoilage).map(({ copy }) => copy),
      ...Object.values(book.run).flatMap(({ spoiled }) => spoiled.flatMap(({ copies }) => copies)),
    ]),
);

/** The copies that wait to be printed again, those of orders in a rush first, then what is due soonest; none whose order waits for a proof. */
export function waitingReprints(book: Book): Copy[] {
  const ranks = new Map(ordersByDue(book).map(({ id, awaits }, rank) => [id, awaits.proof ? null : rank]));
  const rankOf = ({ transfer }: Copy) => {
    const order = book.transfer[transfer]?.order;
    return order === undefined ? null : (ranks.get(order) ?? null);
  };
  return Object.values(book.copy)
    .filter((copy) => copy.state === 'waiting' && spoiledOnce(book).has(copy.id) && rankOf(copy) !== null)
    .sort((a, b) => (rankOf(a) ?? 0) - (rankOf(b) ?? 0) || a.number - b.number);
}

/** The copies that were spoiled on a run once it was printed: they are in none of its bags. */
export const spoiledOn = (book: Pick<Book, 'spoilage'>, run: string): ReadonlySet<string> =>
  new Set(Object.values(book.spoilage).flatMap((own) => (own.run === run ? [own.copy] : [])));

/** Of what a run embeds, the copies that were printed again for one that was spoiled. */
export const embeddedReprints = (run: Run): ReadonlySet<string> =>
  new Set(
    embeddedIn(run).flatMap(({ copies }) => copies.flatMap(({ id, reprint }) => (reprint ? [id] : []))),
  );
