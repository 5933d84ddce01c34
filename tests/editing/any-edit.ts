import fc from 'fast-check';
import { startingRates } from '../../src/costing';
import { benchEdits, type Edit, edits, firstFilm, type HandEntry } from '../../src/editing';
import { proposeClosing } from '../../src/log';
import {
  type Book,
  embeddedIn,
  type Film,
  firstOf,
  type Id,
  OUTLINE_STEPS,
  sendings,
  settingsOf,
} from '../../src/model';
import { atOnce } from '../../src/packing';
import { priceOf, startingPricing } from '../../src/pricing';
import {
  angleOf,
  asMinor,
  asSeconds,
  fromMm,
  type LocalDate,
  type Microlitres,
  type Temperature,
  UPRIGHT,
} from '../../src/units';
import { checksOf } from '../../src/upkeep';
import { printing } from '../pressing/stations';
import { NOW, smallBook } from './book';

/** An edit that suits a book, drawn beforehand; `null` where the book has nothing for it. */
export type EditFor = (book: Book) => Edit | null;

/** What is drawn for one edit: two whole numbers and a yes or no. */
interface Lot {
  readonly a: number;
  readonly b: number;
  readonly yes: boolean;
}

const lot = fc.record({ a: fc.nat({ max: 400 }), b: fc.nat({ max: 400 }), yes: fc.boolean() });

/** An edit of whatever book. */
const any = (make: (lot: Lot, book: Book) => Edit | null): fc.Arbitrary<EditFor> =>
  lot.map((drawn) => (book) => make(drawn, book));

/** One of what a book holds, if there is any. */
const oneOf = <Item>(items: Readonly<Record<string, Item>>, at: number): Item | undefined => {
  const all = Object.values(items);
  return all[at % Math.max(1, all.length)];
};

/** An edit of one record of those that a book holds. */
const on = <Item>(
  of: (book: Book) => Readonly<Record<string, Item>>,
  make: (record: Item, lot: Lot, book: Book) => Edit | null,
): fc.Arbitrary<EditFor> =>
  fc.tuple(fc.nat({ max: 30 }), lot).map(([at, drawn]) => (book) => {
    const record = oneOf(of(book), at);
    return record === undefined ? null : make(record, drawn, book);
  });

const size = ({ a, b }: Lot) => ({
  width: fromMm(1 + (a % 120)),
  height: fromMm(1 + (b % 120)),
  typed: { width: `${a} mm`, height: `${b} mm` },
});
const place = ({ a, b, yes }: Lot) => ({
  x: fromMm(5 + (a % 300)),
  y: fromMm(10 + b),
  angle: yes ? angleOf(7.5 * a) : UPRIGHT,
  pinned: false,
});
const artwork = ({ a }: Lot) => ({
  id: `artwork-${a % 5}` as Id<'artwork'>,
  fileName: 'a.png',
  kind: 'png' as const,
  pixels: { width: 10, height: 1 + a },
  density: null,
  trim: null,
  madeFrom: null,
});
const box = ({ a, yes }: Lot) => ({
  lot: `${a}`,
  bestBefore: null,
  opened: null,
  reorder: yes ? a : null,
  order: '',
});
const tee = { style: 'Tee', colour: 'Black', shade: null, size: 'M' };
const day = '2026-11-25' as LocalDate;
const doer = { by: 'AB', day };
const width = { width: fromMm(80), typed: '80 mm' };
const recipe = { origin: 'own', notes: '' } as const;
const fieldsOf = (film: Film, price: number) =>
  film.kind === 'roll'
    ? { ...film, price: { ...film.price, amount: asMinor(price) } }
    : { ...film, price: asMinor(price) };
const copiesFor = (book: Book, { a, b }: Lot) => Object.values(book.copy).slice(a % 4, (a % 4) + 1 + (b % 3));
const placesFor = (book: Book, drawn: Lot) =>
  copiesFor(book, drawn).map(({ id }, at) => [id, place({ ...drawn, b: drawn.b + 130 * at })] as const);
const kinds = ['bought', 'returned', 'weighed-out', 'discarded', 'spoiled', 'counted'] as const;

/** Draws every edit there is: one that is missing here does not compile. */
const table: Readonly<Record<keyof typeof edits | keyof typeof benchEdits, fc.Arbitrary<EditFor>>> = {
  addOrder: any(({ a }) => edits.addOrder({ name: `Order ${a}`, due: null })),
  editOrder: on(
    ({ order }) => order,
    ({ id }, { a, yes }) => edits.editOrder(id, { name: `${a}`, rush: yes }),
  ),
  removeOrder: on(
    ({ order }) => order,
    ({ id }) => edits.removeOrder(id),
  ),
  duplicateOrder: on(
    ({ order }) => order,
    ({ id }, { a }) => edits.duplicateOrder(id, `Again ${a}`),
  ),
  tellFabric: any(({ a, yes }, book) =>
    edits.tellFabric(
      [...Object.values(book.garment), ...Object.values(book.transfer)]
        .slice(0, 1 + (a % 4))
        .map(({ id }) => id),
      yes ? 'polyester' : null,
    ),
  ),
  // From the very book, as from a snapshot of a moment ago: all ids are taken.
  bringOrders: any(({ a, yes }, book) =>
    edits.bringOrders(yes ? smallBook().book : book, Object.keys(book.order).slice(0, 1 + (a % 2))),
  ),
  addRows: any((drawn, book) =>
    edits.addRows([
      {
        line: 1,
        order: `Order ${drawn.a % 3}`,
        number: drawn.yes ? `${drawn.a % 3}` : '',
        repeats: null,
        replaces: drawn.yes ? (Object.values(book.transfer)[drawn.b % 5]?.id ?? null) : null,
        contact: `Zoe ${drawn.a % 2}`,
        notes: '',
        doubts: [],
        transfer: 'x',
        ...size(drawn),
        count: 2,
        due: day,
        turn: 'quarter',
        fabric: drawn.yes ? 'polyester' : null,
      },
    ]),
  ),
  addTransfer: on(
    ({ order }) => order,
    ({ id }, drawn) => edits.addTransfer(id, { name: 'x', ...size(drawn), turn: 'quarter' }, drawn.a % 5),
  ),
  editTransfer: on(
    ({ transfer }) => transfer,
    ({ id }, drawn) => edits.editTransfer(id, size(drawn)),
  ),
  removeTransfer: on(
    ({ transfer }) => transfer,
    ({ id }) => edits.removeTransfer(id),
  ),
  setCount: on(
    ({ transfer }) => transfer,
    ({ id }, { a, yes }) => edits.setCount(id, a % 7, yes ? 'ordered' : 'over'),
  ),
  addDesign: on(
    ({ order }) => order,
    ({ id }, drawn, book) => {
      const known = oneOf(book.transfer, drawn.b);
      const more = known && drawn.yes ? [{ transfer: known.id, count: 1 }] : [];
      const sizes = [{ name: 'x', ...size(drawn), count: 1 }];
      return edits.addDesign(id, { artwork: artwork(drawn), shade: null, sizes, more });
    },
  ),
  addArtworkFile: on(
    ({ order }) => order,
    ({ id }, drawn) => edits.addArtworkFile(id, { name: 'x', ...size(drawn) }, artwork(drawn)),
  ),
  setArtwork: on(
    ({ transfer }) => transfer,
    ({ id }, drawn) => edits.setArtwork(id, artwork(drawn)),
  ),
  takeArtwork: on(
    ({ transfer }) => transfer,
    ({ id, order }, drawn) =>
      edits.takeArtwork([
        { transfer: id, artwork: artwork(drawn) },
        { order, fields: { name: 'x', ...size(drawn) }, artwork: artwork(drawn) },
      ]),
  ),
  setMadeArtwork: on(
    ({ transfer }) => transfer,
    ({ id }, drawn) => edits.setMadeArtwork(id, artwork(drawn), size(drawn)),
  ),
  setMeant: on(
    ({ transfer }) => transfer,
    ({ id }, drawn) =>
      edits.setMeant(id, { finding: 'coarse', artwork: artwork(drawn).id, amounts: [drawn.a] }),
  ),
  clearMeant: on(
    ({ transfer }) => transfer,
    ({ id }) => edits.clearMeant(id, 'coarse'),
  ),
  addGarment: on(
    ({ order }) => order,
    ({ id }, { a }) => edits.addGarment(id, { ...tee, count: a % 5 }),
  ),
  editGarment: on(
    ({ garment }) => garment,
    ({ id }, { a }) => edits.editGarment(id, { count: a % 5 }),
  ),
  priceGarments: on(
    ({ garment }) => garment,
    ({ id }, { a }) => edits.priceGarments([id], asMinor(a)),
  ),
  removeGarment: on(
    ({ garment }) => garment,
    ({ id }) => edits.removeGarment(id),
  ),
  addPlacement: on(
    ({ order }) => order,
    ({ id }, { a }) =>
      edits.addPlacement(id, {
        place: 'front',
        design: 'Crest',
        ratio: (1 + a) / 200,
        widths: { adult: width, youth: width, toddler: width },
      }),
  ),
  editPlacement: on(
    ({ placement }) => placement,
    ({ id }, { a }) => edits.editPlacement(id, { ratio: (1 + a) / 200 }),
  ),
  removePlacement: on(
    ({ placement }) => placement,
    ({ id }) => edits.removePlacement(id),
  ),
  addNames: on(
    ({ order }) => order,
    ({ id }, drawn) =>
      edits.addNames(id, [{ name: 'Ann', number: `${drawn.a}`, size: 'M' }], {
        ...size(drawn),
        style: 'Tee',
        fabric: drawn.yes ? 'nylon' : null,
      }),
  ),
  addQuote: on(
    ({ order }) => order,
    ({ id }, { a }) => {
      const price = priceOf({
        pricing: startingPricing('USD', 'mm'),
        order: { rush: false, supplied: false, pricing: { aim: null, newDesigns: null, discount: 0 } },
        prints: [{ transfer: 't', name: 'x', design: 'd', size: 's', count: 1, cost: a, length: fromMm(90) }],
        garments: [],
        newDesigns: 0,
        cost: asMinor(a),
      });
      return edits.addQuote(id, price, { on: day, until: day, language: 'en', locale: 'en-GB' });
    },
  ),
  editQuoteNotes: on(
    ({ quote }) => quote,
    ({ id }, { a }) => edits.editQuoteNotes(id, `${a}`),
  ),
  editRun: on(
    ({ run }) => run,
    ({ id, state }, { a }) => (state === 'draft' ? edits.editRun(id, { name: `${a}` }) : null),
  ),
  removeRun: on(
    ({ run }) => run,
    ({ id }) => edits.removeRun(id),
  ),
  chooseCopies: on(
    ({ run }) => run,
    ({ id, state }, drawn, book) =>
      state === 'draft'
        ? edits.chooseCopies(
            drawn.yes ? id : null,
            copiesFor(book, drawn).map((copy) => copy.id),
          )
        : null,
  ),
  moveToRun: on(
    ({ run }) => run,
    ({ id, state }, drawn, book) =>
      state === 'draft'
        ? edits.moveToRun(
            id,
            waiting(book, drawn).map((copy) => copy.id),
          )
        : null,
  ),
  setPlaces: on(
    ({ run }) => run,
    ({ id }, drawn, book) => edits.setPlaces(id, free(book, placesFor(book, drawn))),
  ),
  setPinned: any((drawn, book) =>
    edits.setPinned(
      waiting(book, drawn).map((copy) => copy.id),
      drawn.yes,
    ),
  ),
  takeOff: any((drawn, book) => edits.takeOff(waiting(book, drawn).map((copy) => copy.id))),
  drawForRun: on(
    ({ run }) => run,
    ({ id }) => edits.drawForRun(id),
  ),
  drawFromShelf: on(
    ({ shelf }) => shelf,
    ({ id }) => edits.drawFromShelf(id),
  ),
  layOut: on(
    ({ run }) => run,
    ({ id }, drawn, book) => edits.layOut(id, free(book, placesFor(book, drawn))),
  ),
  bringFirst: on(
    ({ order }) => order,
    ({ id }, { a, yes }, book) => {
      const draft = Object.values(book.run).find(({ state }) => state === 'draft');
      const film = oneOf(book.film, a);
      if (yes && draft) return edits.bringFirst(id, { kind: 'run', run: draft.id }, atOnce);
      return film ? edits.bringFirst(id, { kind: 'new', name: `${a}`, inUse: film.id }, atOnce) : null;
    },
  ),
  takeWay: on(
    ({ run }) => run,
    ({ id, state, film }, drawn, book) => {
      const own = book.film[film];
      const takes = (['film', 'settings', 'new-film', 'turns'] as const)[drawn.a % 4] ?? 'film';
      if (state !== 'draft' || !own) return null;
      const tried = takes === 'film' ? own : { ...own, gap: fromMm(4) };
      return edits.takeWay(id, { takes, film: tried, places: free(book, placesFor(book, drawn)) });
    },
  ),
  chooseFilm: on(
    ({ run }) => run,
    ({ id, state }, { a, b, yes }, book) => {
      const film = oneOf(book.film, b);
      return state === 'draft' && film ? edits.chooseFilm(id, yes ? film.id : null, fieldsOf(film, a)) : null;
    },
  ),
  removeFilm: on(
    ({ film }) => film,
    ({ id }) => edits.removeFilm(id),
  ),
  buyFilm: on(
    ({ film }) => film,
    (film, drawn) => edits.buyFilm(fieldsOf(film, drawn.a), box(drawn)),
  ),
  noteFilmBox: on(
    ({ film }) => film,
    ({ id }, drawn) => edits.noteFilmBox(id, box(drawn)),
  ),
  addSupplies: any((drawn) =>
    edits.addSupplies([
      { fields: { kind: 'white', name: 'White', ...box(drawn) }, amount: 1000 * drawn.a },
      { fields: { kind: 'blank', name: 'Tee', ...tee, ...box(drawn) }, amount: drawn.b },
    ]),
  ),
  editSupply: on(
    ({ item }) => item,
    ({ id }, drawn) => edits.editSupply(id, box(drawn)),
  ),
  archiveItem: on(
    ({ item }) => item,
    ({ id }, { yes }) => edits.archiveItem(id, yes),
  ),
  enterByHand: any(({ a, b }, book) => {
    const item = oneOf({ ...book.film, ...book.item }, a);
    const kind = kinds[b % kinds.length] ?? 'counted';
    const entry: HandEntry = { kind, amount: 1000 * b };
    return item ? edits.enterByHand(item.id, entry, { run: null, note: '' }) : null;
  }),
  counterEntry: on(
    ({ entry }) => entry,
    ({ id }) => edits.counterEntry(id),
  ),
  cutOffcut: on(
    ({ film }) => film,
    ({ id }, { a }) => edits.cutOffcut(id, fromMm(1 + a), 'End'),
  ),
  putOffcutBack: on(
    ({ film }) => film,
    ({ id }) => edits.putOffcutBack(id),
  ),
  dropAside: on(
    ({ aside }) => aside,
    ({ id }) => benchEdits.dropAside(id),
  ),
  mapHeading: any(({ a, yes }) =>
    edits.mapHeading(['Order', `Column ${a}`], `Column ${a}`, yes ? 'notes' : 'none', a % 2 === 0),
  ),
  editSettings: any(({ a, yes }) =>
    edits.editSettings({ shelfFirst: yes, rates: { ...startingRates.mm, white: a as Microlitres } }),
  ),
  editPrices: any(({ a }) =>
    edits.editPrices({ letterhead: { name: `${a}`, address: '' }, mark: a % 2 ? null : 'iVBORw==' }),
  ),
  changeCurrency: any(({ a }) => edits.changeCurrency(['USD', 'JPY', 'TND'][a % 3] ?? 'USD')),
  editStation: any(({ a, yes }) =>
    edits.editStation({
      temperature: yes ? 'C' : 'F',
      ...printing({ sends: [null, ...sendings][a % 4] ?? null }),
    }),
  ),
  editPrinter: any(({ a, yes }) =>
    edits.editPrinter(firstOf('printer'), {
      feed: 1 + (a % 5) / 100,
      inkUp: yes ? 'plain' : 'mirrored',
      sends: [null, ...sendings][a % 4] ?? null,
    }),
  ),
  setPress: any(({ a }) =>
    edits.setPress(
      { peel: 'hot', fabric: 'cotton' },
      {
        ...recipe,
        values: {
          temperature: (1500 + a) as Temperature,
          pressure: 'medium',
          seconds: { small: asSeconds(10), large: asSeconds(12) },
          wait: asSeconds(0),
          prePress: asSeconds(3),
          secondPress: asSeconds(5),
          cover: 'none',
        },
      },
    ),
  ),
  setCure: any(({ a }) =>
    edits.setCure('oven', {
      ...recipe,
      values: { temperature: (1200 + a) as Temperature, seconds: asSeconds(120), clear: fromMm(5) },
    }),
  ),
  calibrate: any(({ a }, book) => {
    const before = book.settings.shop?.rates.white ?? 0;
    return edits.calibrate({
      quantity: 'white',
      driver: 'area',
      printer: null,
      found: { value: a, low: a, high: a },
      runs: 7,
      set: [{ setting: 'rates.white', before, after: a }],
    });
  }),
  takeBackCalibration: on(
    ({ calibration }) => calibration,
    ({ id }) => edits.takeBackCalibration(id),
  ),
  leaveRunOut: on(
    ({ run }) => run,
    ({ id }, { yes }) => edits.leaveRunOut('white', id, yes),
  ),
  noteCheck: any(({ yes }) =>
    edits.noteCheck({ check: checkId, machine: null, name: '', done: yes, note: '' }, doer),
  ),
  noteFailedCheck: any(({ a }) =>
    edits.noteFailedCheck(
      { check: checkId, machine: firstOf('printer'), name: '', note: '' },
      { seconds: asSeconds(60 + a), colour: (100 * a) as Microlitres, white: a as Microlitres },
      doer,
    ),
  ),
  noteRoom: any(({ a, yes }) =>
    edits.noteRoom(
      { temperature: (100 + a) as Temperature, humidity: 0.5 },
      yes ? { check: checkId, machine: null, name: '', done: true, note: `${a}` } : null,
      doer,
    ),
  ),
  addCheck: any(({ a }) => edits.addCheck({ ...checkFields, name: `${a}` })),
  editCheck: any(({ a }, book) => {
    const all = checksOf(book.check, 'mm');
    const check = all[a % all.length];
    return check ? edits.editCheck(check, { name: `${a}` }) : null;
  }),
  resetCheck: any(() => edits.resetCheck(checkId)),
  readArtworkAgain: on(
    ({ artwork }) => artwork,
    ({ id }, drawn) => edits.readArtworkAgain(id, artwork(drawn)),
  ),
  keepOutline: on(
    ({ artwork }) => artwork,
    ({ id }, { a }) => edits.keepOutline(id, [[0, a, OUTLINE_STEPS, 0, OUTLINE_STEPS, OUTLINE_STEPS]], 1),
  ),
  drawArtwork: on(
    ({ transfer }) => transfer,
    ({ id }, drawn) => edits.drawArtwork(id, artwork(drawn)),
  ),
  addRun: on(
    ({ film }) => film,
    ({ id }, { a, yes }) => edits.addRun({ name: `${a}`, film: id, takes: yes ? 'all' : 'chosen' }),
  ),
  beginRun: any(({ a }) => edits.beginRun({ name: `${a}`, film: firstFilm(`${a}`, 'EUR', 'mm') })),
  lockRun: on(
    ({ run }) => run,
    ({ id }) => edits.lockRun(id, null),
  ),
  noteImage: on(
    ({ run }) => run,
    ({ id }, { a }) => edits.noteImage(id, 0.95 + (a % 100) / 1000),
  ),
  unlockRun: on(
    ({ run }) => run,
    ({ id }) => edits.unlockRun(id),
  ),
  printedTo: on(
    ({ run }) => run,
    ({ id }, { a }) => edits.printedTo(id, fromMm(a)),
  ),
  spoil: on(
    ({ run }) => run,
    ({ id }, { a }) => edits.spoil(id, { from: fromMm(a), to: fromMm(a + 20) }),
  ),
  finishRun: on(
    ({ run }) => run,
    ({ id }) => edits.finishRun(id, 'Next'),
  ),
  reopenRun: on(
    ({ run }) => run,
    ({ id }) => edits.reopenRun(id),
  ),
  advanceRun: on(
    ({ run }) => run,
    ({ id }) => edits.advanceRun(id),
  ),
  stepRunBack: on(
    ({ run }) => run,
    ({ id }) => edits.stepRunBack(id),
  ),
  spoilCopy: on(
    ({ run }) => run,
    ({ id }, { yes }, book) => {
      const copy = Object.values(book.copy).find(({ run }) => run === id);
      return copy
        ? edits.spoilCopy({ run: id, copy: copy.id, stage: 'press', garment: yes, reason: '' })
        : null;
    },
  ),
  correctClosing: on(
    ({ closing }) => closing,
    (told, { a }) => edits.correctClosing({ ...told, actual: { ...told.actual, film: fromMm(a) } }, []),
  ),
  closeRun: on(
    ({ run }) => run,
    ({ id, state }, _lot, book) => {
      const settings = settingsOf(book);
      const covers = () => ({ colour: 3000, white: 5000 });
      const closing =
        state === 'pressed' && settings
          ? proposeClosing(book, id, settings, covers, { now: NOW, day })
          : null;
      return closing ? edits.closeRun(closing, []) : null;
    },
  ),
  noteHandedBack: on(
    ({ run }) => run,
    ({ id }, { a }) => benchEdits.noteHandedBack(id, [`told-${a}`]),
  ),
  removeReceived: on(
    ({ run }) => run,
    ({ id }) => benchEdits.removeReceived(id),
  ),
  joinDraft: on(
    ({ run }) => run,
    ({ id }) => benchEdits.joinDraft(id, atOnce),
  ),
  joinPrinting: on(
    ({ run }) => run,
    ({ id }) => benchEdits.joinPrinting(id, atOnce),
  ),
  tickJobs: on(
    ({ run }) => run,
    (run, { a, yes }) => {
      const { id, state } = run;
      const order = embeddedIn(run).at(-1)?.orders[0]?.id ?? '';
      const subject = [`pack/${order}`, 'print/0', 'begun'][a % 3] ?? '';
      return state === 'draft'
        ? null
        : benchEdits.tickJobs(
            id,
            [subject],
            { done: yes, by: 'AB', machines: new Map(a % 2 ? [[subject, 'press-1']] : []) },
            'Next',
          );
    },
  ),
  takeIn: on(
    ({ run }) => run,
    (run, { a }) => {
      const { id, name } = run;
      const tick = {
        id: `told-${a}` as Id<'tick'>,
        run: id,
        subject: 'begun',
        done: true,
        at: NOW,
        by: 'AB',
        machine: null,
        changed: NOW,
      };
      const locked = embeddedIn(run).at(-1)?.at ?? NOW;
      const records = { ticks: [tick], spoilages: [] };
      return benchEdits.takeIn({ kind: 'ticks', run: id, name, locked, made: NOW, records });
    },
  ),
  takeAside: on(
    ({ aside }) => aside,
    ({ id }) => benchEdits.takeAside(id),
  ),
};

const checkId = 'nozzles' as Id<'check'>;
const checkFields = { interval: { kind: 'days', days: 7 }, of: 'shop', hazard: 'none' } as const;

/** Copies that no run holds. */
const waiting = (book: Book, drawn: Lot) =>
  copiesFor(book, drawn).filter(({ run }) => run === null || book.run[run]?.state === 'draft');

/** Places of copies that no locked run holds. */
const free = <Item extends readonly [Id<'copy'>, unknown]>(book: Book, places: readonly Item[]): Item[] =>
  places.filter(([id]) => {
    const run = book.copy[id]?.run ?? null;
    return run === null || book.run[run]?.state === 'draft';
  });

/** Any edit; a failure tells it by its name. */
export const anyEdit: fc.Arbitrary<EditFor> = fc.oneof(
  ...Object.entries(table).map(([name, arbitrary]) =>
    arbitrary.map((edit) => Object.assign(edit, { [fc.toStringMethod]: () => name })),
  ),
);
