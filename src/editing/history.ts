import { asId, type Book, type Instant, type StoredStep } from '../model';
import { onceFor } from '../units';
import type { Step } from './step';

/** Steps that can be undone, latest last, and those undone that can be made again, the next last. */
interface History {
  readonly done: readonly StoredStep[];
  readonly undone: readonly StoredStep[];
}

const inOrderOf = onceFor((step: Book['step']): History => {
  const steps = Object.values(step).sort((a, b) => a.number - b.number);
  return {
    done: steps.filter(({ undone }) => !undone),
    undone: steps.filter(({ undone }) => undone).reverse(),
  };
});

/** The history of a book, in order. */
export const historyOf = ({ step }: Book): History => inOrderOf(step);

const keyOf = (number: number): StoredStep['id'] => asId(String(number).padStart(9, '0'));

/** How many steps can be taken back: a tab that stays open for days, and its stored book, grow no larger with each. */
export const MOST_STEPS = 200;

/** Adds a step; those that were undone are forgotten, but their numbers are not given again, and the oldest beyond the most. */
export function remember(book: Book, { redo, undo }: Step, now: Instant): Book {
  const { done, undone } = historyOf(book);
  const number = (undone[0] ?? done.at(-1))?.number ?? 0;
  const isWhole = undone.length === 0 && done.length < MOST_STEPS;
  const kept = isWhole
    ? book.step
    : Object.fromEntries(done.slice(1 - MOST_STEPS).map((step) => [step.id, step]));
  const id = keyOf(number + 1);
  const added = {
    id,
    number: number + 1,
    redo: [...redo],
    undo: [...undo],
    undone: false,
    changed: now,
  };
  return { ...book, step: { ...kept, [id]: added } };
}

const marked = (book: Book, step: StoredStep, undone: boolean): Book => ({
  ...book,
  step: { ...book.step, [step.id]: { ...step, undone } },
});

/** The step that undo takes back, and the book with it marked so; `null` if there is none. */
export function stepBack(book: Book): { book: Book; step: Step } | null {
  const step = historyOf(book).done.at(-1);
  return step ? { step: step, book: marked(book, step, true) } : null;
}

export function stepForward(book: Book): { book: Book; step: Step } | null {
  const step = historyOf(book).undone.at(-1);
  return step ? { step: step, book: marked(book, step, false) } : null;
}

/** Takes the last step out of the history, whatever comes in its place. */
export function dropLast(book: Book): Book {
  const last = historyOf(book).done.at(-1);
  if (!last) return book;
  const { [last.id]: _, ...step } = book.step;
  return { ...book, step };
}

/** Begins anew: nothing before this can be undone. */
export const forget = (book: Book): Book =>
  Object.keys(book.step).length > 0 ? { ...book, step: {} } : book;
