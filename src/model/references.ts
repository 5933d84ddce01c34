import { type Book, type Collection, collectionNames, type RecordKey, type Shelves } from './book';

type References = {
  readonly [Name in Collection]?: (record: Book[Name][string]) => readonly (RecordKey | null)[];
};

/**
 * What records cannot be without: one whose order, transfer or run is not there tells nothing. What may be gone in the course of
 * work is not here: the film of a draft, the run of a tick, the artwork of a transfer. A locked run embeds what it is of.
 */
const references: References = {
  transfer: ({ order }) => [`order/${order}`],
  garment: ({ order }) => [`order/${order}`],
  placement: ({ order }) => [`order/${order}`],
  quote: ({ order }) => [`order/${order}`],
  copy: ({ transfer, run }) => [`transfer/${transfer}`, run && `run/${run}`],
  item: (item) => [item.kind === 'film' ? `film/${item.id}` : null],
  entry: ({ counters }) => [counters && `entry/${counters}`],
};

/** What a record cannot be without. */
function needsOf<Name extends Collection>(book: Shelves, collection: Name, id: string): RecordKey[] {
  const of = references[collection];
  const record = book[collection][id];
  return of && record ? of(record).filter((key) => key !== null) : [];
}

/**
 * The records that hang on what is not there, through however many others, or on one another in a circle.
 * @returns their keys, each with that of what it lacks
 */
export function hanging(book: Shelves): ReadonlyMap<RecordKey, RecordKey> {
  const standing = new Set<RecordKey>();
  const lacks = new Map<RecordKey, RecordKey[]>();
  const waiting = new Map<RecordKey, RecordKey[]>();
  const ready: RecordKey[] = [];
  for (const collection of collectionNames) {
    for (const id of Object.keys(book[collection])) {
      const key: RecordKey = `${collection}/${id}`;
      const needs = needsOf(book, collection, id);
      if (needs.length === 0) ready.push(key);
      else lacks.set(key, needs);
      for (const need of needs) {
        const dependents = waiting.get(need);
        if (dependents) dependents.push(key);
        else waiting.set(need, [key]);
      }
    }
  }
  for (let key = ready.pop(); key !== undefined; key = ready.pop()) {
    standing.add(key);
    for (const dependent of waiting.get(key) ?? []) {
      const left = (lacks.get(dependent) ?? []).filter((need) => need !== key);
      lacks.set(dependent, left);
      if (left.length > 0) continue;
      lacks.delete(dependent);
      ready.push(dependent);
    }
  }
  return new Map([...lacks].flatMap(([key, [need]]) => (need ? [[key, need] as const] : [])));
}
