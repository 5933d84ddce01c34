import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  advanceRun,
  asideReason,
  finishRun,
  lockRun,
  noteHandedBack,
  removeReceived,
  spoilCopy,
  type TakenIn,
  takeAside,
  takeIn,
  tickJobs,
  unlockRun,
} from '../../src/editing';
import { codesOf, type HandOver, handBackTicks, handOverRun, writeHandOver } from '../../src/hand-over';
import { layRun } from '../../src/layout';
import { type Book, benchRunOf, type Instant, openRuns, runOf } from '../../src/model';
import { packKey, startingStation, ticked, ticksOf, workOf } from '../../src/pressing';
import { hash, locked, order, run, uuids } from '../hand-over/shop';
import { closeIt, edited, LATER, NOW, orderStateIn, smallBook } from './book';

const { book: small } = smallBook();
/** Another shop's book, with a run of its own. */
const other: Book = {
  ...small,
  run: Object.fromEntries(
    Object.values(small.run).map((own) => ['own', { ...own, id: 'own' as typeof own.id }]),
  ),
};

let made = 0;
/** Every hand-over is made a minute later than the one before. */
function handed(of: (at: Instant) => HandOver | null): HandOver {
  made += 1;
  const handOver = of(new Date(Date.parse(NOW) + 60_000 * made).toISOString() as Instant);
  if (!handOver) throw new Error('nothing to hand over');
  return handOver;
}
const runOfBook = (book: Book) => handed((at) => handOverRun(book, run, null, at));
const ticksOfBook = (book: Book) => handed((at) => handBackTicks(book, run, at));

let ids = 0;
const fresh = (now: Instant = NOW) => {
  ids += 1000;
  return uuids(ids, now);
};

function taken(book: Book, handOver: HandOver): { book: Book; result: TakenIn | null } {
  let result: TakenIn | null = null;
  const next = edited(book, (draft) => {
    result = takeIn(draft, handOver, fresh());
  });
  return { book: next, result };
}
const tick = (book: Book, subject: string, done = true, now: Instant = NOW) =>
  edited(book, (draft) => tickJobs(draft, run, [subject], { done, by: '' }, fresh(now)));
const doneOn = (book: Book) => [...ticked(ticksOf(book, run)).keys()].sort();

const jobs = (() => {
  const laid = layRun(locked, locked.run[run] as never);
  const work = laid && workOf(laid, startingStation('C'), new Date('2026-11-25T08:00:00'));
  if (!work?.ok) throw new Error('no work');
  return work.value.jobs;
})();
const tickAll = (book: Book, kinds: readonly string[]) =>
  jobs.filter(({ kind }) => kinds.includes(kind)).reduce((now, { key }) => tick(now, key), book);

const first = taken(other, runOfBook(locked));

describe('a run that is handed over', () => {
  it('is cut and pressed on the other device, whose own book stays as it was', () => {
    expect(first.result).toMatchObject({ kind: 'run' });
    const { book } = first;
    expect({ ...book, run: other.run }).toEqual(other);
    expect(openRuns(book).map(({ id }) => id)).toEqual(['own']);
    expect(runOf(book, run)?.run.id).toBe('own');
    const received = benchRunOf(book, null);
    expect(received?.id).toBe(run);
    const laid = received && layRun(book, received);
    expect(Object.keys(laid?.view.copy ?? {}).sort()).toEqual(Object.keys(locked.copy).sort());
    expect(laid?.copies).toEqual(layRun(locked, locked.run[run] as never)?.copies);
  });

  it('comes to its states there by ticks, and takes no film', () => {
    const book = tickAll(first.book, ['print', 'cure', 'press']);
    expect(book.run[run]?.state).toBe('pressed');
    expect(book.film).toEqual(other.film);
  });

  it('brings its ticks, and keeps those made there when it comes again', () => {
    const here = tick(first.book, 'print/0');
    const home = tick(locked, 'cut-off/0');
    const again = taken(here, runOfBook(home));
    expect(again.result).toEqual({ kind: 'again', ticks: 1, spoilages: 0 });
    expect(doneOn(again.book)).toEqual(['cut-off/0', 'print/0']);
  });

  it('is not taken back by an earlier word of it', () => {
    const early = runOfBook(locked);
    const late = runOfBook(tickAll(locked, ['print']));
    const { book } = taken(taken(other, late).book, early);
    expect(book.run[run]?.state).toBe('printed');
    expect(book.run[run]?.received?.made).toBe(late.made);
  });

  it('is handed back job by job with only what is new, and all of it where that is asked for', () => {
    const cut = tick(first.book, 'print/0');
    const idsOf = ({ records }: HandOver) => records.ticks.map(({ subject }) => subject);
    const once = ticksOfBook(cut);
    expect(idsOf(once)).toEqual(['print/0']);
    // Nobody has said that it was taken in: it goes again, with what came since.
    const more = tick(cut, 'cut-off/0');
    expect(idsOf(ticksOfBook(more)).sort()).toEqual(['cut-off/0', 'print/0']);
    const told = edited(more, (draft) =>
      noteHandedBack(
        draft,
        run,
        once.records.ticks.map(({ id }) => id),
      ),
    );
    expect(idsOf(ticksOfBook(told))).toEqual(['cut-off/0']);
    expect(idsOf(handed((at) => handBackTicks(told, run, at, 'all'))).sort()).toEqual([
      'cut-off/0',
      'print/0',
    ]);
    // The run comes again from the other device: what it has is still known.
    const again = taken(told, runOfBook(locked)).book;
    expect(idsOf(ticksOfBook(again))).toEqual(['cut-off/0']);
    // Both parts arrive, one after the other.
    const home = taken(taken(locked, once).book, ticksOfBook(told));
    expect(home.result).toMatchObject({ kind: 'ticks', ticks: 1 });
    expect(doneOn(home.book)).toEqual(['cut-off/0', 'print/0']);
  });

  it('has one code for the ticks of each job of its day', async () => {
    let book = first.book;
    for (const { key, parts } of jobs) {
      const subjects = parts.length > 0 ? parts : [key];
      book = edited(book, (draft) => tickJobs(draft, run, subjects, { done: true, by: 'MK' }, fresh(LATER)));
      const back = ticksOfBook(book);
      expect(codesOf(await writeHandOver(back, hash))).toHaveLength(1);
      book = edited(book, (draft) =>
        noteHandedBack(
          draft,
          run,
          back.records.ticks.map(({ id }) => id),
        ),
      );
    }
  });

  it('that is this device’s own changes but its ticks', () => {
    const back = runOfBook(tick(first.book, 'print/0'));
    const { book, result } = taken(locked, back);
    expect(result).toMatchObject({ kind: 'ticks', ticks: 1 });
    expect(book.run[run]?.received).toBeNull();
    expect({ ...book, tick: {} }).toMatchObject({ order: locked.order, copy: locked.copy });
  });

  it('can be taken off again; its ticks are there should it come back', () => {
    const here = tick(first.book, 'print/0');
    const without = edited(here, (draft) => removeReceived(draft, run));
    expect(without.run[run]).toBeUndefined();
    expect(doneOn(taken(without, runOfBook(locked)).book)).toEqual(['print/0']);
  });
});

describe('ticks that come back', () => {
  it('bring the run on at home, dated by the ticks, its film off the roll', () => {
    const there = jobs
      .filter(({ kind }) => kind === 'print')
      .reduce((book, { key }) => tick(book, key, true, LATER), first.book);
    const home = taken(locked, ticksOfBook(there)).book;
    expect(home.run[run]?.history.at(-1)).toEqual({ state: 'printed', at: LATER });
    expect(home.film).toEqual(edited(locked, (draft) => finishRun(draft, run, fresh())).film);
  });

  it('are only those that the other side has not', () => {
    const home = tick(locked, 'print/0');
    const there = tick(taken(other, runOfBook(home)).book, 'cut-off/0');
    expect(ticksOfBook(there).records.ticks.map(({ subject }) => subject)).toEqual(['cut-off/0']);
  });

  it('leave both sides with what both have ticked, whoever hands over first', () => {
    const subjects = jobs.map(({ key }) => key);
    const act = fc.record({
      side: fc.constantFrom('home', 'there'),
      subject: fc.constantFrom(...subjects),
      done: fc.boolean(),
      minute: fc.nat(50),
    });
    fc.assert(
      fc.property(fc.array(act, { maxLength: 12 }), (acts) => {
        let home = locked;
        let there = first.book;
        for (const { side, subject, done, minute } of acts) {
          const at = `2026-11-25T12:${String(minute).padStart(2, '0')}:00.000Z` as Instant;
          if (side === 'home') home = tick(home, subject, done, at);
          else there = tick(there, subject, done, at);
        }
        const homeFirst = taken(home, ticksOfBook(there)).book;
        const both = taken(there, runOfBook(homeFirst)).book;
        expect(doneOn(both)).toEqual(doneOn(homeFirst));
        const thereFirst = taken(there, runOfBook(home)).book;
        expect(doneOn(taken(home, ticksOfBook(thereFirst)).book)).toEqual(doneOn(homeFirst));
        expect(ticksOf(both, run)).toHaveLength(acts.length);
        // Once more changes nothing.
        expect(taken(homeFirst, ticksOfBook(there)).result).toMatchObject({ ticks: 0 });
      }),
      { numRuns: 25 },
    );
  });

  it('hold even if the other device’s clock is ahead', () => {
    const there = tick(first.book, 'print/0', true, LATER);
    const home = taken(locked, ticksOfBook(there)).book;
    expect(doneOn(tick(home, 'print/0', false, NOW))).toEqual([]);
  });

  it('bring spoiled copies: they wait for a reprint, once', () => {
    const printed = edited(locked, (draft) => finishRun(draft, run, fresh()));
    const [copy] = Object.values(locked.copy);
    if (!copy) throw new Error('no copy');
    const spoil = { run, copy: copy.id, stage: 'press', garment: true, reason: 'crooked' } as const;
    const there = edited(taken(other, runOfBook(printed)).book, (draft) => {
      spoilCopy(draft, spoil, fresh());
      spoilCopy(draft, spoil, fresh());
    });
    expect(Object.values(there.spoilage)).toHaveLength(1);
    const { book, result } = taken(printed, ticksOfBook(there));
    expect(result).toMatchObject({ spoilages: 1 });
    expect(book.copy[copy.id]).toMatchObject({ run: null, place: null });
    expect(book.order[order]?.awaits.blanks).toBe(true);
  });
});

describe('ticks of a run that has moved on', () => {
  const there = tick(first.book, 'print/0');
  const printed = edited(locked, (draft) => finishRun(draft, run, fresh()));
  const pressed = [0, 1].reduce((book) => edited(book, (draft) => advanceRun(draft, run, fresh())), printed);
  const closed = closeIt(pressed, run, fresh());
  const unlocked = edited(locked, (draft) => unlockRun(draft, run, fresh()));

  it.each([
    ['closed', closed, 'closed'],
    ['a draft again', unlocked, 'draft'],
    ['locked anew', edited(unlocked, (draft) => lockRun(draft, run, fresh(LATER))), 'changed'],
    ['not known', other, 'unknown'],
  ] as const)('are kept aside: %s', (_, book, reason) => {
    const { book: after, result } = taken(book, ticksOfBook(there));
    expect(result).toEqual({ kind: 'aside', ticks: 1, spoilages: 0 });
    expect({ ...after, aside: {} }).toEqual(book);
    const [aside] = Object.values(after.aside);
    expect(aside && asideReason(after, aside)).toBe(reason);
    const accepted = edited(after, (draft) => takeAside(draft, aside?.id ?? '', fresh()));
    if (reason === 'closed' || reason === 'changed') {
      expect(doneOn(accepted)).toEqual(['print/0']);
      expect(accepted.aside).toEqual({});
    } else expect(accepted).toEqual(after);
  });

  it('of one that comes later can be taken in then', () => {
    const waiting = taken(other, ticksOfBook(there)).book;
    const [aside] = Object.values(waiting.aside);
    const { book } = taken(waiting, runOfBook(locked));
    expect(doneOn(edited(book, (draft) => takeAside(draft, aside?.id ?? '', fresh())))).toEqual(['print/0']);
  });
});

describe('an order whose copies are all packed', () => {
  it('is packed, and open again when that is taken back (rule 18)', () => {
    const packed = tick(locked, packKey(order));
    expect(orderStateIn(packed, order)).toBe('packed');
    expect(tick(packed, packKey(order), false).order[order]?.progress).toBe('open');
  });

  it('is not packed while a copy is in no run, or was collected by hand', () => {
    const waiting = edited(locked, (draft) => {
      const [copy] = Object.values(draft.copy);
      if (copy) copy.run = null;
    });
    expect(tick(waiting, packKey(order)).order[order]?.progress).toBe('open');
    const collected = edited(locked, (draft) => {
      const own = draft.order[order];
      if (own) own.progress = 'collected';
    });
    expect(tick(collected, packKey(order)).order[order]?.progress).toBe('collected');
  });

  it('is packed whatever is over, from the shelf, or of another order', () => {
    const among = edited(locked, (draft) => {
      const [copy] = Object.values(draft.copy);
      const [transfer] = Object.values(draft.transfer);
      if (!copy || !transfer) throw new Error('no copy');
      const waits = { ...copy, state: 'waiting' as const, run: null, place: null };
      const idOf = (name: string) => name as typeof copy.id;
      const other = { ...transfer, id: 'other' as typeof transfer.id, order: 'other' as typeof order };
      draft.transfer[other.id] = other;
      draft.copy.over = { ...waits, id: idOf('over'), role: 'over' };
      draft.copy.other = { ...waits, id: idOf('other'), transfer: other.id };
      draft.copy.shelf = { ...waits, id: idOf('shelf'), state: 'shelved' };
    });
    expect(tick(among, packKey(order)).order[order]?.progress).toBe('packed');
  });

  it('is not packed by another’s tick, nor while a copy is printed in a run that is not ticked', () => {
    expect(tick(locked, packKey('other')).order[order]?.progress).toBe('open');
    const apart = edited(locked, (draft) => {
      const [copy] = Object.values(draft.copy);
      if (copy) copy.run = 'second' as typeof run;
    });
    expect(tick(apart, packKey(order)).order[order]?.progress).toBe('open');
  });

  it('is packed by ticks that come back, too', () => {
    const there = tick(first.book, packKey(order));
    expect(taken(locked, ticksOfBook(there)).book.order[order]?.progress).toBe('packed');
  });
});
