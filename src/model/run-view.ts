import { isOuter } from '../outlines';
import { onceFor, onlyFields, whileSame } from '../units';
import type { Station } from './bench';
import type { Book } from './book';
import type { PlacedCopy } from './copy';
import { isCutByOutline } from './cutting';
import { embeddedOnto, embeddedTakes, type Onto, ontoOf, takenBefore, takes } from './dealing';
import { ordersOnFilm } from './film-codes';
import { byId } from './lookup';
import { type Printer, printerOf } from './machines';
import type { ArtworkOutline, Film, Order, Settings, Transfer } from './records';
import { embeddedReprints, spoiledOnce } from './reprints';
import { embeddedIn, type Run, type Snapshot } from './run';

/** What laying a run out, its work and its stages go by, of an order. */
const WORKED_BY = ['id', 'code', 'tint', 'due', 'dueTime', 'rush', 'wants'] as const;

/**
 * An order as far as a run depends on it. Its name, contact and notes are told beside, see {@link ordersOfRun}: where only these change,
 * all that was worked out of the run holds.
 */
export type OrderOnRun = Pick<Order, (typeof WORKED_BY)[number]>;

const workedBy = onlyFields<Order, (typeof WORKED_BY)[number]>(WORKED_BY);

/** A copy on a run's film, with its order and its transfer as it is printed, or will be. */
export interface OnRun {
  readonly copy: PlacedCopy;
  readonly order: OrderOnRun;
  readonly transfer: Transfer;
  /** The outline of what prints, as it stands upright; `null` while it is not known. */
  readonly outline: ArtworkOutline | null;
  /** Whether its run is laid out by outlines. Between quarter turns a copy keeps the gap by its outline in any run. */
  readonly byOutline: boolean;
  /** Printed, or sent to print: it stays where it is. */
  readonly fixed: boolean;
}

/** How the copies of a run are dealt to garments. */
interface Dealt {
  readonly onto: Onto;
  /** How many garments of each line the run is the first to take from the store; lines of which it takes none may lack. */
  readonly takes: ReadonlyMap<string, number>;
}

type OrdersOnRun = Readonly<Record<string, OrderOnRun>>;

type Collections = Pick<Book, 'transfer' | 'copy' | 'garment' | 'placement'>;

/**
 * What holds for a run. A draft is of the book as it is, but that what is printed of it is as it was printed. A locked run is as it was
 * when it was locked. One that another device handed over brings its recipes and its equipment too.
 */
export interface RunView extends Collections, Pick<Book, 'recipe'> {
  readonly run: Run;
  readonly order: OrdersOnRun;
  /** `undefined` where a draft's film is gone. */
  readonly film: Film | undefined;
  /** `undefined` before the shop has settings. */
  readonly station: Station | undefined;
  /** The printer that its film is in. */
  readonly printer: Printer | undefined;
  readonly placed: readonly OnRun[];
  /** Which garments its copies go on, worked out when it is asked for first. */
  readonly dealt: () => Dealt;
  /** Its copies that are printed again for one that was spoiled. */
  readonly reprints: () => ReadonlySet<string>;
  /** What the run's image is made shorter by along the film. */
  readonly imageFeed: number;
  /** Length along the film as a ruler shows it once it is printed, over length as it is planned. */
  readonly stretch: number;
}

const collectionsOf = (snapshots: readonly Snapshot[]): Collections & Pick<Book, 'order'> => ({
  order: byId(snapshots.flatMap(({ orders }) => orders)),
  transfer: byId(snapshots.flatMap(({ transfers }) => transfers)),
  copy: byId(snapshots.flatMap(({ copies }) => copies)),
  garment: byId(snapshots.flatMap(({ garments }) => garments)),
  placement: byId(snapshots.flatMap(({ placements }) => placements)),
});

/** What of copies can be drawn: their transfers and orders are known. */
const drawn = (
  copies: readonly PlacedCopy[],
  source: Pick<RunView, 'order' | 'transfer'>,
  outlineOf: (transfer: Transfer) => ArtworkOutline | null | undefined,
  { fixed, byOutline }: Pick<OnRun, 'fixed' | 'byOutline'>,
): OnRun[] =>
  copies.flatMap((copy) => {
    const transfer = source.transfer[copy.transfer];
    const order = transfer && source.order[transfer.order];
    return order ? [{ copy, order, transfer, outline: outlineOf(transfer) ?? null, byOutline, fixed }] : [];
  });

const embedded = (run: Run): OnRun[] =>
  embeddedIn(run).flatMap((snapshot) =>
    // Outlines are embedded where copies keep the gap by them.
    drawn(snapshot.copies, collectionsOf([snapshot]), ({ id }) => snapshot.outlines[id], {
      fixed: true,
      byOutline: true,
    }),
  );

/** Whether the copies of a run keep the gap by their outlines: it was laid out so, or is to be. */
export const isByOutlines = (run: Pick<Run, 'laidBy'>, film: Pick<Film, 'cutting'> | undefined): boolean =>
  run.laidBy === 'outlines' || (film !== undefined && isCutByOutline(film));

const solids = new WeakMap<ArtworkOutline, ArtworkOutline>();

/** An outline without its holes; the same for the same one. */
function solid(outline: ArtworkOutline): ArtworkOutline {
  const last = solids.get(outline);
  if (last) return last;
  const outer = outline.filter((line) => isOuter(Float64Array.from(line)));
  const found = outer.length === outline.length ? outline : outer;
  solids.set(outline, found);
  return found;
}

/**
 * The outline that a transfer is laid out by, of the artwork that it has now; `null` if that is its box. Its holes are no room for others
 * but on film whose shop cuts them out.
 */
export function outlineOf(
  { artwork }: Pick<Book, 'artwork'>,
  transfer: Pick<Transfer, 'artwork'>,
  film: Pick<Film, 'cutting'> | undefined,
): ArtworkOutline | null {
  const outline = artwork[transfer.artwork ?? '']?.outline ?? null;
  return outline && film?.cutting !== 'in-holes' ? solid(outline) : outline;
}

/** Works something out once, when it is asked for first. */
function once<Found>(find: () => Found): () => Found {
  let found: { readonly value: Found } | null = null;
  return () => {
    found ??= { value: find() };
    return found.value;
  };
}

/** Of a draft: what is printed of it as it was noted, and the rest as the book deals it. */
function dealtOfDraft(book: Book, run: Run, live: readonly PlacedCopy[]): Dealt {
  const all = ontoOf(book);
  const onto = new Map(embeddedOnto(run));
  for (const { id } of live) {
    const line = all.get(id);
    if (line !== undefined) onto.set(id, line);
  }
  const first = new Map(takes(book, live, onto, takenBefore(book, run)));
  for (const [line, count] of embeddedTakes(run)) first.set(line, count + (first.get(line) ?? 0));
  return { onto, takes: first };
}

/** Records with others in front of them; most often one side has none. */
function over<Entry>(
  under: Readonly<Record<string, Entry>>,
  above: Readonly<Record<string, Entry>>,
): Readonly<Record<string, Entry>> {
  if (Object.keys(under).length === 0) return above;
  return Object.keys(above).length === 0 ? under : { ...under, ...above };
}

/** Of a draft: what is printed of it as it was noted, and the rest as it was spoiled by now. */
const reprintsOfDraft = (book: Book, run: Run, live: readonly PlacedCopy[]): ReadonlySet<string> =>
  new Set([...embeddedReprints(run), ...live.flatMap(({ id }) => (spoiledOnce(book).has(id) ? [id] : []))]);

function viewOfDraft(
  book: Book,
  run: Run,
): Collections & Pick<RunView, 'order' | 'placed' | 'dealt' | 'reprints'> {
  const order = workedBy(ordersOnFilm(book));
  const printed = collectionsOf(embeddedIn(run));
  const live = Object.values(book.copy).filter(
    (copy): copy is PlacedCopy => copy.state === 'placed' && copy.run === run.id && !printed.copy[copy.id],
  );
  const asLaid = { fixed: false, byOutline: isByOutlines(run, book.film[run.film]) };
  return {
    order: over<OrderOnRun>(printed.order, order),
    transfer: over(printed.transfer, book.transfer),
    copy: over(book.copy, printed.copy),
    garment: over(printed.garment, book.garment),
    placement: over(printed.placement, book.placement),
    dealt: once(() => dealtOfDraft(book, run, live)),
    reprints: once(() => reprintsOfDraft(book, run, live)),
    placed: [
      ...embedded(run),
      ...drawn(
        live,
        { order, transfer: book.transfer },
        (transfer) => outlineOf(book, transfer, book.film[run.film]),
        asLaid,
      ),
    ],
  };
}

/** What an image that is written now for a printer is made shorter by along the film, by the shop's choice. */
export const chosenFeed = (
  { printImage }: Pick<Settings, 'printImage'>,
  { feed }: Pick<Printer, 'feed'>,
): number => (printImage.feedCorrected ? feed : 1);

/** The equipment that holds for a run: the shop's, or that of the device that handed it over. */
const stationOfRun = (book: Book, { received }: Run): Station | undefined =>
  received ? received.station : book.settings.shop?.station;

/** The printer that a run's film is in, or was when it was locked. */
export function printerOfRun(book: Book, run: Run): Printer | undefined {
  const station = stationOfRun(book, run);
  if (!station) return undefined;
  return run.state === 'draft'
    ? printerOf(station, book.film[run.film])
    : printerOf(station, run.snapshot.film, run.snapshot.printer);
}

/** How its printer feeds a run: its film is longer than planned by what the image does not make up for. */
function feedOf(book: Book, run: Run, printer: Printer | undefined): Pick<RunView, 'imageFeed' | 'stretch'> {
  const { received } = run;
  if (received) return { imageFeed: run.imageFeed ?? 1, stretch: received.stretch };
  const { shop } = book.settings;
  // Of a draft an image is still to be written, though one may have been.
  const written = run.state === 'draft' ? null : run.imageFeed;
  const imageFeed = written ?? (shop && printer ? chosenFeed(shop, printer) : 1);
  return { imageFeed, stretch: (printer?.feed ?? 1) / imageFeed };
}

function makeView(book: Book, run: Run): RunView {
  const own =
    run.state === 'draft'
      ? { ...viewOfDraft(book, run), film: book.film[run.film] }
      : {
          ...collectionsOf(embeddedIn(run)),
          placed: embedded(run),
          dealt: once(() => ({ onto: embeddedOnto(run), takes: embeddedTakes(run) })),
          reprints: once(() => embeddedReprints(run)),
          film: run.snapshot.film,
        };
  const recipe = run.received ? byId(run.received.recipes) : book.recipe;
  const printer = printerOfRun(book, run);
  return { run, ...own, recipe, station: stationOfRun(book, run), printer, ...feedOf(book, run, printer) };
}

/** What of the book a run's view is made of. */
const readFor = (book: Book, run: Run): readonly unknown[] => [
  ...(run.received
    ? []
    : [
        book.recipe,
        book.settings.shop?.station,
        ...Object.values(feedOf(book, run, printerOfRun(book, run))),
      ]),
  ...(run.state === 'draft'
    ? [
        workedBy(ordersOnFilm(book)),
        book.transfer,
        book.copy,
        book.garment,
        book.placement,
        book.artwork,
        book.film[run.film],
        // What other runs have printed of an order is not dealt again.
        book.run,
        book.spoilage,
      ]
    : []),
];

const known = new WeakMap<Run, { readonly read: readonly unknown[]; readonly view: RunView }>();

/**
 * The one answer to what holds for a run: see {@link RunView}. The same object as long as the records that it is made of are the
 * same, so that what is worked out from it can be remembered by it.
 * @param book of records that are replaced, never changed: none in the middle of an edit
 */
export function runView(book: Book, run: Run): RunView {
  const read = readFor(book, run);
  const last = known.get(run);
  if (last?.read.every((part, at) => part === read[at])) return last.view;
  const view = makeView(book, run);
  known.set(run, { read, view });
  return view;
}

/** The orders of what is printed of a run, or sent to print, as they were then. */
export const ordersPrinted = onceFor((run: Run): Book['order'] =>
  byId(embeddedIn(run).flatMap(({ orders }) => orders)),
);

const ordersOfDraft = onceFor((run: Run) =>
  whileSame((now: Book['order']): Book['order'] => over(ordersPrinted(run), now)),
);

/**
 * The orders that a run's copies are of, with all that is told of them: of a draft as they are now, of a locked run as they were when it
 * was locked. The same object as long as orders and runs are.
 */
export const ordersOfRun = (book: Pick<Book, 'order' | 'run'>, run: Run): Book['order'] =>
  run.state === 'draft' ? ordersOfDraft(run)(ordersOnFilm(book)) : ordersPrinted(run);

/** What holds for the run of an id; `null` if there is none. */
export function runViewOf(book: Book, id: string): RunView | null {
  const run = book.run[id];
  return run ? runView(book, run) : null;
}
