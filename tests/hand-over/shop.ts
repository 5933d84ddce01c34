import { createHash } from 'node:crypto';
import { lockRun, setPlaces } from '../../src/editing';
import type { Hash } from '../../src/hand-over';
import { asId, type Book, type Id, type Instant, type Place } from '../../src/model';
import { fromMm, UPRIGHT } from '../../src/units';
import { edited, NOW, smallBook } from '../editing/book';

export const hash: Hash = async (bytes) => createHash('sha256').update(bytes).digest('hex');

/** Ids as random ones are written, counted up. */
export function uuids(from: number, now: Instant = NOW) {
  let last = from;
  return {
    now,
    newId: <Kind extends string>() => {
      last += 1;
      return asId<Kind>(`9b2c7d4e-0f1a-4b3c-8d5e-${last.toString(16).padStart(12, '0')}`);
    },
  };
}

const { book: empty, order, front } = smallBook();

export { order };
export const run = Object.keys(empty.run)[0] as Id<'run'>;

/** Three fronts and two tags on film, locked. */
export const locked: Book = edited(
  edited(empty, (draft) => {
    setPlaces(
      draft,
      run,
      Object.values(draft.copy).map(({ id, transfer }, index): [Id<'copy'>, Place] => [
        id,
        {
          x: fromMm(transfer === front ? 5 : 120),
          y: fromMm(10 + 90 * index),
          angle: UPRIGHT,
          pinned: false,
        },
      ]),
    );
  }),
  (draft) => lockRun(draft, run, uuids(0)),
);
