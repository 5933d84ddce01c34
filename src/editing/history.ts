import type { Step } from './step';

/** Steps that can be undone, latest last, and those undone that can be made again. */
export interface History {
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

export const emptyHistory: History = { done: [], undone: [] };

/** A new step forgets the undone ones. */
export const remember = (history: History, step: Step): History => ({
  done: [...history.done, step],
  undone: [],
});

export function stepBack(history: History): { history: History; step: Step } | null {
  const step = history.done.at(-1);
  return step
    ? { step, history: { done: history.done.slice(0, -1), undone: [...history.undone, step] } }
    : null;
}

export function stepForward(history: History): { history: History; step: Step } | null {
  const step = history.undone.at(-1);
  return step
    ? { step, history: { done: [...history.done, step], undone: history.undone.slice(0, -1) } }
    : null;
}
