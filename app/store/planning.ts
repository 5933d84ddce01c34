import { create } from 'zustand';
import { type Step, setPlaces } from '../../src/editing';
import { type Keep, type LeftOut, leftOut, placesOf, problemOf } from '../../src/layout';
import { type Book, draftOf } from '../../src/model';
import { type Plan, validatePlan } from '../../src/packing';
import { planInWorkers } from '../../src/packing/browser';
import { words } from '../words';
import { mayWrite, recommit, useShop } from './shop';
import { notify } from './view';

/** How long a layout is looked for, in seconds, unless it is proven best before. */
const SECONDS = 8;
const SEED = 1;

type Planning =
  | { readonly kind: 'idle' }
  | { readonly kind: 'working'; readonly fraction: number; readonly stop: () => void };

interface PlanningState {
  readonly planning: Planning;
  /** What the last layout had no place for. */
  readonly leftOut: readonly LeftOut[];
  /** Nothing shorter is possible for what lies on the film: the book's `copy` records it was proven for. */
  readonly provenFor: object | null;
}

export const usePlanning = create<PlanningState>(() => ({
  planning: { kind: 'idle' },
  leftOut: [],
  provenFor: null,
}));

export function stopPlanning(): void {
  const { planning } = usePlanning.getState();
  if (planning.kind === 'working') planning.stop();
}

/** Whether an edit changes what is being laid out; new artwork, or a name, does not. */
function concerns(now: Book, before: Book): boolean {
  if (now.copy !== before.copy || now.film !== before.film || now.run !== before.run) return true;
  if (now.transfer === before.transfer) return false;
  return Object.values(now.transfer).some((transfer) => {
    const was = before.transfer[transfer.id];
    return was?.width !== transfer.width || was.height !== transfer.height || was.turn !== transfer.turn;
  });
}

/**
 * Lays the run out in the workers. Each better plan replaces the one before it, and all of them are
 * one step of undo. Any other edit stops it: no layout is forced under a hand that is at work.
 */
export async function layOut(keep: Keep): Promise<void> {
  const draft = draftOf(useShop.getState().book);
  if (!draft || !mayWrite()) return;
  stopPlanning();
  const runProblem = problemOf(useShop.getState().book, draft.run, draft.film, keep);
  if (runProblem.copies.every((waiting) => waiting.length === 0)) {
    notify('plain', words.film.nothingToLay);
    return;
  }
  const stopped = new AbortController();
  const working = { kind: 'working', fraction: 0, stop: () => stopped.abort() } as const;
  usePlanning.setState({ planning: working, leftOut: [], provenFor: null });
  let step: Step | null = null;
  let applying = false;
  const unwatch = useShop.subscribe((now, before) => {
    if (!applying && concerns(now.book, before.book)) stopped.abort();
  });

  const show = (plan: Plan): void => {
    if (stopped.signal.aborted) return;
    if (validatePlan(runProblem.problem, plan).length > 0) {
      stopped.abort();
      notify('error', words.film.planRefused);
      return;
    }
    applying = true;
    step = recommit(step, (book) => setPlaces(book, placesOf(plan, runProblem, draft.run)));
    applying = false;
    usePlanning.setState({ leftOut: leftOut(plan, runProblem) });
  };

  try {
    const { proven } = await planInWorkers(runProblem.problem, {
      seconds: SECONDS,
      seed: SEED,
      workers: Math.max(1, navigator.hardwareConcurrency - 1),
      signal: stopped.signal,
      onBetter: show,
      onProgress: (fraction) => {
        if (!stopped.signal.aborted) usePlanning.setState({ planning: { ...working, fraction } });
      },
    });
    if (proven && !stopped.signal.aborted) usePlanning.setState({ provenFor: useShop.getState().book.copy });
  } catch {
    notify('error', words.film.planFailed);
  } finally {
    unwatch();
    const { planning } = usePlanning.getState();
    if (planning.kind === 'working' && planning.stop === working.stop) {
      usePlanning.setState({ planning: { kind: 'idle' } });
    }
  }
}
