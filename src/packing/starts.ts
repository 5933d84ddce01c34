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

/** Sorted orders to begin with, each piece's copies in one run. */
export function startSequences(strip: Strip, count: Int32Array): Sequence[] {
  const pieces = [...count.keys()].filter((piece) => (count[piece] as number) > 0);
  return keys.map(([first, second]) => {
    const by = (key: Key, piece: number) => key(strip.across[piece] as number, strip.along[piece] as number);
    const piece = pieces.toSorted(
      (a, b) => by(first, b) - by(first, a) || by(second, b) - by(second, a) || a - b,
    );
    return { piece, count: piece.map((index) => count[index] as number) };
  });
}
