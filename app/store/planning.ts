import { create } from 'zustand';
import { applyEdit, drawForRun, filmEdits } from '../../src/editing';
import type { Done } from '../../src/editing/session';
import {
  changesLayout,
  copiesToLay,
  fillerProblem,
  inDueOrder,
  type Keep,
  type LeftOut,
  layRun,
  leftOut,
  problemOf,
  type RunProblem,
  sheetAt,
  soundLayout,
  soundPlaces,
  staysShorter,
  untakenBy,
} from '../../src/layout';
import type { Film, Run } from '../../src/model';
import type { AtOnce, Idea, Plan } from '../../src/packing';
import { Latest } from '../../src/units';
import { nextTask } from '../../src/units/browser/next-task';
import { wordsNow } from '../words';
import { fetchAtOnce, lookForPlan } from './at-once';
import { sayFailed } from './failures';
import { openRunNow, waysNow } from './selectors';
import { act, actInstead, editContext, mayWrite, sayDrawn, useShop } from './shop';
import { notify } from './view';

/** How long a layout is looked for, in seconds, unless it is proven best before. */
const SECONDS = 8;
const SEED = 1;

type Planning =
  | { readonly kind: 'idle' }
  | {
      readonly kind: 'working';
      readonly fraction: number;
      /** Ends it at once: other work has begun. */
      readonly stop: () => void;
      /** Ends it with the layout that is there, fillers and all. */
      readonly settle: () => void;
    };

interface PlanningState {
  readonly planning: Planning;
  /** How many plans have been weighed: shown, or left for what lay there. */
  readonly plans: number;
  /** What the last layout had no place for. */
  readonly leftOut: readonly LeftOut[];
  /** Nothing shorter is possible for what lies on the film: the book's `copy` records it was proven for. */
  readonly provenFor: object | null;
  /** What a later search for the same copies can go on from. */
  readonly idea: Idea | null;
}

export const usePlanning = create<PlanningState>(() => ({
  planning: { kind: 'idle' },
  plans: 0,
  leftOut: [],
  provenFor: null,
  idea: null,
}));

export function stopPlanning(): void {
  const { planning } = usePlanning.getState();
  if (planning.kind === 'working') planning.stop();
}

export function settlePlanning(): void {
  const { planning } = usePlanning.getState();
  if (planning.kind === 'working') planning.settle();
}

/** The fillers of a run and the film that it takes without them. */
function fillersOf({ run, film }: { run: Run; film: Film }): RunProblem | null {
  const { book } = useShop.getState();
  const laid = layRun(book, run);
  if (!laid || laid.lengthUsed === 0) return null;
  return fillerProblem(book, run, film, { length: laid.lengthUsed, sheets: sheetAt(film, laid.lengthUsed) });
}

/** Whether there is anything to be laid. */
const waitingIn = (problem: RunProblem | null): problem is RunProblem =>
  problem !== null && copiesToLay(problem).length > 0;

/** Lays fillers into the holes of a layout; the film gets no longer by them. */
function placeFillers(draft: { run: Run; film: Film }, { firstPlan }: AtOnce): void {
  const fillers = fillersOf(draft);
  if (!waitingIn(fillers)) return;
  const places = soundPlaces(
    { book: useShop.getState().book, ...draft },
    fillers,
    firstPlan(fillers.problem),
  );
  if (places) act(filmEdits.setPlaces(draft.run.id, places));
}

/**
 * Lays the run out in the workers. Each better plan replaces the one before it, and all of them are
 * one step of undo. Any other edit stops it: no layout is forced under a hand that is at work.
 */
export async function layOut(keep: Keep): Promise<void> {
  const draft = openRunNow();
  if (draft?.run.state !== 'draft' || !mayWrite()) return;
  stopPlanning();
  // Copies that lie on the shelf are taken from there, in the same step.
  const { book, result: drawn } = applyEdit(
    useShop.getState().book,
    (own) => drawForRun(own, draft.run.id),
    editContext().now,
  );
  const runProblem = problemOf(book, draft.run, draft.film, keep);
  if (!waitingIn(runProblem) && !waitingIn(fillersOf(draft))) {
    act(filmEdits.drawForRun(draft.run.id));
    if (drawn.length === 0)
      notify('plain', wordsNow().film.nothingToLay(untakenBy(book, draft.run), waysNow()));
    sayDrawn(drawn);
    return;
  }
  const stopped = new AbortController();
  let settled = false;
  const working = {
    kind: 'working',
    fraction: 0,
    stop: () => stopped.abort(),
    settle: () => {
      settled = true;
      stopped.abort();
    },
  } as const;
  usePlanning.setState({ planning: working, leftOut: [], provenFor: null });
  sayDrawn(drawn);
  let shown = null as Done<void> | null;
  let stays = false;
  let applying = false;
  const unwatch = useShop.subscribe((now, before) => {
    if (!applying && changesLayout(now.book, before.book)) stopped.abort();
  });

  const showing = new Latest(async (plan: Plan) => {
    if (stopped.signal.aborted) return;
    const sound = soundLayout({ book, ...draft }, runProblem, plan);
    if (!sound) {
      stopped.abort();
      notify('error', wordsNow().film.planRefused);
      return;
    }
    // The check of a long run and its drawing are a task each: a hand comes in between.
    await nextTask();
    if (stopped.signal.aborted) return;
    if (staysShorter(book, draft.run, runProblem, sound.laid)) {
      stays = true;
      usePlanning.setState(({ plans }) => ({ plans: plans + 1 }));
      return;
    }
    stays = false;
    applying = true;
    shown = actInstead(shown, filmEdits.layOut(draft.run.id, sound.places)) ?? shown;
    applying = false;
    usePlanning.setState(({ plans }) => ({ leftOut: leftOut(plan, runProblem), plans: plans + 1 }));
  });

  try {
    const { proven, idea } = await lookForPlan(runProblem.problem, {
      seconds: SECONDS,
      seed: SEED,
      workers: Math.max(1, navigator.hardwareConcurrency - 1),
      idea: null,
      signal: stopped.signal,
      onBetter: (plan) => showing.give(plan),
      onProgress: (fraction) => {
        if (!stopped.signal.aborted) usePlanning.setState({ planning: { ...working, fraction } });
      },
    }).finally(() => showing.rest());
    usePlanning.setState({ idea });
    const engine = await fetchAtOnce();
    if (stays && !shown?.step && (!stopped.signal.aborted || settled)) {
      applying = true;
      // What lies there stays on the film that it takes; rush and due dates may have changed since.
      const moves = inDueOrder({ book, ...draft }, runProblem, engine) ?? [];
      act(filmEdits.layOut(draft.run.id, moves));
      applying = false;
      notify('plain', moves.length > 0 ? wordsNow().film.staysInOrder : wordsNow().film.stays);
    }
    if (!stopped.signal.aborted || settled) placeFillers(draft, engine);
    if (proven && !stays && !stopped.signal.aborted)
      usePlanning.setState({ provenFor: useShop.getState().book.copy });
  } catch (error) {
    sayFailed('layout', error);
  } finally {
    unwatch();
    const { planning } = usePlanning.getState();
    if (planning.kind === 'working' && planning.stop === working.stop) {
      usePlanning.setState({ planning: { kind: 'idle' } });
    }
  }
}
