import { asId, type Book, fabricOn, type Instant, type LockedRun, runViewOf, type Snapshot } from '../model';
import { quartersIn } from '../units';
import type { HandOver, Picture, Records } from './content';

/** All that was ticked and spoiled on a run, as far as this device knows. */
export function recordsOf(book: Pick<Book, 'tick' | 'spoilage'>, run: string): Records {
  const of = <Item extends { readonly run: string }>(all: Readonly<Record<string, Item>>): Item[] =>
    Object.values(all).filter((item) => item.run === run);
  return { ticks: of(book.tick), spoilages: of(book.spoilage) };
}

/** Where copies lie between quarter turns, their places are told by their outlines. */
function outlinesOfTurned({ copies, outlines }: Snapshot): Snapshot['outlines'] {
  const turned = new Set(
    copies.flatMap(({ transfer, place }) => (quartersIn(place.angle) === null ? [transfer] : [])),
  );
  return Object.fromEntries(Object.entries(outlines).filter(([transfer]) => turned.has(asId(transfer))));
}

/** The outlines that go with a run: all of them, or of copies alone that lie between quarter turns, the others being told by their boxes. */
export type Carried = 'outlines' | 'boxes';

/** What a press needs not know of an order and of its cost, and what it needs not carry where codes are short. */
const trimmedPart = (part: Snapshot, withPictures: boolean, carried: Carried): Snapshot => ({
  ...part,
  orders: part.orders.map((order) => ({ ...order, notes: '' })),
  garments: part.garments.map((garment) => ({ ...garment, price: null })),
  transfers: part.transfers.map((transfer) => ({
    ...transfer,
    artwork: withPictures ? transfer.artwork : null,
  })),
  // What is alike lies side by side: it takes less room so. Where a copy lies is written on it.
  copies: part.copies.toSorted((a, b) =>
    a.transfer === b.transfer ? a.number - b.number : a.transfer < b.transfer ? -1 : 1,
  ),
  printer: null,
  placements: part.placements.map((placement) => ({ ...placement, artwork: null })),
  outlines: carried === 'outlines' ? part.outlines : outlinesOfTurned(part),
});

const trimmed = (run: LockedRun, withPictures: boolean, carried: Carried): LockedRun => ({
  ...run,
  basis: null,
  snapshot: trimmedPart(run.snapshot, withPictures, carried),
  printed: run.printed && {
    ...run.printed,
    as: run.printed.as.map((part) => trimmedPart(part, withPictures, carried)),
  },
});

/**
 * A run to be handed over, with what Cut and Press need: its snapshot, the shop's recipes and equipment, what is ticked.
 * @param pictures of its artwork, by id; none where codes carry it
 * @param carried `boxes` where codes have no room for the outlines of copies that are laid by them
 * @returns `null` for a run that is not locked: it could still change
 */
export function handOverRun(
  book: Book,
  id: string,
  pictures: Readonly<Record<string, Picture>> | null,
  made: Instant,
  carried: Carried = 'outlines',
): HandOver | null {
  const view = runViewOf(book, id);
  if (!view?.station || !view.printer || view.run.state === 'draft') return null;
  const { run, film, station, printer, imageFeed, stretch } = view;
  const records = recordsOf(book, id);
  // One that nobody has told is pressed as one that is not in the list.
  const fabrics = new Set(view.placed.map(({ copy }) => fabricOn(view, copy) ?? 'other'));
  const recipes = Object.values(view.recipe)
    .filter((recipe) =>
      recipe.kind === 'cure'
        ? recipe.by === station.curer
        : recipe.peel === film?.peel && fabrics.has(recipe.fabric),
    )
    .map((recipe) => ({ ...recipe, history: [] }));
  return {
    kind: 'run',
    run: {
      ...trimmed(run, pictures !== null, carried),
      imageFeed,
      // A press needs no other printer than the run's.
      received: { made, recipes, station: { ...station, printers: [printer] }, stretch, known: [] },
    },
    made,
    records,
    pictures: pictures ?? {},
  };
}

/**
 * What was ticked here on a run, to be handed back.
 * @param which what the other device is not known to have, or all of it once more
 */
export function handBackTicks(
  book: Book,
  id: string,
  made: Instant,
  which: 'new' | 'all' = 'new',
): HandOver | null {
  const run = book.run[id];
  if (!run || run.state === 'draft') return null;
  const known = new Set(which === 'new' ? run.received?.known : []);
  const isNew = ({ id: own }: { readonly id: string }) => !known.has(own);
  const { ticks, spoilages } = recordsOf(book, id);
  return {
    kind: 'ticks',
    run: run.id,
    name: run.name,
    locked: run.snapshot.at,
    made,
    records: { ticks: ticks.filter(isNew), spoilages: spoilages.filter(isNew) },
  };
}
