import { describe, expect, it } from 'vitest';
import {
  addOrder,
  addRun,
  addTransfer,
  applyEdit,
  benchEdits,
  editOrder,
  editStation,
  finishRun,
  lockRun,
  nextOpenSpan,
  printedTo,
  setPlaces,
  spoil,
  spoilCopy,
  waitingFor,
} from '../../src/editing';
import { faultsOf, isAsked, layRun } from '../../src/layout';
import { type Book, type Id, type Instant, runViewOf } from '../../src/model';
import { atOnce } from '../../src/packing';
import { BEGUN, printKey } from '../../src/pressing';
import { blanksAgain } from '../../src/stock';
import { fromMm, type LocalDate, UPRIGHT } from '../../src/units';
import { edited, freshIds, LATER, NOW, smallBook } from './book';

const shop = smallBook();
const first = Object.values(shop.book.run)[0] ?? expect.fail();
const [one, two, three] = Object.values(shop.book.copy).filter(({ transfer }) => transfer === shop.front);
if (!one || !two || !three) throw new Error('no fronts');
const at = (y: number) => ({ x: fromMm(5), y: fromMm(y), angle: UPRIGHT, pinned: false });

/** Three fronts, printed. */
const printed = edited(shop.book, (draft) => {
  setPlaces(
    draft,
    first.id,
    [one, two, three].map(({ id }, index) => [id, at(10 + 90 * index)] as const),
  );
  lockRun(draft, first.id, freshIds(NOW));
  finishRun(draft, first.id, freshIds(NOW));
});
const spoiled = (book: Book, copy: Id<'copy'>, run: Id<'run'> = first.id, garment = false): Book => {
  const now = new Date(
    Date.parse(LATER) + 60_000 * Object.keys(book.spoilage).length,
  ).toISOString() as Instant;
  return applyEdit(
    book,
    (draft) => spoilCopy(draft, { run, copy, stage: 'press', garment, reason: 'crooked' }, freshIds(now)),
    now,
  ).book;
};

describe('a copy that is spoiled', () => {
  it('brings its order back from the archive: it is to be printed again', () => {
    const archived = edited(printed, (draft) => editOrder(draft, shop.order, { archived: true }));
    const again = spoiled(archived, one.id);
    expect(again.order[shop.order]?.archived).toBe(false);
    const next = edited(again, (draft) => addRun(draft, { name: 'Run 2', film: first.film }, freshIds()));
    const run = Object.values(next.run).find(({ name }) => name === 'Run 2') ?? expect.fail();
    const copy = next.copy[one.id] ?? expect.fail();
    expect(isAsked(next, run, copy)).toBe(true);
  });

  it('does so too where its film was spoiled while it was printed', () => {
    const book = edited(shop.book, (draft) => {
      setPlaces(draft, first.id, [[one.id, at(10)]]);
      lockRun(draft, first.id, freshIds(NOW));
      editOrder(draft, shop.order, { archived: true });
      spoil(draft, first.id, { from: fromMm(0), to: fromMm(60) }, freshIds(LATER));
    });
    expect(book.order[shop.order]?.archived).toBe(false);
  });

  it('is first to be served from the shelf where its order is in a rush, though another is due before', () => {
    let other = '' as Id<'transfer'>;
    const book = edited(spoiled(printed, one.id), (draft) => {
      const soon = addOrder(draft, { name: 'Soon', due: '2026-11-26' as LocalDate }, freshIds());
      const { width, height, typed, turn } = draft.transfer[shop.front] ?? expect.fail();
      other = addTransfer(draft, soon, { name: 'front', width, height, typed, turn }, 1, freshIds());
      editOrder(draft, shop.order, { rush: true, due: '2026-12-02' as LocalDate });
      draft.shelf.s = {
        id: 's' as Id<'shelf'>,
        name: 'front',
        code: 'HB',
        width,
        height,
        artwork: null,
        count: 1,
        cured: NOW,
        changed: NOW,
      };
    });
    const waiting = waitingFor(book, 's').map((id) => book.copy[id]?.transfer);
    expect(waiting).toEqual([shop.front, other]);
  });
});

describe('a reprint', () => {
  it('is told on the run that prints it again, and stays told when that is locked', () => {
    const draft = edited(spoiled(printed, one.id), (book) => {
      const run = addRun(book, { name: 'Run 2', film: first.film }, freshIds());
      const tag = Object.values(book.copy).find(({ transfer }) => transfer === shop.tag) ?? expect.fail();
      setPlaces(book, run, [
        [one.id, at(10)],
        [tag.id, at(110)],
      ]);
    });
    const run = Object.values(draft.run).find(({ name }) => name === 'Run 2') ?? expect.fail();
    const reprints = (book: Book, id: string) => [...(runViewOf(book, id)?.reprints() ?? [])];
    expect(reprints(draft, run.id)).toEqual([one.id]);
    expect(reprints(draft, first.id)).toEqual([]);
    const locked = edited(draft, (book) => lockRun(book, run.id, freshIds(LATER)));
    expect(reprints(locked, run.id)).toEqual([one.id]);
    // Spoiled once more, it is still the reprint that this run has printed.
    const again = spoiled(
      edited(locked, (book) => finishRun(book, run.id, freshIds(LATER))),
      one.id,
      run.id,
    );
    expect(reprints(again, run.id)).toEqual([one.id]);
  });

  it('is told on the same run where its film was spoiled on the way', () => {
    const book = edited(shop.book, (draft) => {
      setPlaces(draft, first.id, [
        [one.id, at(10)],
        [two.id, at(100)],
      ]);
      lockRun(draft, first.id, freshIds(NOW));
      printedTo(draft, first.id, fromMm(190), freshIds(NOW));
      spoil(draft, first.id, { from: fromMm(100), to: fromMm(190) }, freshIds(LATER));
      setPlaces(draft, first.id, [[two.id, at(200)]]);
    });
    expect([...(runViewOf(book, first.id)?.reprints() ?? [])]).toEqual([two.id]);
  });
});

describe('a garment that is spoiled', () => {
  const again = (book: Book, run: string) => [...blanksAgain(book, book.run[run] ?? expect.fail()).values()];

  it('is picked once more for the run that prints its copy again, for the one it was spoiled on while that waits', () => {
    const waiting = spoiled(spoiled(printed, one.id, first.id, true), two.id);
    expect(again(waiting, first.id)).toEqual([1]);
    let second = '' as Id<'run'>;
    const placed = edited(waiting, (draft) => {
      second = addRun(draft, { name: 'Run 2', film: first.film }, freshIds());
      setPlaces(draft, second, [
        [one.id, at(10)],
        [two.id, at(100)],
      ]);
    });
    expect(again(placed, first.id)).toEqual([]);
    expect(again(placed, second)).toEqual([1]);
    // Spoiled there once more, without its garment: what was picked for it was picked.
    const twice = spoiled(
      edited(placed, (draft) => {
        lockRun(draft, second, freshIds(LATER));
        finishRun(draft, second, freshIds(LATER));
      }),
      one.id,
      second,
    );
    expect(again(twice, second)).toEqual([1]);
    expect(again(twice, first.id)).toEqual([]);
  });
});

describe('a reprint that joins the next span', () => {
  const SPAN = 300;
  /** Run 2 of three spans, a tag on each that leaves room beside it; a front waits to be printed again. */
  const shopWith = (
    sends: 'by-span' | 'whole-through' | null,
    order: Parameters<typeof editOrder>[2] = {},
  ) => {
    let second = '' as Id<'run'>;
    const book = edited(spoiled(printed, one.id), (draft) => {
      const [printer] = draft.settings.shop?.station.printers ?? expect.fail();
      editStation(draft, { printers: [{ ...printer, sends }] });
      const film = draft.film[first.film];
      if (film?.kind !== 'roll') expect.fail();
      film.spanMax = fromMm(SPAN);
      editOrder(draft, shop.order, order);
      const other = addOrder(draft, { name: 'Other', due: null }, freshIds());
      const size = { width: fromMm(200), height: fromMm(270) };
      const typed = { width: '200', height: '270' };
      const wide = addTransfer(draft, other, { name: 'wide', ...size, typed, turn: 'fixed' }, 3, freshIds());
      second = addRun(draft, { name: 'Run 2', film: first.film }, freshIds());
      const copies = Object.values(draft.copy).filter(({ transfer }) => transfer === wide);
      setPlaces(
        draft,
        second,
        copies.map(({ id }, index) => [id, at(10 + 285 * index)] as const),
      );
    });
    return { book, second, run: (own: Book) => own.run[second] ?? expect.fail() };
  };
  const join = (book: Book, run: Id<'run'>, by: 'joinDraft' | 'joinPrinting') => {
    let result: unknown;
    const joined = edited(book, (draft) => {
      result = benchEdits[by](run, atOnce).apply(draft, freshIds(LATER));
    });
    return { result, book: joined, laid: layRun(joined, joined.run[run] ?? expect.fail()) ?? expect.fail() };
  };
  const tick = (book: Book, run: Id<'run'>, ...subjects: string[]): Book =>
    edited(book, (draft) =>
      benchEdits.tickJobs(run, subjects, { done: true, by: 'MK' }, 'Run 3').apply(draft, freshIds(LATER)),
    );

  it('lies in the free film of a draft’s first span, and nothing moves', () => {
    const { book, second } = shopWith(null);
    const before = layRun(book, book.run[second] ?? expect.fail());
    const { result, laid, book: joined } = join(book, second, 'joinDraft');
    expect(result).toEqual({ copies: 1, spans: [0] });
    expect(faultsOf(laid)).toEqual([]);
    expect(laid.lengthUsed).toBe(before?.lengthUsed);
    expect(laid.copies.filter(({ id }) => id !== one.id)).toEqual(before?.copies);
    expect(joined.copy[one.id]).toMatchObject({ state: 'placed', run: second });
  });

  it('lies behind what is printed and at the printer of a run that is sent span by span, which is a draft there again', () => {
    const { book, second, run } = shopWith('by-span');
    const locked = edited(book, (draft) => lockRun(draft, second, freshIds(NOW)));
    expect(nextOpenSpan(locked, run(locked))?.span).toBe(0);
    const begun = tick(locked, second, BEGUN);
    expect(nextOpenSpan(begun, run(begun))?.span).toBe(1);
    const printing = tick(begun, second, printKey(0));
    const open = nextOpenSpan(printing, run(printing)) ?? expect.fail();
    expect(open.span).toBe(2);
    const { result, laid, book: joined } = join(printing, second, 'joinPrinting');
    expect(result).toEqual({ copies: 1, spans: [2] });
    expect(faultsOf(laid)).toEqual([]);
    expect(joined.run[second]).toMatchObject({ state: 'draft', printed: { to: open.from } });
    expect(laid.copies.find(({ id }) => id === one.id)?.y).toBeGreaterThanOrEqual(open.from);
    const last = tick(printing, second, printKey(1), printKey(2));
    expect(nextOpenSpan(last, run(last))).toBeNull();
  });

  it('leaves a run alone that lies whole in its printer, and one that has no room', () => {
    const whole = shopWith('whole-through');
    const sent = edited(whole.book, (draft) => lockRun(draft, whole.second, freshIds(NOW)));
    expect(nextOpenSpan(sent, whole.run(sent))).toBeNull();
    expect(join(sent, whole.second, 'joinPrinting').book).toBe(sent);
    const { book, second } = shopWith('by-span');
    const locked = edited(book, (draft) => {
      const transfer = draft.transfer[shop.front] ?? expect.fail();
      Object.assign(transfer, { width: fromMm(310), height: fromMm(290) });
      lockRun(draft, second, freshIds(NOW));
    });
    expect(join(locked, second, 'joinPrinting')).toMatchObject({ result: null, book: locked });
  });

  it('is one of an order in a rush before others, where there is room for one alone', () => {
    const { book, second } = shopWith('by-span');
    const both = edited(spoiled(book, two.id), (draft) => {
      // Room beside one copy 100 mm long, for one more.
      const [kept, ...off] = Object.values(draft.copy).filter(({ run }) => run === second);
      setPlaces(
        draft,
        second,
        off.map(({ id }) => [id, null] as const),
      );
      Object.assign(draft.transfer[kept?.transfer ?? ''] ?? {}, { height: fromMm(100) });
      const rush = addOrder(draft, { name: 'Rush', due: null }, freshIds());
      editOrder(draft, rush, { rush: true });
      const { width, height, typed } = draft.transfer[shop.front] ?? expect.fail();
      const transfer = addTransfer(
        draft,
        rush,
        { name: 'rush', width, height, typed, turn: 'fixed' },
        1,
        freshIds(),
      );
      const copy = Object.values(draft.copy).find((own) => own.transfer === transfer) ?? expect.fail();
      draft.spoilage.s = {
        id: 's' as never,
        run: first.id,
        copy: copy.id,
        stage: 'press',
        garment: false,
        reason: 'x',
        changed: NOW,
      };
    });
    const { laid } = join(both, second, 'joinDraft');
    expect(laid.copies.map(({ transfer }) => transfer.name).sort()).toEqual(['rush', 'wide']);
  });

  it('waits while its order waits for a proof', () => {
    const { book, second } = shopWith(null, { awaits: { proof: true, blanks: false } });
    expect(join(book, second, 'joinDraft').result).toBeNull();
  });
});
