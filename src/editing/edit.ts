import type { BookDraft, EditContext } from './step';

/**
 * What an edit is to history:
 * - `step`: undo takes it back;
 * - `none`: undo leaves it alone, see `rebased`: settings, recipes, what is noted of the room;
 * - `forget`: it is not taken back by undo, nor is anything before it: a run is sent to print, film is spoiled. Such edits have ways
 *   back of their own;
 * - `forget-if-film-moved`: as `none`, but as `forget` where film comes off a roll by it, or a copy off its run: ticks.
 */
export type History = 'step' | 'none' | 'forget' | 'forget-if-film-moved';

/** A change that someone means to make, which knows what it is to history; the session makes it. */
export interface Edit<Result = unknown> {
  readonly history: History;
  /** Changes the draft. It does the same for the same draft and context, since a quiet edit is made in several states. */
  readonly apply: (draft: BookDraft, context: EditContext) => Result;
}

/** A function that changes a draft: what it is given lies between the draft and the context, if it takes one. */
type Change = (draft: BookDraft, ...given: never[]) => unknown;

type Given<Of extends Change> =
  Parameters<Of> extends [BookDraft, ...infer Rest]
    ? Rest extends [...infer Args, EditContext]
      ? Args
      : Rest
    : never;

/** Changes by name, each made an edit of what it is given. */
type EditsOf<Changes> = {
  readonly [Name in keyof Changes]: Changes[Name] extends Change
    ? (...given: Given<Changes[Name]>) => Edit<ReturnType<Changes[Name]>>
    : never;
};

/** Makes edits of functions that change a draft, all the same to history. None of them may leave an argument out. */
export function editsOf<Changes extends Readonly<Record<string, Change>>>(
  history: History,
  changes: Changes,
): EditsOf<Changes> {
  const made = Object.entries(changes).map(([name, change]) => [
    name,
    (...given: never[]): Edit => ({
      history,
      apply: (draft, context) => change(draft, ...given, context as never),
    }),
  ]);
  // Entries lose what belongs to which name; `EditsOf` says it.
  return Object.fromEntries(made) as EditsOf<Changes>;
}
