import { applyPatches, type Patch } from 'immer';
import { type Book, collectionNames, type StoredStep } from '../model';
import { forget, historyOf } from './history';
import type { Settled } from './settled';
import type { Step } from './step';
import { isEntry } from './undo';

/** A book with an edit made, and the step that led there. */
type Made = Pick<Settled<unknown>, 'book' | 'step'>;

/** Where records lie in a book, by their keys. The ledger is no part of what a step is rebased on. */
type Spots = ReadonlyMap<string, Patch['path']>;

const spotsOf = (patches: readonly Patch[] = []): Spots =>
  new Map(
    patches.flatMap((patch) => {
      if (isEntry(patch)) return [];
      const spot = patch.path.slice(0, 2);
      return [[spot.join('/'), spot]];
    }),
  );

function recordAt(book: Book, [collection, id]: Patch['path']): unknown {
  const name = collectionNames.find((own) => own === collection);
  const records: Readonly<Record<string, unknown>> = name ? book[name] : {};
  return records[String(id)];
}

const isSame = (one: unknown, other: unknown): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);

/** What leads from one state to the other and back, by whole records of some spots. */
function between(before: Book, after: Book, spots: Iterable<Patch['path']>): Step {
  const redo: Patch[] = [];
  const undo: Patch[] = [];
  for (const path of spots) {
    const [from, to] = [recordAt(before, path), recordAt(after, path)];
    if (isSame(from, to)) continue;
    redo.push(patchTo(path, from, to));
    undo.push(patchTo(path, to, from));
  }
  return { redo, undo };
}

function patchTo(path: Patch['path'], from: unknown, to: unknown): Patch {
  if (to === undefined) return { op: 'remove', path };
  return { op: from === undefined ? 'add' : 'replace', path, value: to };
}

/** The state that stored patches lead to; `null` where they are damaged. */
function stateAfter(from: Book, patches: StoredStep['redo']): Book | null {
  try {
    return applyPatches(
      from,
      patches.filter((patch) => !isEntry(patch)),
    );
  } catch {
    return null;
  }
}

/**
 * Makes a quiet edit part of every state that undo and redo lead to: it is made in each of them, and each step becomes what then
 * lies between its two. So undo after it gives what was before, with the quiet edit made there: a price that was
 * replaced before the currency changed comes back in the new one. A step that the edit does not reach stays as it is stored. Where the edit
 * would move stock in one of those states, or a step is damaged, all that can be undone is forgotten: no step may span that.
 * @param before the book without the edit
 * @param after the book with it
 * @param quiet makes the edit in another state
 */
export function rebased(before: Book, after: Made, quiet: (state: Book) => Made): Book {
  const { done, undone } = historyOf(before);
  const steps: Record<string, StoredStep> = {};
  for (const way of ['undo', 'redo'] as const) {
    let [from, fromWith] = [before, after];
    for (const step of way === 'undo' ? done.toReversed() : undone.toReversed()) {
      const to = stateAfter(from, step[way]);
      if (!to) return forget(after.book);
      const toWith = quiet(to);
      if (toWith.book.entry !== to.entry) return forget(after.book);
      const written = spotsOf(step[way]);
      const edited = new Map([...spotsOf(fromWith.step?.redo), ...spotsOf(toWith.step?.redo)]);
      // A step may write a record as it was already: then only its patches know of it.
      const isReached = [...edited].some(([key, spot]) =>
        written.has(key)
          ? !isSame(recordAt(from, spot), recordAt(fromWith.book, spot)) ||
            !isSame(recordAt(to, spot), recordAt(toWith.book, spot))
          : !isSame(recordAt(fromWith.book, spot), recordAt(toWith.book, spot)),
      );
      if (isReached) {
        const spots = new Map([...written, ...edited]).values();
        const [one, other] = way === 'undo' ? [toWith, fromWith] : [fromWith, toWith];
        steps[step.id] = withPatches(step, between(one.book, other.book, spots));
      }
      [from, fromWith] = [to, toWith];
    }
  }
  const { book } = after;
  return Object.keys(steps).length > 0 ? { ...book, step: { ...book.step, ...steps } } : book;
}

/** A step with other patches; those of the ledger stay. */
function withPatches(step: StoredStep, { redo, undo }: Step): StoredStep {
  const ledger = (patches: StoredStep['redo']) => patches.filter((patch) => isEntry(patch));
  return { ...step, redo: [...ledger(step.redo), ...redo], undo: [...ledger(step.undo), ...undo] };
}
