import { useEffect, useState } from 'react';
import { createStore, useStore } from 'zustand';
import {
  type Candidate,
  candidateOf,
  type FilmTried,
  filmTried,
  holds,
  laidBy,
  type Trial,
} from '../../src/layout';
import type { Book, Run } from '../../src/model';
import { validatePlan } from '../../src/packing';
import { buildInWorker } from '../../src/planning/browser';
import { sayFailed } from './failures';

/** Layouts built of each: enough to tell two films apart, quick enough to wait for. */
const LAYOUTS = 1500;
const SEED = 1;

/** A run in the book that it is looked up in: the shop's own, or one in which an order is alone. */
export interface TrialBase {
  readonly book: Book;
  readonly run: Run;
}

/** A run as it was laid out another way. */
export interface Found extends ReturnType<typeof laidBy> {
  readonly trial: Trial;
  readonly candidate: Candidate;
  readonly tried: FilmTried;
}

/**
 * Lays a run out in several ways in the background, one after the other.
 * @param onFound told of each as it is done, and how much of all is
 * @throws the signal's reason if it is stopped; those that were done have been told then
 */
async function layOutTrials(
  { book, run }: TrialBase,
  trials: readonly Trial[],
  signal: AbortSignal,
  onFound: (share: number, found: readonly Found[]) => void,
): Promise<readonly Found[]> {
  const found: Found[] = [];
  for (const [at, trial] of trials.entries()) {
    const candidate = candidateOf(book, run, trial);
    const { problem } = candidate.problem;
    const plan = await buildInWorker(problem, {
      layouts: LAYOUTS,
      seed: SEED,
      signal,
      onProgress: (share) => onFound((at + share) / trials.length, found),
    });
    if (validatePlan(problem, plan).length > 0) throw new Error('a layout failed its check');
    const laidOut = laidBy(candidate, plan);
    if (!trial.endless && !(laidOut.laid && holds(laidOut.laid)))
      throw new Error('a layout failed its check');
    found.push({ trial, candidate, tried: filmTried(candidate, plan), ...laidOut });
    onFound((at + 1) / trials.length, [...found]);
  }
  return found;
}

interface Trying {
  readonly trying: boolean;
  /** How much of all is done. */
  readonly share: number;
  readonly found: readonly Found[];
}

/** Trials of a run that can be watched and stopped, one start at a time. What was found stays until the next. */
export function createTrials() {
  const store = createStore<Trying>(() => ({ trying: false, share: 0, found: [] }));
  let running: AbortController | null = null;
  return {
    store,
    /** @returns what was found; where the trials were stopped or failed, which is said, as far as they came */
    async start(base: TrialBase, trials: readonly Trial[]): Promise<readonly Found[]> {
      running?.abort();
      const own = new AbortController();
      running = own;
      const tell = (change: Partial<Trying>) => {
        if (running === own) store.setState(change);
      };
      tell({ trying: true, share: 0, found: [] });
      let done: readonly Found[] = [];
      try {
        return await layOutTrials(base, trials, own.signal, (share, found) => {
          done = found;
          tell({ share, found });
        });
      } catch (error) {
        sayFailed('trials', error);
        return done;
      } finally {
        tell({ trying: false });
      }
    },
    stop: () => running?.abort(),
  };
}

/** Trials of a window's own; leaving it stops them. */
export function useTrials() {
  const [{ store, start, stop }] = useState(createTrials);
  useEffect(() => stop, [stop]);
  return { ...useStore(store), start, stop };
}
