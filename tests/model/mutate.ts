import { checked, undo } from '../../src/editing';
import { layRun } from '../../src/layout';
import {
  type Book,
  benchRunOf,
  collectionNames,
  openBook,
  orderState,
  ordersByDue,
  readRecord,
  runOf,
  runView,
  type Settings,
} from '../../src/model';
import { amountOf } from '../../src/stock';
import { freshIds } from '../editing/book';

/** What damage leaves in place of a value. */
const evil: readonly unknown[] = [
  undefined,
  null,
  '',
  'x',
  '!!!',
  '2026-99-99',
  'constructor',
  '__proto__',
  '\u0000',
  0,
  -1,
  0.5,
  9e15,
  -9e15,
  1e308,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  true,
  [],
  {},
  [null],
  { id: 'x' },
];

/** Draws a whole number below a most. */
type Draw = (most: number) => number;

/** A value in which one place, however deep, holds something else. */
function damaged(value: unknown, draw: Draw): unknown {
  const isHere = typeof value !== 'object' || value === null || draw(4) === 0;
  const names = isHere ? [] : Object.keys(Object(value));
  const name = names[draw(Math.max(1, names.length))];
  if (name === undefined) return evil[draw(evil.length)];
  const copy: Record<string, unknown> = Array.isArray(value) ? Object([...value]) : { ...Object(value) };
  copy[name] = damaged(copy[name], draw);
  return copy;
}

/** Stored records with one place damaged, and the key of the record that it is in. */
export function withDamage(
  records: ReadonlyMap<string, unknown>,
  draw: Draw,
): { readonly touched: string; readonly records: Map<string, unknown> } {
  const keys = [...records.keys()];
  const touched = keys[draw(keys.length)] ?? '';
  return { touched, records: new Map(records).set(touched, damaged(records.get(touched), draw)) };
}

/** What a record of each collection cannot be without, told anew: the check is not to share the mistakes of what it checks. */
const parents: Readonly<Record<string, readonly (readonly [field: string, collection: string])[]>> = {
  transfer: [['order', 'order']],
  garment: [['order', 'order']],
  placement: [['order', 'order']],
  quote: [['order', 'order']],
  copy: [
    ['transfer', 'transfer'],
    ['run', 'run'],
  ],
  entry: [['counters', 'entry']],
};

/** The keys that hang on a record, through however many others. */
function family(records: ReadonlyMap<string, unknown>, root: string): Set<string> {
  const found = new Set([root]);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const [key, value] of records) {
      const collection = key.slice(0, key.indexOf('/'));
      const fields: Readonly<Record<string, unknown>> = Object(value);
      const own = (parents[collection] ?? []).map(([field, of]) => `${of}/${String(fields[field])}`);
      if (collection === 'item' && fields.kind === 'film') own.push(`film/${String(fields.id)}`);
      if (own.some((parent) => found.has(parent))) found.add(key);
    }
  }
  return found;
}

/**
 * Damages one place of a stored book, opens it, and looks at it as rooms do.
 * @returns the keys of records that were lost although they neither were touched nor hang on what was
 * @throws whatever opening or looking throws
 */
export function openDamaged(
  records: ReadonlyMap<string, unknown>,
  first: Settings,
  draw: Draw,
): { touched: string; lost: string[] } {
  const { touched, records: stored } = withDamage(records, draw);
  const opened = openBook(stored, first);
  look(opened.book);
  const hangs = family(records, touched);
  const isThere = (key: string): boolean => {
    const name = collectionNames.find((own) => key.startsWith(`${own}/`));
    return name !== undefined && Object.hasOwn(opened.book[name], key.slice(name.length + 1));
  };
  // History holds together or not at all.
  const lost = [...records.keys()].filter(
    (key) => !key.startsWith('step/') && !hangs.has(key) && !isThere(key),
  );
  return { touched, lost };
}

/** Reads a book by what rooms draw from. */
function look(book: Book): void {
  for (const order of Object.values(book.order)) orderState(book, order);
  ordersByDue(book);
  runOf(book, null);
  benchRunOf(book, null);
  for (const run of Object.values(book.run)) {
    runView(book, run);
    layRun(book, run);
  }
  for (const item of new Set(Object.values(book.entry).map((entry) => entry.item))) amountOf(book, item);
  const settled = checked(book, freshIds());
  for (const name of collectionNames) {
    for (const record of Object.values(settled.book[name])) {
      if (!readRecord(name, record)) throw new Error(`a ${name} that cannot be read`);
    }
  }
  undo(book, freshIds());
}
