import { onceFor } from '../units';
import type { Book } from './book';
import { embeddedIn, type Run } from './run';

/** The copies that were spoiled at some time: wherever one lies now, it is printed again. */
export const spoiledOnce = onceFor(
  (book: Book): ReadonlySet<string> =>
    new Set<string>([
      ...Object.values(book.spoilage).map(({ copy }) => copy),
      ...Object.values(book.run).flatMap(({ spoiled }) => spoiled.flatMap(({ copies }) => copies)),
    ]),
);

/** Of what a run embeds, the copies that were printed again for one that was spoiled. */
export const embeddedReprints = (run: Run): ReadonlySet<string> =>
  new Set(
    embeddedIn(run).flatMap(({ copies }) => copies.flatMap(({ id, reprint }) => (reprint ? [id] : []))),
  );
