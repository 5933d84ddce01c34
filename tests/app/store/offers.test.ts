import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { declineOffer, offerLayouts, takeOffer, useOffers } from '../../../app/store/offers';
import { act, undo, useShop } from '../../../app/store/shop';
import { edits, setPlaces } from '../../../src/editing';
import { copiesByTransfer, runOf } from '../../../src/model';
import { createPlanner, type Plan, type Problem } from '../../../src/packing';
import { fromMm, UPRIGHT, um } from '../../../src/units';
import { edited, smallBook } from '../../editing/book';

interface Search {
  readonly problem: Problem;
  readonly options: { readonly workers: number; readonly signal: AbortSignal; onBetter(plan: Plan): void };
}

const searches = vi.hoisted((): Search[] => []);
vi.mock('../../../src/planning/browser', () => ({
  planInWorkers: (problem: Problem, options: Search['options']) => {
    searches.push({ problem, options });
    return new Promise(() => undefined);
  },
}));

/** As long as the film is left alone before a better layout is looked for. */
const QUIET = 2000;

const { book, front, order } = smallBook();
const open = runOf(book, null);
if (!open) throw new Error('no draft');
const run = open.run.id;
/** Three copies far apart along the film. */
const apart = edited(book, (draft) =>
  setPlaces(
    draft,
    run,
    (copiesByTransfer(book).get(front) ?? []).map(({ id }, at) => [
      id,
      { x: fromMm(10), y: fromMm(100 + 300 * at), angle: UPRIGHT, pinned: false },
    ]),
  ),
);
const placesNow = () => Object.values(useShop.getState().book.copy).map(({ place }) => place);

/** Leaves the film alone until what looks for a layout is fetched and a search has begun, and gives back the last one. */
async function searched(): Promise<Search> {
  vi.advanceTimersByTime(QUIET);
  await vi.dynamicImportSettled();
  const last = searches.at(-1);
  if (!last) throw new Error('nothing was looked for');
  return last;
}
const better = ({ problem }: Search): Plan => createPlanner(problem, 1).best();

beforeAll(() => {
  vi.useFakeTimers();
  vi.stubGlobal('navigator', { language: 'en-GB', hardwareConcurrency: 2 });
  offerLayouts();
});
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});
beforeEach(() => {
  searches.length = 0;
  useShop.setState({ phase: { kind: 'open' }, follows: false, book });
  useShop.setState({ book: apart });
});

describe('a better layout', () => {
  it('is looked for on one worker once the film has been left alone, and offered with what it saves', async () => {
    vi.advanceTimersByTime(QUIET - 1);
    expect(searches).toEqual([]);
    vi.advanceTimersByTime(1);
    await vi.dynamicImportSettled();
    expect(searches).toHaveLength(1);
    const search = await searched();
    expect(search.options.workers).toBe(1);
    expect(useOffers.getState().offer).toBeNull();
    search.options.onBetter(better(search));
    expect(useOffers.getState().offer?.saves.length).toBeGreaterThan(fromMm(300));
    // It is offered, not forced.
    expect(useShop.getState().book).toBe(apart);
  });

  it('is not looked for where one core has all to do', () => {
    vi.stubGlobal('navigator', { language: 'en-GB', hardwareConcurrency: 1 });
    useShop.setState({ book });
    useShop.setState({ book: apart });
    vi.advanceTimersByTime(10 * QUIET);
    expect(searches).toEqual([]);
    vi.stubGlobal('navigator', { language: 'en-GB', hardwareConcurrency: 2 });
  });

  it('is put on the film as one step when it is taken', async () => {
    const search = await searched();
    search.options.onBetter(better(search));
    const before = placesNow();
    takeOffer();
    expect(Math.max(...placesNow().map((place) => place?.y ?? 0))).toBeLessThan(fromMm(300));
    expect(useOffers.getState().offer).toBeNull();
    undo();
    expect(placesNow()).toEqual(before);
  });

  it('is withdrawn by the next change of the layout, and its search stopped; a name changes nothing', async () => {
    const search = await searched();
    search.options.onBetter(better(search));
    act(edits.editOrder(order, { name: 'Mill' }));
    expect(useOffers.getState().offer).not.toBeNull();
    useShop.setState({ book });
    expect(useOffers.getState().offer).toBeNull();
    expect(search.options.signal.aborted).toBe(true);
    search.options.onBetter(better(search));
    expect(useOffers.getState().offer).toBeNull();
  });

  it('is let be until the film changes again', async () => {
    const search = await searched();
    search.options.onBetter(better(search));
    declineOffer();
    expect(useOffers.getState().offer).toBeNull();
    vi.advanceTimersByTime(10 * QUIET);
    expect(searches).toHaveLength(1);
  });

  it('is not offered where its copies would lie on one another', async () => {
    const search = await searched();
    const plan = better(search);
    search.options.onBetter({
      ...plan,
      placed: plan.placed.map((copy) => ({ ...copy, x: um(0), y: um(0) })),
    });
    expect(useOffers.getState().offer).toBeNull();
  });

  it.each([
    ['another tab writes', { follows: true }],
    ['nothing lies on the film', { book }],
  ] as const)('is not looked for while %s', (_, state) => {
    useShop.setState(state);
    vi.advanceTimersByTime(QUIET);
    expect(searches).toEqual([]);
  });
});
