import { type Book, benchBook, type Instant, type Run } from '../model';
import type { HandOver, Picture, Records } from './content';

/** All that was ticked and spoiled on a run, as far as this device knows. */
export function recordsOf(book: Pick<Book, 'tick' | 'spoilage'>, run: string): Records {
  const of = <Item extends { readonly run: string }>(all: Readonly<Record<string, Item>>): Item[] =>
    Object.values(all).filter((item) => item.run === run);
  return { ticks: of(book.tick), spoilages: of(book.spoilage) };
}

/** What a press needs not know of an order and of its cost, and what it needs not carry where codes are short. */
function trimmed(run: Run, withPictures: boolean): Run {
  const { snapshot } = run;
  if (!snapshot) return run;
  return {
    ...run,
    basis: null,
    snapshot: {
      ...snapshot,
      orders: snapshot.orders.map((order) => ({ ...order, notes: '' })),
      garments: snapshot.garments.map((garment) => ({ ...garment, price: null })),
      transfers: snapshot.transfers.map((transfer) => ({
        ...transfer,
        artwork: withPictures ? transfer.artwork : null,
      })),
      // What is alike lies side by side: it takes less room so. Where a copy lies is written on it.
      copies: snapshot.copies.toSorted((a, b) =>
        a.transfer === b.transfer ? a.number - b.number : a.transfer < b.transfer ? -1 : 1,
      ),
      placements: snapshot.placements.map((placement) => ({ ...placement, artwork: null })),
    },
  };
}

/**
 * A run to be handed over, with what Cut and Press need: its snapshot, the shop's recipes and equipment, what is ticked.
 * @param pictures of its artwork, by id; none where codes carry it
 * @returns `null` for a run that is not locked: it could still change
 */
export function handOverRun(
  book: Book,
  id: string,
  pictures: Readonly<Record<string, Picture>> | null,
  made: Instant,
): HandOver | null {
  const run = book.run[id];
  if (!run?.snapshot || run.state === 'draft') return null;
  const bench = benchBook(book, run);
  const { shop } = bench.settings;
  if (!shop) return null;
  const records = recordsOf(book, id);
  const fabrics = new Set(run.snapshot.orders.map(({ fabric }) => fabric));
  const recipes = Object.values(bench.recipe)
    .filter((recipe) =>
      recipe.kind === 'cure'
        ? recipe.by === shop.station.curer
        : recipe.peel === run.snapshot?.film.peel && fabrics.has(recipe.fabric),
    )
    .map((recipe) => ({ ...recipe, history: [] }));
  return {
    kind: 'run',
    run: {
      ...trimmed(run, pictures !== null),
      received: { made, recipes, station: shop.station, known: [] },
    },
    made,
    records,
    pictures: pictures ?? {},
  };
}

/** What was ticked here on a run, to be handed back: all but what the other device had already. */
export function handBackTicks(book: Book, id: string, made: Instant): HandOver | null {
  const run = book.run[id];
  if (!run?.snapshot) return null;
  const known = new Set(run.received?.known);
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
