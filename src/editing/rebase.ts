import { applyPatches, type Patch } from 'immer';
import { type Book, collectionNames, type StoredStep } from '../model';
import { forget, historyOf } from './history';
import type { Step } from './step';
import { isEntry } from './undo';

/** What leads from one state to the other and back, by whole records. The ledger and history itself are no part of it. */
function between(before: Book, after: Book): Step {
  const redo: Patch[] = [];
  const undo: Patch[] = [];
  for (const collection of collectionNames) {
    if (collection === 'entry' || collection === 'step') continue;
    const [from, to]: Readonly<Record<string, unknown>>[] = [before[collection], after[collection]];
    if (from === to || !from || !to) continue;
    for (const id of new Set([...Object.keys(from), ...Object.keys(to)])) {
      if (isSame(from[id], to[id])) continue;
      const path = [collection, id];
      redo.push(patchTo(path, from[id], to[id]));
      undo.push(patchTo(path, to[id], from[id]));
    }
  }
  return { redo, undo };
}

function patchTo(path: string[], from: unknown, to: unknown): Patch {
  if (to === undefined) return { op: 'remove', path };
  return { op: from === undefined ? 'add' : 'replace', path, value: to };
}

const isSame = (one: unknown, other: unknown): boolean =>
  one === other || JSON.stringify(one) === JSON.stringify(other);

/** The record that a patch touches, in a book; the ledger is no part of what a step is rebased on. */
function recordAt(book: Book, [collection, id]: StoredStep['redo'][number]['path']): unknown {
  const name = collectionNames.find((own) => own === collection);
  const records: Readonly<Record<string, unknown>> = name && name !== 'entry' ? book[name] : {};
  return records[String(id)];
}

/**
 * Makes a quiet edit part of every state that undo and redo lead to: it is made in each of them, and each step becomes what then
 * lies between its two. So undo after it gives what was before, with the quiet edit made there: a price that was
 * replaced before the currency changed comes back in the new one. A step that the edit does not reach stays as it is stored. Where the edit
 * would move stock in one of those states, all that can be undone is forgotten: no step may span that.
 * @param before the book without the edit
 * @param after the book with it
 * @param quiet makes the edit in another state
 */
export function rebased(before: Book, after: Book, quiet: (state: Book) => Book): Book {
  const { done, undone } = historyOf(before);
  const steps: Record<string, StoredStep> = {};
  for (const way of ['undo', 'redo'] as const) {
    let [from, fromWith] = [before, after];
    for (const step of way === 'undo' ? done.toReversed() : undone.toReversed()) {
      const to = applyPatches(
        from,
        step[way].filter((patch) => !isEntry(patch)),
      );
      const toWith = quiet(to);
      if (toWith.entry !== to.entry) return forget(after);
      const [was, is] =
        way === 'undo'
          ? [between(to, from), between(toWith, fromWith)]
          : [between(from, to), between(fromWith, toWith)];
      // A step may write a record as it was already: then only its patches know of it.
      const isReached = step[way].some(({ path }) => !isSame(recordAt(from, path), recordAt(fromWith, path)));
      if (isReached || !isSame(was, is)) steps[step.id] = withPatches(step, is);
      [from, fromWith] = [to, toWith];
    }
  }
  return Object.keys(steps).length > 0 ? { ...after, step: { ...after.step, ...steps } } : after;
}

/** A step with other patches; those of the ledger stay. */
function withPatches(step: StoredStep, { redo, undo }: Step): StoredStep {
  const ledger = (patches: StoredStep['redo']) => patches.filter((patch) => isEntry(patch));
  return { ...step, redo: [...ledger(step.redo), ...redo], undo: [...ledger(step.undo), ...undo] };
}
