import { areaTaken, type LaidRun, sheetAt, takenOffRoll } from '../../layout';
import {
  type Costs,
  type Garment,
  garmentsByOrder,
  ordersPrinted,
  type RunUse,
  type RunView,
  type Station,
  type Transfer,
} from '../../model';
import { printerFor, workOf } from '../../pressing';
import { asMinor, asSeconds, countBy, type Minor } from '../../units';
import type { CoverageOf } from '..';
import type { CostedBook, CostedOrder } from './costed';
import { newDesigns } from './designs';
import { type TimeTaken, timeTaken } from './time-taken';

/** Work is the same at any time of day. */
const ANY_DAY = new Date(0);

/** What a garment costs: its own price, its style's, or any garment's. */
export const garmentPrice = (
  { style, price }: Pick<Garment, 'style' | 'price'>,
  costs: Costs,
): Minor | null =>
  price ??
  costs.blanks.find((blank) => blank.style.toLowerCase() === style.trim().toLowerCase())?.price ??
  costs.blank;

function transferUse(
  own: readonly LaidRun['copies'][number][],
  transfer: Transfer | undefined,
  coverageOf: CoverageOf,
  time: TimeTaken | null,
): RunUse['transfers'][number] | null {
  const [first] = own;
  if (!first) return null;
  // A transfer that was resized after some of it was printed has copies of two sizes.
  const footprint = own.reduce((sum, copy) => sum + areaTaken(copy) / 1e6, 0) / own.length;
  const printed = transfer ? coverageOf(transfer) : null;
  const hands = time?.hands.get(first.transfer.id);
  const all = { colour: footprint, white: footprint };
  return {
    id: first.transfer.id,
    order: first.order.id,
    copies: own.length,
    footprint,
    ...(printed ?? all),
    assumed: printed ? null : first.transfer.artwork === null ? 'no-artwork' : 'not-checked',
    seconds: {
      printing: asSeconds(hands?.printing ?? 0),
      cutting: asSeconds(hands?.cutting ?? 0),
      pressing: asSeconds(hands?.pressing ?? 0),
      packing: asSeconds(hands?.packing ?? 0),
    },
    pressed: asSeconds(time?.pressed.get(first.transfer.id) ?? 0),
  };
}

/** The order of a copy, also of one that has left the run. */
const orderOf = ({ copy, transfer }: RunView, id: string): string | undefined =>
  transfer[copy[id]?.transfer ?? '']?.order;

/** An order's garments by their price, and those of it that were spoiled on a run. */
function orderUse(
  book: CostedBook,
  view: RunView,
  order: CostedOrder,
  here: number,
  { copies, garments, costs }: { copies: number; garments: readonly Garment[]; costs: Costs },
): RunUse['orders'][number] {
  const byPrice = new Map<Minor | null, number>();
  for (const garment of order.wants === 'garments' ? garments : []) {
    const price = garmentPrice(garment, costs);
    byPrice.set(price, (byPrice.get(price) ?? 0) + garment.count);
  }
  const spoiled = Object.values(book.spoilage).filter(
    (own) => own.run === view.run.id && own.garment && orderOf(view, own.copy) === order.id,
  );
  const priced = [...byPrice].filter((each): each is [Minor, number] => each[0] !== null);
  const count = priced.reduce((sum, [, own]) => sum + own, 0);
  const mean = priced.reduce((sum, [price, own]) => sum + price * own, 0) / count;
  return {
    id: order.id,
    share: Math.min(1, here / Math.max(1, copies, here)),
    newDesigns: newDesigns(book, order),
    garments: [...byPrice].map(([price, own]) => ({ count: own, price })),
    replaced: spoiled.length,
    replacement: count > 0 ? asMinor(mean) : costs.blank,
    supplied: order.supplied,
  };
}

/**
 * What a laid run takes: film, printed areas, time of hands and machines, garments.
 * @param coverageOf what the artwork prints; where it is not known, white and colour are taken to cover all of the footprint
 */
export function runUse(
  book: CostedBook,
  run: LaidRun,
  { coverageOf, station, costs }: { coverageOf: CoverageOf; station: Station; costs: Costs },
): RunUse {
  const { film, view } = run;
  const byTransfer = new Map<string, LaidRun['copies'][number][]>();
  const transferOf = new Map<string, string>();
  for (const copy of run.copies) {
    const own = byTransfer.get(copy.transfer.id);
    if (own) own.push(copy);
    else byTransfer.set(copy.transfer.id, [copy]);
    transferOf.set(copy.id, copy.transfer.id);
  }
  const work = workOf(run, station, ANY_DAY);
  const time = work.ok
    ? timeTaken(work.value, station, printerFor(run, station), (copy) => transferOf.get(copy))
    : null;
  const here = countBy(run.copies, (copy): string => copy.order.id);
  const counts = countBy(
    Object.values(book.copy),
    ({ transfer }): string | undefined => book.transfer[transfer]?.order,
  );
  const garments = garmentsByOrder(book);
  return {
    film:
      film.kind === 'roll'
        ? { kind: 'roll', length: takenOffRoll(run), price: film.price }
        : { kind: 'sheets', sheets: sheetAt(film, run.lengthUsed), price: film.price },
    transfers: [...byTransfer].flatMap(
      ([id, own]) => transferUse(own, view.transfer[id], coverageOf, time) ?? [],
    ),
    machines: time?.machines ?? null,
    orders: [...here].flatMap(([id, own]) => {
      // What is spoiled and replaced, and what is priced, is told by the order as it is.
      const order = book.order[id] ?? ordersPrinted(view.run)[id];
      if (!order) return [];
      return orderUse(book, view, order, own, {
        copies: counts.get(id) ?? 0,
        garments: garments.get(id) ?? [],
        costs,
      });
    }),
  };
}
