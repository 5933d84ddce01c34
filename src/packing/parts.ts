import type { FilmShape, Span } from './problem';
import type { Rect } from './rules';

/** Copies that may be moved along a roll as one: film free over its whole width lies before and behind them. */
export interface FilmPart {
  /** Their indices. */
  readonly copies: readonly number[];
  readonly from: number;
  readonly to: number;
}

/**
 * The stretches of a roll whose parts may change places, each as its parts from the leading edge on. Copies that stay where they are, and film
 * that may not be used, part one stretch from the next.
 * @param apart film that is free between two parts
 */
export function stretchesOf(
  copies: readonly (Rect & { readonly fixed: boolean })[],
  apart: number,
  noPrint: readonly Span[],
): FilmPart[][] {
  const sorted = [...copies.keys()].sort((a, b) => (copies[a]?.y ?? 0) - (copies[b]?.y ?? 0));
  const parts: { copies: number[]; from: number; to: number; fixed: boolean }[] = [];
  for (const index of sorted) {
    const copy = copies[index];
    if (!copy) continue;
    const { y, length, fixed } = copy;
    const last = parts.at(-1);
    if (last && y < last.to + apart) {
      last.copies.push(index);
      last.to = Math.max(last.to, y + length);
      last.fixed ||= fixed;
    } else parts.push({ copies: [index], from: y, to: y + length, fixed });
  }
  const stretches: FilmPart[][] = [[]];
  let reached = 0;
  for (const part of parts) {
    const isHindered = noPrint.some(({ from, to }) => from < part.from && to > reached);
    if (part.fixed || isHindered) stretches.push([]);
    if (!part.fixed) stretches.at(-1)?.push(part);
    reached = part.to;
  }
  return stretches.filter((stretch) => stretch.length > 1);
}

/** Parts joined to those of one span each; a part lies in one span. */
export function bySpans(parts: readonly FilmPart[], spans: readonly Span[]): FilmPart[] {
  const joined = new Map<number, { copies: number[]; from: number; to: number }>();
  for (const { copies, from, to } of parts) {
    const span = spans.findIndex((own) => from < own.to);
    const own = joined.get(span);
    if (own) {
      own.copies.push(...copies);
      own.to = to;
    } else joined.set(span, { copies: [...copies], from, to });
  }
  return [...joined.values()];
}

/** Free film that a knife line between two copies takes. */
export const apartFor = (film: FilmShape, gap: number): number =>
  film.kind === 'roll' && film.spanMax !== null ? gap / 2 + Math.max(gap / 2, film.cutBlank) : gap;
