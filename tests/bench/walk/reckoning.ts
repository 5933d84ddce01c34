import type { Stored, StoredCopy, StoredFilm, StoredOrder, StoredRun, StoredTransfer } from './stored';

/** What a book says, worked out from its records alone: nothing here is shared with the app. */

const printedStates = ['printed', 'cured', 'pressed', 'closed'];

const ofId = <Record extends { readonly id: string }>(all: readonly Record[], id: string | null) =>
  all.find((each) => each.id === id);

export const copiesOf = ({ copy }: Stored, transfer: string): readonly StoredCopy[] =>
  copy.filter((each) => each.transfer === transfer);

export const transfersOf = ({ transfer }: Stored, order: string): readonly StoredTransfer[] =>
  transfer.filter((each) => each.order === order);

export const isPlaced = ({ state }: StoredCopy): boolean => state === 'placed';

/** Whether a copy is on film that went through the printer. */
function isPrinted(stored: Stored, copy: StoredCopy): boolean {
  const run = ofId(stored.run, copy.run);
  if (copy.state === 'shelved') return true;
  if (!run || copy.place === null) return false;
  return printedStates.includes(run.state) || copy.place.y < (run.printed?.to ?? 0);
}

/** How far an order is, in the words of the Orders room. */
export function stateOf(stored: Stored, order: StoredOrder): string {
  if (order.progress !== 'open') return order.progress;
  const own = transfersOf(stored, order.id).flatMap(({ id }) => copiesOf(stored, id));
  const wanted = own.filter(({ role }) => role !== 'filler');
  const printed = wanted.filter((copy) => isPrinted(stored, copy));
  if (wanted.length > 0 && printed.length === wanted.length) return 'printed';
  if (printed.length > 0) return 'part done';
  if (own.some(isPlaced)) return 'in a run';
  return order.awaits.proof || order.awaits.blanks ? 'waiting' : 'ready';
}

/** What is left of a film by its entries. */
export const leftOf = ({ entry }: Stored, film: string): number =>
  entry.filter(({ item }) => item === film).reduce((sum, { amount }) => sum + amount, 0);

/** A copy's box on the film, in micrometres. */
interface Box {
  readonly copy: StoredCopy;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
}

/** A run's film, as it was locked or as it is. */
export const filmOf = (stored: Stored, run: StoredRun): StoredFilm | undefined =>
  run.snapshot?.film ?? ofId(stored.film, run.film);

/** Every copy that lies on a run's film, by what was embedded when it was printed or locked, else by what the book says now. */
export function boxesOf(stored: Stored, run: StoredRun): readonly Box[] {
  const embedded = [...(run.printed?.as ?? []), ...(run.snapshot ? [run.snapshot] : [])];
  // A copy is as large as its transfer was when it was embedded: what was printed before may have had another size.
  const seen = new Map(
    embedded.flatMap(({ copies, transfers }) =>
      copies.map((copy) => [copy.id, { copy, size: ofId(transfers, copy.transfer) }] as const),
    ),
  );
  const loose = stored.copy.filter((copy) => copy.run === run.id && !seen.has(copy.id));
  return [...seen.values(), ...loose.map((copy) => ({ copy, size: undefined }))].flatMap((each) => {
    const { copy } = each;
    const size = each.size ?? ofId(stored.transfer, copy.transfer);
    if (copy.place === null || !size) return [];
    const { x, y, angle } = copy.place;
    const [width, length] = angle % 1800 === 900 ? [size.height, size.width] : [size.width, size.height];
    return [{ copy, x, y, width, length }];
  });
}

/** Whether a run that is sent to print prints a copy: it has only what was embedded of it then. */
const prints = (run: StoredRun, { id }: StoredCopy): boolean =>
  [...(run.printed?.as ?? []), ...(run.snapshot ? [run.snapshot] : [])].some(({ copies }) =>
    copies.some((copy) => copy.id === id),
  );

/** What is wrong with how copies lie: beside the film, or nearer to each other than the gap. */
function clashes(stored: Stored, run: StoredRun): string[] {
  const film = filmOf(stored, run);
  const boxes = boxesOf(stored, run);
  if (!film) return [`${run.name} has no film`];
  const beside = boxes
    .filter(({ x, width }) => x < film.margins.left || x + width > film.width - film.margins.right)
    .map(({ copy }) => `${run.name}: copy ${copy.number} lies beside the film`);
  // What is printed keeps the gap that it was printed with, whatever the film's is now.
  const gapOf = (a: Box, b: Box) => (Math.max(a.y, b.y) < (run.printed?.to ?? 0) ? 0 : film.gap);
  const close = boxes.flatMap((a, at) =>
    boxes
      .slice(at + 1)
      .filter(
        (b) =>
          a.x < b.x + b.width + gapOf(a, b) &&
          b.x < a.x + a.width + gapOf(a, b) &&
          a.y < b.y + b.length + gapOf(a, b) &&
          b.y < a.y + a.length + gapOf(a, b),
      )
      .map((b) => `${run.name}: copies ${a.copy.number} and ${b.copy.number} are too close`),
  );
  return [...beside, ...close];
}

/** References that lead nowhere, sums that do not agree, and copies that no act of the app can move on. */
export function unsound(stored: Stored): string[] {
  const runs = new Map(stored.run.map((run) => [run.id, run]));
  const transfers = new Set(stored.transfer.map(({ id }) => id));
  const orders = new Map(stored.order.map((order) => [order.id, order]));
  return [
    ...stored.transfer
      .filter(({ order }) => !orders.has(order))
      .map(({ name }) => `transfer ${name} is of no order`),
    ...stored.copy.flatMap((copy) => {
      const run = copy.run === null ? undefined : runs.get(copy.run);
      if (!transfers.has(copy.transfer)) return [`copy ${copy.id} is of no transfer`];
      if (copy.run !== null && !run) return [`copy ${copy.id} is of a run that is gone`];
      if (copy.state === 'waiting' && run && run.state !== 'draft')
        return [`copy ${copy.id} waits for a run that is sent to print`];
      if (copy.state === 'placed' && run && run.state !== 'draft' && !prints(run, copy))
        return [`copy ${copy.id} lies on ${run.name}, which does not print it`];
      return [];
    }),
    ...stored.film.flatMap((film) => {
      const kept = film.kind === 'roll' ? film.lengthLeft : film.sheetsLeft;
      const sum = leftOf(stored, film.id);
      return kept === sum ? [] : [`${film.name}: the film says ${kept}, its entries ${sum}`];
    }),
    ...stored.run
      .filter(({ state }) => state === 'draft' || state === 'locked')
      .flatMap((run) => clashes(stored, run)),
  ];
}
