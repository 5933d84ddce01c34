import type { Sequence } from './sequence';
import type { Strip } from './strip';

type Key = (across: number, along: number) => number;

/** What copies are sorted by, largest first; ties are broken by the second key. */
const keys: readonly (readonly [Key, Key])[] = [
  [(w) => w, (_, h) => h],
  [(_, h) => h, (w) => w],
  [(w, h) => w * h, (w) => w],
  [(w, h) => w * h, (_, h) => h],
  [(w, h) => w + h, (w) => w],
  [(w, h) => Math.max(w, h), (w, h) => Math.min(w, h)],
  [(w, h) => Math.min(w, h), (w, h) => Math.max(w, h)],
  [(w, h) => Math.max(w, h), (w, h) => w * h],
  [(w, h) => w / h, (w, h) => w * h],
  [(w, h) => h / w, (w, h) => w * h],
];

/** Which way copies would rather lie. */
const asGiven = () => 0;
const wideAcross = (w: number, h: number) => (w < h ? 1 : 0);
const longAlong = (w: number, h: number) => (w > h ? 1 : 0);

/** Sorted orders to begin with, each piece's copies in one run. */
export function startSequences(strip: Strip, count: Int32Array): Sequence[] {
  const pieces = [...count.keys()].filter((piece) => (count[piece] as number) > 0);
  const anyTurns = pieces.some((piece) => strip.turns[piece] === 1);
  const ways = anyTurns ? [asGiven, wideAcross, longAlong] : [asGiven];
  return keys.flatMap(([first, second]) => {
    const by = (key: Key, piece: number) => key(strip.across[piece] as number, strip.along[piece] as number);
    const piece = pieces.toSorted(
      (a, b) => by(first, b) - by(first, a) || by(second, b) - by(second, a) || a - b,
    );
    const copies = piece.map((index) => count[index] as number);
    return ways.map((isTurned) => ({
      piece: [...piece],
      count: [...copies],
      turned: piece.map((index) => isTurned(strip.across[index] as number, strip.along[index] as number)),
    }));
  });
}
