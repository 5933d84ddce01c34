import { likeness, partsOf, withoutKind } from '../intake/likeness';
import { type Book, type Id, ordersByDue, type Transfer, transfersByOrder } from '../model';
import { compareEach } from '../units';

/** Names less alike than this are not taken for the same: common practice, no source. */
const ALIKE = 0.7;
/** Within an order that the file names by its number, less will do. */
const ALIKE_IN_ORDER = 0.35;
/** Fewer figures are a size or a version rather than the number of an order. */
const FEWEST_FIGURES = 3;
const MOST_LIKELY = 8;

/** What transfer an image file seems to be of. */
interface ArtworkMatch {
  /** `null` if none is like it, or several are equally. */
  readonly transfer: Id<'transfer'> | null;
  /** The transfers that are most like it, the likest first. */
  readonly likely: readonly Id<'transfer'>[];
}

interface Candidate {
  readonly transfer: Transfer;
  /** How like it is, then what tells equals apart, the weightiest first. */
  readonly rank: readonly number[];
  readonly isAlike: boolean;
}

const byRank = (a: Candidate, b: Candidate): number => compareEach(b.rank, a.rank);

/** The figures of an order's number: those that its name begins with. */
const numberOf = (name: string): string | null =>
  /^\D{0,4}(\d+)/.exec(name.trim())?.[1]?.replace(/^0+(?=.)/, '') ?? null;

/** Finds for a file what it is like among the transfers of all orders at work; each of these is taken apart once. */
function finder(book: Book, droppedOn: string | null): (fileName: string) => Candidate[] {
  const own = transfersByOrder(book);
  const orders = ordersByDue(book).map((order) => ({
    id: order.id,
    number: numberOf(order.name),
    words: new Set(partsOf(order.name).words),
    transfers: (own.get(order.id) ?? []).map((transfer) => ({ transfer, parts: partsOf(transfer.name) })),
  }));
  return (fileName) => {
    const { words, figures } = partsOf(withoutKind(fileName));
    const numbers = new Set(figures.filter(({ length }) => length >= FEWEST_FIGURES));
    const numbered = orders.filter(({ number }) => number !== null && numbers.has(number));
    const named = numbered.length === 1 ? numbered[0] : undefined;
    return (named ? [named] : orders)
      .flatMap((order) => {
        // The order may be named beside the transfer.
        const others = words.filter((word) => !order.words.has(word));
        return order.transfers.map(({ transfer, parts }): Candidate => {
          const figuresOnly = parts.words.length === 0 && words.length === 0;
          const sameFigures = parts.figures.join() === figures.filter((each) => each !== order.number).join();
          const like = figuresOnly
            ? Number(sameFigures)
            : Math.max(likeness(words, parts.words), likeness(others, parts.words));
          return {
            transfer,
            rank: [
              like,
              Number(sameFigures),
              Number(order.id === droppedOn),
              Number(transfer.artwork === null),
            ],
            isAlike: like >= (named ? ALIKE_IN_ORDER : ALIKE) || (named?.transfers.length ?? 0) === 1,
          };
        });
      })
      .sort(byRank);
  };
}

/**
 * Finds for each image file the transfer that its name is most like, over all orders at work: letters' case, accents, separators and
 * figures aside. A number in the name that belongs to one order alone means that order. Of names equally alike, that with the same
 * figures is meant, then one of the order the files were given to, then one without artwork; else none. No transfer is meant twice.
 */
export function matchArtwork(
  book: Book,
  fileNames: readonly string[],
  droppedOn: string | null,
): ArtworkMatch[] {
  const find = finder(book, droppedOn);
  const files = fileNames.map((name, at) => ({ at, candidates: find(name) }));
  const taken = new Set<string>();
  const matched = new Map<number, Id<'transfer'>>();
  const likest = [...files].sort((a, b) => {
    const [one, other] = [a.candidates[0], b.candidates[0]];
    return one && other ? byRank(one, other) : Number(one === undefined) - Number(other === undefined);
  });
  for (const { at, candidates } of likest) {
    const alike = candidates.filter(({ isAlike, transfer }) => isAlike && !taken.has(transfer.id));
    const [first, second] = alike;
    if (!first || (second && byRank(first, second) === 0)) continue;
    taken.add(first.transfer.id);
    matched.set(at, first.transfer.id);
  }
  return files.map(({ at, candidates }) => ({
    transfer: matched.get(at) ?? null,
    likely: candidates.slice(0, MOST_LIKELY).map(({ transfer }) => transfer.id),
  }));
}
