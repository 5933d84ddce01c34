import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { layOut, stopPlanning, usePlanning } from '../../../app/store/planning';
import { useShop } from '../../../app/store/shop';
import { useView } from '../../../app/store/view';
import { en } from '../../../app/words/en';
import { edits, session, undo } from '../../../src/editing';
import { takeOff } from '../../../src/editing/places';
import type { Book, Copy } from '../../../src/model';
import { createPlanner, type Idea, type Plan, type Problem } from '../../../src/packing';
import type { PlanningOptions } from '../../../src/planning/browser';
import { fromMm, type Micrometres, um } from '../../../src/units';
import { WorkerFailed } from '../../../src/workers/browser';
import { edited, freshIds, smallBook } from '../../editing/book';
import { rollUsed } from '../../packing/used';
import { settle, type waitingCalls } from './calls';

interface Asked extends PlanningOptions {
  readonly problem: Problem;
}
interface Planned {
  readonly proven: boolean;
  readonly idea: Idea | null;
}

const worker = (await vi.hoisted(async () => (await import('./calls')).waitingCalls())) as ReturnType<
  typeof waitingCalls<Asked, Planned>
>;

vi.mock('../../../src/planning/browser', () => ({
  planInWorkers: (problem: Problem, options: PlanningOptions) =>
    worker.call({ problem, ...options }, options.signal).catch((error: unknown) => {
      if (!options.signal.aborted) throw error;
      return { proven: false, idea: null };
    }),
}));

const { book, front } = smallBook();
const at = (call: number) => {
  const own = worker.calls[call];
  if (!own) throw new Error(`only ${worker.calls.length} calls`);
  return own;
};
/** Waits until what looks for a layout is fetched, and asked so many times in all. */
const asked = (count: number) => vi.waitFor(() => expect(worker.calls).toHaveLength(count), { interval: 1 });
const best = (call: number): Plan => createPlanner(at(call).input.problem, 1).best();
const placed = () => Object.values(useShop.getState().book.copy).filter(({ place }) => place !== null).length;
const kind = () => usePlanning.getState().planning.kind;
const said = () => useView.getState().notices.map(({ text, reload }) => ({ text, reload }));

beforeEach(() => {
  vi.stubGlobal('navigator', { hardwareConcurrency: 2 });
  useShop.setState({ phase: { kind: 'open' }, book });
  useView.setState({ notices: [] });
  worker.calls.length = 0;
});
afterEach(() => {
  stopPlanning();
  vi.unstubAllGlobals();
});

describe('laying out', () => {
  it('puts each better plan on the film, tells its progress, and comes to rest', async () => {
    const done = layOut('pinned');
    expect(kind()).toBe('working');
    await asked(1);
    at(0).input.onProgress(0.5);
    expect(usePlanning.getState().planning).toMatchObject({ fraction: 0.5 });
    at(0).input.onBetter(best(0));
    await vi.waitFor(() => expect(placed()).toBe(5));
    at(0).answer({ proven: true, idea: null });
    await done;
    expect(kind()).toBe('idle');
    expect(usePlanning.getState().provenFor).toBe(useShop.getState().book.copy);
  });

  it.each([
    { why: 'missing' as const, reload: true },
    { why: 'broken' as const, reload: false },
  ])(
    'that fails as a worker is $why is said and comes to rest; what lay on the film stays',
    async ({ why, reload }) => {
      const done = layOut('pinned');
      await asked(1);
      at(0).input.onBetter(best(0));
      at(0).fail(new WorkerFailed(why));
      await done;
      expect(kind()).toBe('idle');
      expect(placed()).toBe(5);
      expect(said()).toEqual([{ text: en.failures.layout, reload }]);
    },
  );

  it('is stopped by another edit, after which no plan is taken any more', async () => {
    const done = layOut('pinned');
    await asked(1);
    const plan = best(0);
    useShop.setState({
      book: edited(book, (draft) => {
        const own = draft.transfer[front];
        if (own) own.turn = 'fixed';
      }),
    });
    expect(at(0).signal.aborted).toBe(true);
    at(0).input.onBetter(plan);
    await done;
    expect(placed()).toBe(0);
    expect(kind()).toBe('idle');
    expect(said()).toEqual([]);
  });

  it('shows no plan that another edit overtakes between its check and its place', async () => {
    const done = layOut('pinned');
    await asked(1);
    at(0).input.onBetter(best(0));
    // The check is over, its drawing is a task of its own.
    await settle();
    expect(placed()).toBe(0);
    useShop.setState({
      book: edited(book, (draft) => {
        const own = draft.transfer[front];
        if (own) own.width = um(own.width + 1000);
      }),
    });
    await done;
    expect(placed()).toBe(0);
    expect(kind()).toBe('idle');
  });

  it('shows the last of the plans that come faster than they are checked, as one step', async () => {
    const done = layOut('pinned');
    await asked(1);
    const plan = best(0);
    const used = rollUsed(plan);
    const behind = {
      ...plan,
      placed: plan.placed.map((copy) => ({ ...copy, y: um(copy.y + 5000) })),
      used: { kind: 'roll' as const, ...used, length: um(used.length + 5000) },
    };
    for (const each of [behind, behind, plan]) at(0).input.onBetter(each);
    at(0).answer({ proven: false, idea: null });
    await done;
    expect(Math.min(...Object.values(useShop.getState().book.copy).map(({ place }) => place?.y ?? 0))).toBe(
      Math.min(...plan.placed.map(({ y }) => y)),
    );
    expect(Object.keys(useShop.getState().book.step)).toHaveLength(1);
  });

  it('begun again ends the one before, whose end leaves it at work', async () => {
    const first = layOut('pinned');
    await asked(1);
    const second = layOut('pinned');
    await first;
    await asked(2);
    expect(at(0).signal.aborted).toBe(true);
    expect(kind()).toBe('working');
    at(1).answer({ proven: false, idea: null });
    await second;
    expect(kind()).toBe('idle');
  });

  describe('anew', () => {
    /** A plan's copies behind one another, each so far behind where it lay. */
    const stretched = (plan: Plan, by: Micrometres): Plan => {
      const used = rollUsed(plan);
      return {
        ...plan,
        placed: plan.placed.map((copy) => ({ ...copy, y: um(copy.y + by) })),
        used: { kind: 'roll', ...used, length: um(used.length + by) },
      };
    };
    const laid = async (): Promise<Plan> => {
      const done = layOut('pinned');
      await asked(1);
      const plan = best(0);
      at(0).input.onBetter(plan);
      at(0).answer({ proven: false, idea: null });
      await done;
      return plan;
    };

    it('takes no longer layout than the one that lies there, and says that this stays', async () => {
      const plan = await laid();
      const before = useShop.getState().book;
      const done = layOut('pinned');
      await asked(2);
      at(1).input.onBetter(stretched(plan, fromMm(3)));
      at(1).answer({ proven: false, idea: null });
      await done;
      expect(useShop.getState().book).toBe(before);
      expect(said()).toEqual([{ text: en.film.stays, reload: false }]);
    });

    it('stays with what is in a rush at its front, in one step, and says so', async () => {
      const ids = freshIds();
      const added = session(book, edits.addOrder({ name: 'Rush', due: null }), ids);
      const size = { width: fromMm(100), height: fromMm(80), typed: { width: '100', height: '80' } };
      const transfer = { name: 'Back', ...size, turn: 'fixed' as const, shade: null };
      const more = session(added.book, edits.addTransfer(added.result, transfer, 3), ids).book;
      useShop.setState({ book: more });
      const plan = await laid();
      const rushed = session(
        useShop.getState().book,
        edits.editOrder(added.result, { rush: true }),
        ids,
      ).book;
      useShop.setState({ book: rushed });
      const done = layOut('pinned');
      await asked(2);
      at(1).input.onBetter(stretched(plan, fromMm(3)));
      at(1).answer({ proven: false, idea: null });
      await done;
      const { book: now } = useShop.getState();
      const isRush = ({ transfer: own }: Copy) => now.transfer[own]?.order === added.result;
      const ends = (own: Book) =>
        Object.values(own.copy)
          .filter(isRush)
          .map(({ place }) => place?.y ?? 0);
      expect(Math.max(...ends(now))).toBeLessThan(Math.max(...ends(rushed)));
      expect(said()).toEqual([{ text: en.film.staysInOrder, reload: false }]);
      expect(ends(undo(now, ids).book)).toEqual(ends(rushed));
    });

    it('takes a longer one where a copy waits, or the one there may not lie so any more', async () => {
      const plan = await laid();
      const [run] = Object.values(useShop.getState().book.run);
      const [first] = Object.values(useShop.getState().book.copy);
      if (!run || !first) throw new Error('nothing laid');
      useShop.setState({ book: edited(useShop.getState().book, (draft) => takeOff(draft, [first.id])) });
      const done = layOut('pinned');
      await asked(2);
      at(1).input.onBetter(stretched(plan, fromMm(3)));
      await vi.waitFor(() => expect(placed()).toBe(5));
      at(1).answer({ proven: false, idea: null });
      await done;
      expect(said()).toEqual([]);
    });
  });
});
