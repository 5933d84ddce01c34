import { create } from 'zustand';
import { filmEdits } from '../../src/editing';
import {
  changesLayout,
  copiesToLay,
  type Places,
  problemAgain,
  type Savings,
  savings,
  soundPlaces,
} from '../../src/layout';
import type { Run } from '../../src/model';
import type { Plan } from '../../src/packing';
import { lookForPlan } from './at-once';
import { usePlanning } from './planning';
import { laidNow, openRunNow } from './selectors';
import { act, mayWrite, useShop } from './shop';
import { useView } from './view';

/** How long the film is left alone before a better layout is looked for in the background, in milliseconds. */
const QUIET = 2000;
/** Seconds on one worker, so that the machine stays free for the work at hand; of two cores one is not left for long, and one alone never. */
function lookFor(): number {
  if (navigator.hardwareConcurrency < 2) return 0;
  return navigator.hardwareConcurrency > 2 ? 30 : 8;
}
const SEED = 1001;

/** A layout of all that lies on the film that takes less of it. */
interface Offer {
  readonly run: Run;
  readonly places: Places;
  readonly saves: Savings;
}

export const useOffers = create<{ readonly offer: Offer | null }>(() => ({ offer: null }));

/** Looking, or about to. */
let looking: AbortController | null = null;

/** Looks no further for now, since something else needs the machine. What is offered stays. */
export function stopLooking(): void {
  looking?.abort();
  looking = null;
}

function withdraw(): void {
  stopLooking();
  if (useOffers.getState().offer) useOffers.setState({ offer: null });
}

/** Looks for a better layout once the film has been left alone for a while. */
function lookSoon(): void {
  withdraw();
  if (lookFor() === 0) return;
  const stop = new AbortController();
  looking = stop;
  const { signal } = stop;
  const timer = setTimeout(() => void look(signal), QUIET);
  // One left running would hold on to the book of its edit.
  signal.addEventListener('abort', () => clearTimeout(timer), { once: true });
}

async function look(signal: AbortSignal): Promise<void> {
  const draft = openRunNow();
  const { planning, idea, provenFor } = usePlanning.getState();
  const { book } = useShop.getState();
  if (draft?.run.state !== 'draft' || planning.kind === 'working' || provenFor === book.copy || !mayWrite())
    return;
  const problem = problemAgain(book, draft.run, draft.film);
  if (copiesToLay(problem).length === 0) return;
  const consider = (plan: Plan): void => {
    const run = laidNow();
    const saves = run && savings(run, plan);
    if (signal.aborted || !saves) return;
    const places = soundPlaces({ book, ...draft }, problem, plan);
    if (places) useOffers.setState({ offer: { run: draft.run, places, saves } });
  };
  // A worker that fails here costs nothing: the layout on the film stays as it is.
  await lookForPlan(problem.problem, {
    seconds: lookFor(),
    seed: SEED,
    workers: 1,
    idea,
    signal,
    onBetter: consider,
    onProgress: () => undefined,
  }).catch(() => undefined);
}

/** Puts the offered layout on the film, as one step of undo. */
export function takeOffer(): void {
  const { offer } = useOffers.getState();
  if (!offer) return;
  act(filmEdits.setPlaces(offer.run.id, offer.places));
}

/** Lets it be until the film is changed again. */
export const declineOffer = (): void => withdraw();

/**
 * Looks on in the background whenever the film has been left alone: a better layout is offered, and one that was offered is
 * withdrawn by the next change.
 */
export function offerLayouts(): void {
  useShop.subscribe((now, before) => {
    if (now.book !== before.book && changesLayout(now.book, before.book)) lookSoon();
  });
  useView.subscribe((now, before) => {
    if (now.run !== before.run) lookSoon();
  });
  usePlanning.subscribe((now, before) => {
    if (now.planning.kind === before.planning.kind) return;
    if (now.planning.kind === 'working') withdraw();
    else lookSoon();
  });
}
