import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addFilm,
  addGarment,
  addRun,
  addSupply,
  applyEdit,
  type BookDraft,
  closeRun,
  correctClosing,
  counterEntry,
  cutOffcut,
  enterByHand,
  finishRun,
  lockRun,
  mayPutBack,
  noteFilmBox,
  putOffcutBack,
  removeFilm,
  setPlaces,
  spoilCopy,
  stepRunBack,
} from '../../src/editing';
import { layRun } from '../../src/layout';
import type { Book, Closing, Id, Roll } from '../../src/model';
import {
  amountOf,
  blankStock,
  blanksOfRun,
  counterProblem,
  entryProblem,
  filmOutlook,
  inUse,
  shared,
  shortages,
  stocked,
  sumsOf,
} from '../../src/stock';
import { asMilligrams, fromMass, fromMm, fromVolume, type LocalDate, UPRIGHT } from '../../src/units';
import { closeIt, closingOf, edited, freshIds, LATER, smallBook } from '../editing/book';

const ids = freshIds;
const { book: small, order } = smallBook();
const run = Object.keys(small.run)[0] as Id<'run'>;
const film = Object.keys(small.film)[0] as Id<'film'>;
const box = { lot: '', bestBefore: null, opened: null, reorder: null, order: '' };
const tee = { style: 'Tee', colour: 'Black', shade: null, size: 'M' };

let white = '' as Id<'item'>;
let powder = '' as Id<'item'>;
let blank = '' as Id<'item'>;
/** Ink, powder and blanks in stock; three fronts of an order of three tees lie on film. */
const kept = edited(small, (draft) => {
  white = addSupply(
    draft,
    { kind: 'white', name: 'White', ...box, lot: 'W-1' },
    fromVolume(500, 'ml'),
    ids(),
  );
  powder = addSupply(draft, { kind: 'powder', name: 'Powder', ...box, lot: 'P-1' }, fromMass(2, 'kg'), ids());
  blank = addSupply(draft, { kind: 'blank', name: 'Tee', ...tee, ...box }, 5, ids());
  addGarment(draft, order, { ...tee, count: 3 }, ids());
  const copies = Object.values(draft.copy).filter(
    ({ transfer }) => draft.transfer[transfer]?.name === 'front',
  );
  setPlaces(
    draft,
    run,
    copies.map(({ id }, at) => [
      id,
      { x: fromMm(5), y: fromMm(10 + 90 * at), angle: UPRIGHT, pinned: false },
    ]),
  );
});
const pressed = edited(
  edited(kept, (draft) => lockRun(draft, run, ids())),
  (draft) => {
    finishRun(draft, run, ids());
    const record = draft.run[run];
    if (record && record.state !== 'draft') record.state = 'pressed';
  },
);
const amounts = (book: Book) => [film, white, powder, blank].map((id) => amountOf(book, id));
const taken = (book: Book) => {
  const record = book.run[run];
  if (!record) throw new Error('no run');
  return blanksOfRun(book, record).map(({ blank: of, order: by, ...each }) => ({
    ...each,
    blank: of.id,
    order: by.id,
  }));
};
const closed = closeIt(pressed, run, ids(), taken(pressed));

describe('closing a run', () => {
  it('takes ink, powder and blanks once, and no film a second time', () => {
    // 3 x 80 cm2 at 14 ml and 100 g a square metre: 336 ul of white, 2.4 g of powder; half of a cleaning of 3 ml is white.
    expect(amounts(pressed)).toEqual([10_000_000 - 280_000, 500_000, 2_000_000, 5]);
    expect(amounts(closed)).toEqual([10_000_000 - 280_000, 500_000 - 336 - 1500, 2_000_000 - 2_400, 2]);
    expect(closed.closing[run]).toMatchObject({
      planned: { film: 280_000, white: 336 + 1500, powder: 2_400 },
      lots: { white: 'W-1', powder: 'P-1', colour: '' },
      work: { copies: 3, pressed: 3 },
    });
  });

  it('is taken back by counter-entries: all is there again, the record is gone, no entry is', () => {
    const back = edited(closed, (draft) => stepRunBack(draft, run, ids()));
    expect(amounts(back)).toEqual(amounts(pressed));
    expect(back.closing).toEqual({});
    expect(Object.keys(back.entry).length).toBeGreaterThan(Object.keys(closed.entry).length);
    expect(amounts(closeIt(back, run, ids(), taken(back)))).toEqual(amounts(closed));
  });

  describe('that turns out to be wrong', () => {
    const told = closed.closing[run] ?? expect.fail();
    const later = { ...ids(), now: LATER };
    const editedLater = (book: Book, edit: (draft: BookDraft) => void): Book =>
      applyEdit(book, edit, LATER).book;
    const corrected = (book: Book, actual: Partial<Closing['actual']>, blanks = taken(pressed)) =>
      editedLater(book, (draft) =>
        correctClosing(draft, { ...told, actual: { ...told.actual, ...actual } }, blanks, later),
      );

    it('is corrected: stock gets the difference, and what was told before stays', () => {
      const more = corrected(closed, { film: fromMm(400), powder: asMilligrams(3_000) });
      expect(amounts(more)).toEqual([10_000_000 - 400_000, 500_000 - 336 - 1500, 2_000_000 - 3_000, 2]);
      const { id: _, earlier, ...first } = told;
      expect(earlier).toEqual([]);
      expect(more.closing[run]).toMatchObject({
        at: told.at,
        day: told.day,
        changed: LATER,
        earlier: [first],
      });
      const back = corrected(more, {});
      expect(amounts(back)).toEqual(amounts(closed));
      expect(back.closing[run]?.earlier.map(({ actual }) => actual.film)).toEqual([280_000, 400_000]);
    });

    it('gives back what nobody measured after all, and garments that were not taken', () => {
      const [first] = taken(pressed);
      const less = corrected(closed, { white: null }, first ? [{ ...first, used: 1 }] : []);
      expect(amounts(less)).toEqual([10_000_000 - 280_000, 500_000, 2_000_000 - 2_400, 4]);
    });

    it('changes nothing when it is saved as it was', () => {
      expect(Object.keys(corrected(closed, {}).entry)).toEqual(Object.keys(closed.entry));
    });

    it('is told anew when the run is opened again: what was measured stands, and is kept once it is closed', () => {
      const measured = {
        ...told,
        actual: { ...told.actual, film: fromMm(333) },
        air: { temperature: 21, humidity: 0.4 },
      };
      const wrong = edited(closed, (draft) => correctClosing(draft, measured, taken(pressed), later));
      const opened = edited(wrong, (draft) => stepRunBack(draft, run, ids()));
      expect(opened.closing).toEqual({});
      const { actual, air } = closingOf(opened, run);
      expect({ actual, air }).toEqual({ actual: measured.actual, air: measured.air });
      const again = closeIt(opened, run, ids(), taken(opened));
      expect(again.reopened).toEqual({});
      expect(again.closing[run]?.earlier.map((version) => version.actual.film)).toEqual([280_000, 333_000]);
      expect(amounts(again)).toEqual(amounts(wrong));
    });
  });

  it('takes no more powder than what was weighed out and not returned', () => {
    const weighed = edited(pressed, (draft) => {
      const by = { run, note: '' };
      enterByHand(draft, powder, { kind: 'weighed-out', amount: 300_000 }, by, ids());
      enterByHand(draft, powder, { kind: 'returned', amount: 290_000 }, by, ids());
    });
    expect(closingOf(weighed, run).actual.powder).toBe(10_000);
    expect(amountOf(closeIt(weighed, run, ids()), powder)).toBe(2_000_000 - 10_000);
  });

  it('takes the rest, where more film was used than printing took', () => {
    const more = edited(pressed, (draft) => {
      const closing = closingOf(pressed, run);
      closeRun(
        draft,
        { ...closing, actual: { ...closing.actual, film: fromMm(400), white: null } },
        [],
        ids(),
      );
    });
    expect(amounts(more).slice(0, 2)).toEqual([10_000_000 - 400_000, 500_000]);
  });

  it('counts what a run of before the ledger printed as taken', () => {
    const entry = Object.fromEntries(
      Object.entries(pressed.entry).filter(([, { kind }]) => kind !== 'printed'),
    );
    expect(amountOf(closeIt({ ...pressed, entry }, run, ids()), film)).toBe(10_000_000 - 280_000);
  });

  it('groups spoiled copies by stage and reason, and takes a blank for each spoiled garment', () => {
    const copies = Object.values(pressed.copy).filter((copy) => copy.run === run);
    const spoiled = edited(pressed, (draft) => {
      for (const { id } of copies.slice(0, 2)) {
        spoilCopy(draft, { run, copy: id, stage: 'press', garment: true, reason: 'crooked' }, ids());
      }
    });
    expect(closingOf(spoiled, run).spoiled).toEqual([
      { stage: 'press', reason: 'crooked', copies: 2, garments: 2 },
    ]);
    expect(taken(spoiled)).toMatchObject([{ used: 1, spoiled: 2 }]);
    expect(amountOf(closeIt(spoiled, run, ids(), taken(spoiled)), blank)).toBe(2);
  });

  it('asks for nothing that nobody measured: an unknown artwork leaves ink open', () => {
    const record = closeIt(pressed, run, ids()).closing[run];
    expect(record?.actual.time).toEqual({ printer: null, hands: null, press: null, oven: 0 });
  });
});

describe('blanks', () => {
  it('are reserved by open orders until a run takes them, and missing ones are named', () => {
    expect(blankStock(kept)).toMatchObject([{ onHand: 5, reserved: 3 }]);
    expect(blankStock(closed)).toMatchObject([{ onHand: 2, reserved: 0 }]);
    const more = edited(
      kept,
      (draft) => void addGarment(draft, order, { ...tee, size: 'L', count: 4 }, ids()),
    );
    expect(blankStock(more)).toMatchObject([
      { reserved: 3 },
      { blank: null, size: 'L', onHand: 0, reserved: 4 },
    ]);
    const packed = edited(kept, (draft) => {
      const own = draft.order[order];
      if (own) own.progress = 'packed';
    });
    expect(blankStock(packed)).toMatchObject([{ reserved: 0 }]);
  });
});

describe('an entry', () => {
  it('is refused where more would leave than there is, and for a roll that is gone', () => {
    expect(entryProblem(kept, white, -500_000)).toBeNull();
    expect(entryProblem(kept, white, -500_001)).toBe('less-than-nothing');
    const second = edited(
      kept,
      (draft) => void addFilm(draft, { ...(kept.film[film] as Roll), name: 'Two' }, ids()),
    );
    const [two] = Object.keys(second.film).filter((id) => id !== film);
    const without = edited(second, (draft) => removeFilm(draft, two ?? '', ids()));
    expect(entryProblem(without, two ?? '', 1000)).toBe('gone');
    const [opening] = Object.values(without.entry).filter(({ item }) => item === two);
    expect(opening?.name).toBe('Two');
    expect(opening && counterProblem(without, opening)).toBe('gone');
    expect(sumsOf(without.entry).get(two ?? '')).toBe(0);
  });

  it('is undone by another, once, and by hand only if a hand made it', () => {
    const bought = edited(kept, (draft) =>
      enterByHand(draft, film, { kind: 'bought', amount: 5_000_000 }, { run: null, note: '' }, ids()),
    );
    const entry = Object.values(bought.entry).at(-1);
    if (!entry) throw new Error('no entry');
    const undone = edited(bought, (draft) => counterEntry(draft, entry.id, ids()));
    expect(amountOf(undone, film)).toBe(10_000_000);
    expect(counterProblem(undone, entry)).toBe('undone');
    const printed = Object.values(pressed.entry).find(({ kind }) => kind === 'printed');
    expect(printed && counterProblem(pressed, printed)).toBe('by-run');
  });

  it.each([
    ['bought', 100, 500_100],
    ['counted', 100, 100],
    ['discarded', 100, 499_900],
    ['discarded', 500_001, 500_000],
  ] as const)('%s %i leaves %i', (kind, amount, left) => {
    const after = edited(kept, (draft) =>
      enterByHand(draft, white, { kind, amount }, { run: null, note: '' }, ids()),
    );
    expect(amountOf(after, white)).toBe(left);
  });
});

describe('an offcut', () => {
  const length = fromMm(600);
  let offcut: Id<'film'> | null = null;
  const cut = edited(kept, (draft) => {
    noteFilmBox(draft, film, { lot: 'F-1' }, ids());
    offcut = cutOffcut(draft, film, length, 'End', ids());
  });

  it('is a film of its own, of the same lot, and its length is off the roll', () => {
    expect(cut.film[offcut ?? '']).toMatchObject({ kind: 'sheets', length, sheetsLeft: 1, price: 504 });
    expect(cut.item[offcut ?? '']).toMatchObject({ lot: 'F-1', cutFrom: { film, length } });
    expect(amountOf(cut, film)).toBe(10_000_000 - 600_000);
  });

  it('goes back to its roll while no run is on it', () => {
    const back = edited(cut, (draft) => putOffcutBack(draft, offcut ?? '', ids()));
    expect(back.film).toEqual(kept.film);
    expect(sumsOf(back.entry).get(offcut ?? '')).toBe(0);
    const inRun = edited(cut, (draft) => {
      if (offcut) addRun(draft, { name: 'On it', film: offcut }, ids());
    });
    expect(mayPutBack(inRun, offcut ?? '')).toBe(false);
  });
});

describe('what lasts', () => {
  const outlook = (book: Book) => {
    const record = book.run[run];
    const laid = record && layRun(book, record);
    if (!laid) throw new Error('no run');
    return filmOutlook(book, laid);
  };

  it('is told for a run and for all open runs on its film', () => {
    expect(outlook(kept)).toMatchObject({ afterRun: 10_000_000 - 280_000, runs: 1 });
    const short = edited(kept, (draft) => {
      const roll = draft.film[film];
      if (roll?.kind === 'roll') roll.lengthLeft = fromMm(250);
      addRun(draft, { name: 'Next', film }, ids());
    });
    expect(outlook(short)).toMatchObject({ afterRun: -30_000, afterAll: -30_000, runs: 2 });
    expect(outlook(pressed)).toBeNull();
  });

  it('names ink and powder that are kept and will not do', () => {
    const needed = { colour: 100, white: 500_001, powder: 1 } as Parameters<typeof shortages>[1];
    expect(shortages(kept, needed)).toEqual([{ kind: 'white', present: 500_000, needed: 500_001 }]);
  });

  it('is said of what is low, past its best before, or below nothing', () => {
    const book = edited(kept, (draft) => {
      const [ink, dust] = [draft.item[white], draft.item[powder]];
      if (ink) Object.assign(ink, { reorder: 600_000 });
      if (dust) Object.assign(dust, { bestBefore: '2026-11-24' as LocalDate });
    });
    const warned = stocked(book, '2026-11-25' as LocalDate).map(({ item, warnings }) => [
      item.name,
      warnings,
    ]);
    expect(warned).toEqual([
      ['Roll', []],
      ['White', ['below-reorder']],
      ['Powder', ['past-best-before']],
      ['Tee', []],
    ]);
  });
});

describe('shares', () => {
  it('are whole and sum to what is shared', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: 1, max: 7 }), (amount, parts) => {
        const all = shared(amount, parts);
        expect(all.reduce((sum, part) => sum + part, 0)).toBe(amount);
        expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('go to the opened ones, or to the first', () => {
    const two = edited(kept, (draft) => {
      addSupply(draft, { kind: 'white', name: 'Another', ...box }, 1, ids());
    });
    expect(inUse(two, 'white').map(({ name }) => name)).toEqual(['Another']);
    const opened = edited(two, (draft) => {
      const ink = draft.item[white];
      if (ink) ink.opened = '2026-11-20' as LocalDate;
    });
    expect(inUse(opened, 'white').map(({ name }) => name)).toEqual(['White']);
  });
});
