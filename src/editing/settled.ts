import { layRun, unfitCopies } from '../layout';
import type { Book, Id, Instant } from '../model';
import { takeOff } from './places';
import { type Drawn, drawFirst } from './shelf';
import { applyEdit, type BookDraft, type Step } from './step';

/** The copies of a draft that an edit left where they can no longer lie. */
function unsettled(book: Book): Id<'copy'>[] {
  return Object.values(book.run).flatMap((run) => {
    const laid = run.state === 'draft' ? layRun(book, run) : null;
    return laid ? unfitCopies(laid) : [];
  });
}

/** Whether copies may lie otherwise, or on other ground. */
const movesLayout = (before: Book, after: Book): boolean =>
  before.copy !== after.copy ||
  before.transfer !== after.transfer ||
  before.film !== after.film ||
  before.run !== after.run;

/** Copies that an edit added. */
const added = (step: Step): ReadonlySet<string> =>
  new Set(
    step.redo.flatMap(({ op, path }) =>
      op === 'add' && path[0] === 'copy' && path.length === 2 ? [String(path[1])] : [],
    ),
  );

/** Two steps as one. */
const followedBy = (first: Step, then: Step | null): Step =>
  then === null ? first : { redo: [...first.redo, ...then.redo], undo: [...then.undo, ...first.undo] };

/** Takes off the film what can no longer lie there. */
export function settle(book: Book, now: Instant): Pick<Settled<unknown>, 'book' | 'step' | 'takenOff'> {
  const takenOff = unsettled(book);
  return { ...applyEdit(book, (draft) => takeOff(draft, takenOff), now), takenOff };
}

/** What an edit led to beside what it was made for. */
export interface Settled<Result> {
  readonly book: Book;
  /** What the edit told of itself. */
  readonly result: Result;
  /** `null` if nothing changed. */
  readonly step: Step | null;
  /** Copies that no longer fit where they lay. */
  readonly takenOff: readonly Id<'copy'>[];
  /** Copies that were added and taken from the shelf. */
  readonly drawn: readonly Drawn[];
}

/**
 * Applies an edit and lets the rest follow, in the same step: copies that no longer fit where they lie come off the film, and
 * copies that were added are taken from the shelf where they lie there.
 */
export function applySettled<Result>(
  book: Book,
  edit: (draft: BookDraft) => Result,
  now: Instant,
): Settled<Result> {
  const applied = applyEdit(book, edit, now);
  const { result } = applied;
  let { book: edited, step } = applied;
  let takenOff: readonly Id<'copy'>[] = [];
  let drawn: readonly Drawn[] = [];
  if (!step) return { book: edited, result, step, takenOff, drawn };
  const isNew = added(step);
  if (isNew.size > 0) {
    const shelved = applyEdit(
      edited,
      (draft) => {
        drawn = drawFirst(draft, ({ id }) => isNew.has(id));
      },
      now,
    );
    edited = shelved.book;
    step = followedBy(step, shelved.step);
  }
  if (movesLayout(book, edited)) {
    const settled = settle(edited, now);
    takenOff = settled.takenOff;
    edited = settled.book;
    step = followedBy(step, settled.step);
  }
  return { book: edited, result, step, takenOff, drawn };
}
