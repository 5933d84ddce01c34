import { describe, expect, it } from 'vitest';
import { type CoverageOf, startingCosts } from '../../src/costing';
import { newDesigns, orderRuns, runCosts } from '../../src/costing/run';
import {
  addGarment,
  addOrder,
  addTransfer,
  duplicateOrder,
  editOrder,
  lockRun,
  setPlaces,
  spoilCopy,
} from '../../src/editing';
import { layRun, runFigures } from '../../src/layout';
import { type Artwork, asId, type Book, copiesByTransfer, type Id, runOf, settingsOf } from '../../src/model';
import { orderPrice } from '../../src/pricing';
import { asMilliMinor, asMinor, fromMm, UPRIGHT } from '../../src/units';
import { closingOf, context, edited, NOW, smallBook } from '../editing/book';

const ids = { ...context(NOW), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) };
const { book, order, front, tag } = smallBook();
const [front1, front2, front3] = copiesByTransfer(book).get(front) ?? [];
const [tag1, tag2] = copiesByTransfer(book).get(tag) ?? [];
if (!front1 || !front2 || !front3 || !tag1 || !tag2) throw new Error('copies are missing');
const run = runOf(book, null)?.run.id as Id<'run'>;
const place = (x: number, y: number) => ({ x: fromMm(x), y: fromMm(y), angle: UPRIGHT, pinned: false });

/** All five copies on 195 mm of film: two rows of 80 mm, 5 mm between, ends of 10 mm. */
const laid = edited(book, (draft) =>
  setPlaces(draft, run, [
    [front1.id, place(5, 10)],
    [front2.id, place(110, 10)],
    [front3.id, place(215, 10)],
    [tag1.id, place(5, 95)],
    [tag2.id, place(60, 95)],
  ]),
);

const coverageOf: CoverageOf = ({ id }) => (id === front ? { colour: 2000, white: 4000 } : null);

function costsOf(inBook: Book, of: CoverageOf = coverageOf) {
  const record = inBook.run[run];
  const shop = settingsOf(inBook);
  const own = record && layRun(inBook, record);
  if (!own || !shop) throw new Error('no run');
  return runCosts(inBook, own, shop, of);
}

describe('what a run takes', () => {
  it('is told by its layout, its artwork and its work', () => {
    const { use } = costsOf(laid);
    expect(use.film).toEqual({
      kind: 'roll',
      length: fromMm(135),
      price: { amount: 840, per: fromMm(1000) },
    });
    const of = (id: string) => use.transfers.find((transfer) => transfer.id === id);
    expect(of(front)).toMatchObject({ copies: 3, footprint: 8000, colour: 2000, white: 4000, assumed: null });
    // Where no pixels tell, all of the footprint is taken to be printed, and that is said.
    expect(of(tag)).toMatchObject({
      copies: 2,
      footprint: 1500,
      colour: 1500,
      white: 1500,
      assumed: 'no-artwork',
    });
    // Copies are cut out in 5 s each and 10 s a metre of their 1.4 m: with 12% for rest 44 s, of which three in five bear 26 s. The order is
    // checked in 30 s and packed in 15 s a garment, a print on each: 118 s.
    expect(of(front)?.seconds).toMatchObject({ cutting: 26, packing: 71 });
    expect(of(tag)?.seconds).toMatchObject({ cutting: 18, packing: 47 });
    // 135 mm at 2.5 m an hour are 194 s; 4 min to warm up, 2 min to check and 30 s while the film is cut off, both by hand.
    expect(use.machines?.printer).toEqual({ on: 194 + 240 + 134 + 34, warmUp: 240 });
    expect(use.machines?.press.on).toBeGreaterThan(720 + 150);
    expect(use.machines?.oven).toEqual({ on: 0, warmUp: 0 });
  });

  it('parts film and its waste by the outlines of copies that are laid by them, and adds up to the whole', () => {
    // A triangle takes half of its box.
    const outline = [[0, 0, 20_000, 0, 0, 20_000]];
    const outlined = edited(laid, (draft) => {
      const { film, transfer } = draft;
      for (const roll of Object.values(film)) roll.cutting = 'outlines';
      const own = transfer[front];
      if (!own) return;
      const pixels = { width: 10, height: 10 };
      const artwork: Artwork = {
        id: asId<'artwork'>('triangle'),
        fileName: 'triangle.png',
        kind: 'png',
        pixels,
        density: null,
        trim: { x: 0, y: 0, ...pixels },
        madeFrom: null,
        outline,
        outlinedBy: 1,
        changed: NOW,
      };
      draft.artwork[artwork.id] = { ...artwork, outline };
      own.artwork = artwork.id;
    });
    const [boxed, cut] = [costsOf(laid), costsOf(outlined)];
    const footprint = ({ use }: typeof cut) => use.transfers.find(({ id }) => id === front)?.footprint;
    expect(footprint(boxed)).toBe(8000);
    expect(footprint(cut)).toBeCloseTo(4000, 6);
    const film = ({ sheet }: typeof cut) => sheet.lines.find(({ kind }) => kind === 'film');
    expect(film(cut)?.exact).toBe(film(boxed)?.exact);
    // 3 of 4000 and 2 of 1500 square millimetres: the first take twelve parts of fifteen, of the film all of it.
    const at = cut.sheet.lines.findIndex(({ kind }) => kind === 'film');
    const shares = cut.sheet.orders.flatMap(({ transfers }) => transfers);
    const share = (id: string) => shares.find((own) => own.id === id)?.exact[at] ?? 0;
    expect(share(front) / share(tag)).toBeCloseTo(12 / 3, 6);
    expect(share(front) + share(tag)).toBeCloseTo(film(cut)?.exact ?? 0, 6);
    expect(shares.reduce((sum, { amount }) => sum + amount, 0)).toBe(cut.sheet.amount);
    // The log, and the sentence over the film, count the same.
    const own = layRun(outlined, outlined.run[run] ?? expect.fail()) ?? expect.fail();
    expect(runFigures(own).waste).toBeCloseTo(1 - 15_000 / (330 * 135), 9);
    expect(closingOf(outlined, run).work.copyArea).toBeCloseTo(15_000, 6);
  });

  it('knows the garments of an order by their price, and asks none that the customer brings', () => {
    const fields = { style: 'Tee', colour: 'navy', shade: null, size: 'M' };
    const dressed = edited(laid, (draft) => {
      addGarment(draft, order, { ...fields, count: 2 }, ids);
      addGarment(draft, order, { ...fields, style: 'Hoodie', count: 1, price: asMinor(1800) }, ids);
      if (draft.settings.shop) draft.settings.shop.costs.blanks = [{ style: 'tee', price: asMinor(390) }];
    });
    const garments = ({ sheet }: ReturnType<typeof costsOf>) =>
      sheet.lines.find(({ kind }) => kind === 'garments')?.exact;
    expect(garments(costsOf(dressed))).toBe(2 * 390 + 1800);
    const brought = edited(dressed, (draft) => editOrder(draft, order, { supplied: true }));
    expect(garments(costsOf(brought))).toBeUndefined();
    const transfers = edited(dressed, (draft) => editOrder(draft, order, { wants: 'transfers' }));
    expect(garments(costsOf(transfers))).toBeUndefined();
  });

  it('has no times where no press is there, and says so', () => {
    const bare = edited(laid, (draft) => {
      if (draft.settings.shop) draft.settings.shop.station.presses = [];
    });
    expect(costsOf(bare).use.machines).toBeNull();
  });
});

describe('the cost of a locked run', () => {
  const basis = ({ use, costs, rates }: ReturnType<typeof costsOf>) => ({ use, costs, rates });
  const locked = edited(laid, (draft) => lockRun(draft, run, ids, basis(costsOf(laid))));

  it('stays what it was when prices, garments or artwork change', () => {
    const later = edited(locked, (draft) => {
      const { shop } = draft.settings;
      if (!shop) return;
      shop.costs = { ...startingCosts('USD'), whiteInk: asMilliMinor(99_000_000) };
      shop.station.handling.cutApart = shop.station.handling.pack;
      addGarment(draft, order, { style: 'Tee', colour: '', shade: null, size: 'M', count: 50 }, ids);
    });
    const before = costsOf(laid);
    const after = costsOf(later, () => null);
    expect(after.kept).toBe(true);
    expect(after.sheet).toEqual(before.sheet);
    expect(
      costsOf(edited(later, (draft) => Object.assign(draft.run[run] ?? {}, { basis: null }))).sheet,
    ).not.toEqual(before.sheet);
  });

  it('adds the garments that were spoiled', () => {
    const printed = edited(locked, (draft) => Object.assign(draft.run[run] ?? {}, { state: 'printed' }));
    const spoiled = edited(printed, (draft) =>
      spoilCopy(draft, { run, copy: front1.id, stage: 'press', garment: true, reason: 'scorched' }, ids),
    );
    const line = costsOf(spoiled).sheet.lines.find(({ kind }) => kind === 'replacements');
    expect(line?.exact).toBe(startingCosts('USD').blank);
  });
});

describe('where the cost of an order comes from', () => {
  const film = runOf(book, null)?.film ?? null;
  const costsIn = (own: Parameters<Parameters<typeof orderRuns>[3]>[0], inBook: Book) => {
    const shop = settingsOf(inBook);
    if (!shop) throw new Error('no shop');
    return runCosts(inBook, own, shop, coverageOf);
  };

  it('is the runs that it lies on, and a run of its own while some of it waits', () => {
    const placed = orderRuns(laid, order, film, costsIn);
    expect(placed.alone).toBeNull();
    expect(placed.runs.map(({ sheet }) => sheet)).toEqual([costsOf(laid).sheet]);
    const waiting = orderRuns(book, order, film, costsIn);
    expect(waiting.alone).toBe(film);
    expect(waiting.runs[0]?.use.transfers.map(({ copies }) => copies).sort()).toEqual([2, 3]);
    expect(orderRuns(book, order, null, costsIn)).toEqual({ runs: [], alone: null });
  });

  it('makes a price of whole prints that earns what is aimed at', () => {
    const shop = settingsOf(laid);
    const own = laid.order[order];
    if (!shop || !own) throw new Error('no shop');
    const pricing = { ...shop.pricing, artworkFee: asMinor(0), minimum: asMinor(0) };
    const price = orderPrice(laid, own, orderRuns(laid, order, film, costsIn), {
      pricing,
      costs: shop.costs,
    });
    expect(price.cost).toBe(costsOf(laid).sheet.amount);
    expect(price.lines.map(({ kind }) => kind)).toEqual(['print', 'print']);
    expect(price.margin).toBeGreaterThanOrEqual(0.5);
    expect(price.net - 2 * price.cost).toBeLessThanOrEqual(6);
  });
});

describe('new designs', () => {
  const image = 'a'.repeat(64) as Id<'artwork'>;
  const withImage = edited(book, (draft) => {
    draft.artwork[image] = { id: image } as Artwork;
    for (const transfer of Object.values(draft.transfer)) transfer.artwork = image;
  });

  it('are counted once at all sizes, and not again for a later order', () => {
    const twice = edited(withImage, (draft) => {
      duplicateOrder(draft, order, 'Hill Bakers, again', ids);
      const other = addOrder(draft, { name: 'Zinc', due: null }, ids);
      const size = { width: fromMm(50), height: fromMm(50), typed: { width: '50', height: '50' } };
      addTransfer(draft, other, { name: 'no image', ...size, turn: 'quarter' }, 1, ids);
    });
    const counts = Object.values(twice.order).map((each) => newDesigns(twice, each));
    expect(counts).toEqual([1, 0, 1]);
  });

  it('are as many as was typed', () => {
    const typed = edited(withImage, (draft) =>
      editOrder(draft, order, { pricing: { aim: null, newDesigns: 5, discount: 0 } }),
    );
    const own = typed.order[order];
    expect(own && newDesigns(typed, own)).toBe(5);
  });
});
