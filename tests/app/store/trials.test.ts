import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createTrials, type TrialBase } from '../../../app/store/trials';
import { useView } from '../../../app/store/view';
import { en } from '../../../app/words/en';
import type { LaidRun, Trial } from '../../../src/layout';
import type { Film } from '../../../src/model';
import { createPlanner, type Plan, type Problem } from '../../../src/packing';
import { fromMm, um } from '../../../src/units';
import { WorkerFailed } from '../../../src/workers/browser';
import type { waitingCalls } from './calls';
import { laidBook } from './laid-book';

interface Asked {
  readonly problem: Problem;
  readonly onProgress: (share: number) => void;
}

const worker = (await vi.hoisted(async () => (await import('./calls')).waitingCalls())) as ReturnType<
  typeof waitingCalls<Asked, Plan>
>;
vi.mock('../../../src/planning/browser', () => ({
  buildInWorker: (
    problem: Problem,
    { onProgress, signal }: Pick<Asked, 'onProgress'> & { signal: AbortSignal },
  ) => worker.call({ problem, onProgress }, signal),
}));

/** Whether a laid run is held to break a rule that its plan knows nothing of. */
const rules = vi.hoisted(() => ({ areBroken: false }));
vi.mock('../../../src/layout', async (original) => {
  const layout = await original<typeof import('../../../src/layout')>();
  return { ...layout, holds: (laid: LaidRun) => !rules.areBroken && layout.holds(laid) };
});

const { book, run: id } = laidBook();
const run = book.run[id];
const film = run && book.film[run.film];
if (!run || film?.kind !== 'roll') throw new Error('no roll');
const base: TrialBase = { book, run };
const wide: Film = { ...film, width: fromMm(600) };
const ways: readonly Trial[] = [{ film }, { film: wide }];

const at = (call: number) => {
  const own = worker.calls[call];
  if (!own) throw new Error(`only ${worker.calls.length} calls`);
  return own;
};
const best = (call: number): Plan => createPlanner(at(call).input.problem, 1).best();
const asked = (count: number) => vi.waitFor(() => expect(worker.calls).toHaveLength(count));
const said = () => useView.getState().notices.map(({ text, reload }) => ({ text, reload }));

beforeEach(() => {
  useView.setState({ notices: [] });
  worker.calls.length = 0;
});
afterEach(() => {
  rules.areBroken = false;
});

describe('trials of a run', () => {
  it('lay it out one way after the other, and tell each with how much of all is done', async () => {
    const { store, start } = createTrials();
    const done = start(base, ways);
    expect(store.getState()).toEqual({ trying: true, share: 0, found: [] });
    at(0).input.onProgress(0.5);
    expect(store.getState().share).toBe(0.25);
    at(0).answer(best(0));
    await asked(2);
    expect(store.getState()).toMatchObject({ trying: true, share: 0.5, found: [{ trial: ways[0] }] });
    expect(at(1).input.problem.film).toMatchObject({ width: wide.width });
    at(1).answer(best(1));
    const found = await done;
    expect(found.map(({ trial }) => trial)).toEqual(ways);
    expect(store.getState()).toEqual({ trying: false, share: 1, found });
    const lengths = found.map(({ laid }) => laid?.lengthUsed ?? 0);
    expect(lengths[1]).toBeLessThan(lengths[0] ?? 0);
    // Nothing of it is in the book they are of.
    expect(book.film[film.id]?.width).toBe(film.width);
  });

  it.each([
    { why: 'missing' as const, reload: true },
    { why: 'broken' as const, reload: false },
  ])(
    'end where a worker is $why, which is said; what was found stays, and they can begin again',
    async ({ why, reload }) => {
      const { store, start } = createTrials();
      const done = start(base, ways);
      at(0).answer(best(0));
      await asked(2);
      at(1).fail(new WorkerFailed(why));
      expect((await done).map(({ trial }) => trial)).toEqual([ways[0]]);
      expect(store.getState()).toMatchObject({ trying: false, found: [{ trial: ways[0] }] });
      expect(said()).toEqual([{ text: en.failures.trials, reload }]);
      const again = start(base, ways.slice(1));
      expect(store.getState()).toEqual({ trying: true, share: 0, found: [] });
      await asked(3);
      at(2).answer(best(2));
      expect(await again).toHaveLength(1);
    },
  );

  it('stop when they are told to, and say nothing of it', async () => {
    const { store, start, stop } = createTrials();
    const done = start(base, ways);
    at(0).answer(best(0));
    await asked(2);
    stop();
    expect(at(1).signal.aborted).toBe(true);
    expect(await done).toHaveLength(1);
    expect(store.getState()).toMatchObject({ trying: false, found: [{ trial: ways[0] }] });
    expect(said()).toEqual([]);
  });

  it('begun again end those before, whose end and progress leave the new ones at work', async () => {
    const { store, start } = createTrials();
    const first = start(base, ways);
    at(0).answer(best(0));
    await asked(2);
    const second = start(base, ways.slice(1));
    expect(at(1).signal.aborted).toBe(true);
    expect(await first).toHaveLength(1);
    at(1).input.onProgress(0.9);
    expect(store.getState()).toEqual({ trying: true, share: 0, found: [] });
    at(2).answer(best(2));
    const found = await second;
    expect(found).toHaveLength(1);
    expect(store.getState()).toEqual({ trying: false, share: 1, found });
    expect(said()).toEqual([]);
  });

  it('of one window know nothing of another’s', async () => {
    const [one, other] = [createTrials(), createTrials()];
    const done = one.start(base, ways.slice(1));
    other.stop();
    expect(other.store.getState().trying).toBe(false);
    at(0).answer(best(0));
    expect(await done).toHaveLength(1);
    expect(other.store.getState().found).toEqual([]);
  });

  it.each([
    {
      what: 'its copies lie on one another',
      // Longer than the film may be, it is held against the rules of plans alone.
      trial: { film, endless: true },
      breaks: (plan: Plan): Plan => ({
        ...plan,
        placed: plan.placed.map((each) => ({ ...each, x: um(0), y: um(0) })),
      }),
    },
    {
      what: 'a rule of runs is broken',
      trial: { film },
      breaks: (plan: Plan): Plan => {
        rules.areBroken = true;
        return plan;
      },
    },
  ])('show no layout where $what', async ({ trial, breaks }) => {
    const { store, start } = createTrials();
    const done = start(base, [trial, ...ways]);
    at(0).answer(breaks(best(0)));
    expect(await done).toEqual([]);
    expect(store.getState()).toMatchObject({ trying: false, found: [] });
    expect(said()).toEqual([{ text: en.failures.trials, reload: false }]);
    expect(worker.calls).toHaveLength(1);
  });

  it('on as much film as it takes leave nothing out, though there is not so much of it', async () => {
    const { start } = createTrials();
    const little = { film: { ...film, lengthLeft: fromMm(60) } };
    const done = start(base, [little, { ...little, endless: true }]);
    for (const call of [0, 1]) {
      await asked(call + 1);
      at(call).answer(best(call));
    }
    const [some, all] = (await done).map(({ tried }) => tried);
    expect(some?.leftOut).toBeGreaterThan(0);
    expect(all?.leftOut).toBe(0);
    expect(all?.length).toBeGreaterThan(little.film.lengthLeft);
  });
});
