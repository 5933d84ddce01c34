import { um } from '../units';
import { type Part, soonestAllowed } from './completion';
import { type LyingCopy, moveTo, placedOf } from './lying';
import { nearerPlaces } from './nearer-place';
import { apartFor, bySpans, type FilmPart, stretchesOf } from './parts';
import type { Placed, Problem } from './problem';
import { type Move, reachOf, SoonestLayout } from './soonest-layout';

/** Places nearer to the front that are asked about for a copy. */
const MOST_TRIED = 12;
/** Rounds of exchanging copies, parts and free film: each makes room for the others. */
const ROUNDS = 3;

/** Copies of one footprint exchanged, so that the soonest lie first. */
function exchanged(problem: Problem, copies: readonly LyingCopy[]): LyingCopy[] {
  const groups = new Map<string, number[]>();
  copies.forEach(({ fixed, width, length }, index) => {
    if (fixed) return;
    const key = `${width} ${length}`;
    const own = groups.get(key);
    if (own) own.push(index);
    else groups.set(key, [index]);
  });
  const next = [...copies];
  for (const group of groups.values()) {
    const own = group.flatMap((index) => copies[index] ?? []);
    // Sorting keeps copies of one rank in the order in which they lie.
    const places = own
      .map((copy, at) => ({ copy, index: group[at] ?? 0 }))
      .sort((a, b) => reachOf(problem, a.copy) - reachOf(problem, b.copy) || a.copy.x - b.copy.x);
    const soonest = places.toSorted((a, b) => a.copy.rank - b.copy.rank);
    soonest.forEach(({ copy, index }, at) => {
      const place = places[at]?.copy ?? copy;
      next[index] = moveTo(copy, { x: place.x, y: place.y, sheet: place.sheet });
    });
  }
  return next;
}

/** Parts laid one behind the other in another order, from where the first of them began. */
function shifted(
  copies: readonly LyingCopy[],
  parts: readonly FilmPart[],
  order: readonly number[],
  apart: number,
): LyingCopy[] {
  const next = [...copies];
  let at = parts[0]?.from ?? 0;
  for (const index of order) {
    const part = parts[index];
    if (!part) continue;
    for (const own of part.copies) {
      const copy = copies[own];
      if (copy) next[own] = moveTo(copy, { y: um(copy.y + at - part.from) });
    }
    at += part.to - part.from + apart;
  }
  return next;
}

const isAsItLies = (order: readonly number[]): boolean => order.every((part, index) => part === index);

const asParts = (parts: readonly FilmPart[], copies: readonly LyingCopy[], apart: number): Part[] =>
  parts.map(({ copies: own, from, to }) => ({
    length: to - from + apart,
    ranks: new Set(own.flatMap((index) => copies[index]?.rank ?? [])),
  }));

/** Parts of a roll change places, or whole spans do where finer parts would ask for more knife lines. */
function orderParts(problem: Problem, layout: SoonestLayout): boolean {
  const { film, gap } = problem;
  if (film.kind === 'sheet') return orderSheets(layout);
  const apart = apartFor(film, gap);
  let better = false;
  for (const fine of stretchesOf(layout.copies, apart, film.noPrint)) {
    const { copies } = layout;
    const tried = [fine, bySpans(fine, layout.lines ?? [])].map((parts) => {
      const inOrder = (order: readonly number[]) => shifted(copies, parts, order, apart);
      const order = soonestAllowed(asParts(parts, copies, apart), (each) => layout.mayBe(inOrder(each)));
      return isAsItLies(order) ? copies : inOrder(order);
    });
    for (const each of tried) better = layout.take(each) || better;
  }
  return better;
}

/** Whole sheets change places; the last stays, since what it leaves clean can be cut off and kept. */
function orderSheets(layout: SoonestLayout): boolean {
  const { copies } = layout;
  const last = copies.reduce((most, { sheet }) => Math.max(most, sheet), 0);
  const held = new Set(copies.flatMap(({ fixed, sheet }) => (fixed ? [sheet] : [])));
  const sheets = [...new Set(copies.map(({ sheet }) => sheet))]
    .filter((sheet) => sheet !== last && !held.has(sheet))
    .sort((a, b) => a - b);
  const parts = sheets.map((sheet) => ({
    length: 1,
    ranks: new Set(copies.flatMap((copy) => (copy.sheet === sheet ? [copy.rank] : []))),
  }));
  const inOrder = (order: readonly number[]) => {
    const goesTo = new Map(order.map((from, to) => [sheets[from], sheets[to]]));
    return copies.map((copy) => moveTo(copy, { sheet: goesTo.get(copy.sheet) ?? copy.sheet }));
  };
  const order = soonestAllowed(parts, (tried) => layout.mayBe(inOrder(tried)));
  return !isAsItLies(order) && layout.take(inOrder(order));
}

/** A way for a copy to lie nearer to the front: which copies lie elsewhere then, by their index. */
interface Nearer {
  readonly reach: number;
  readonly moves: () => readonly Move[];
}

/** The ways in which a copy lies nearer to the front, in free film or in the place of one that is due later, the nearest first. */
function withNearer(problem: Problem, copies: readonly LyingCopy[], index: number): Nearer[] {
  const own = copies[index];
  if (!own) return [];
  const reach = reachOf(problem, own);
  const free = nearerPlaces(problem, copies, index, MOST_TRIED).map((place) => ({
    reach: reachOf(problem, place),
    moves: (): Move[] => [[index, place]],
  }));
  const { x, y, sheet, length, rank } = own;
  const exchanges: Nearer[] = [];
  for (const [at, other] of copies.entries()) {
    if (other.fixed || other.rank <= rank) continue;
    const reached = reachOf(problem, { sheet: other.sheet, y: other.y, length });
    if (reached >= reach) continue;
    exchanges.push({
      reach: reached,
      moves: () => [
        [index, moveTo(own, { x: other.x, y: other.y, sheet: other.sheet })],
        [at, moveTo(other, { x, y, sheet })],
      ],
    });
  }
  return [...free, ...exchanges].sort((a, b) => a.reach - b.reach).slice(0, MOST_TRIED);
}

/** Copies after the first moves that they may make; `null` if they may make none. */
function firstSound(
  layout: SoonestLayout,
  copies: readonly LyingCopy[],
  ways: readonly Nearer[],
): readonly LyingCopy[] | null {
  for (const { moves } of ways) {
    const next = layout.afterMoves(copies, moves());
    if (next) return next;
  }
  return null;
}

/** The copies of a rank that reach furthest, moved nearer to the front; `null` if one of them finds no place. */
function pulled(problem: Problem, layout: SoonestLayout, rank: number): readonly LyingCopy[] | null {
  let { copies } = layout;
  const reach = (copy: LyingCopy) => (copy.rank === rank && !copy.fixed ? reachOf(problem, copy) : 0);
  const far = copies.reduce((most, copy) => Math.max(most, reach(copy)), 0);
  for (const index of copies.keys()) {
    const copy = copies[index];
    if (!copy || far === 0 || reach(copy) < far) continue;
    if (!layout.mayLook()) return null;
    const nearer = firstSound(layout, copies, withNearer(problem, copies, index));
    if (!nearer) return null;
    copies = nearer;
  }
  return copies;
}

/** The last copies of each order move nearer to the front, as long as the order is complete sooner by it. */
function pullForward(problem: Problem, layout: SoonestLayout): boolean {
  let better = false;
  const ranks = [...new Set(layout.copies.flatMap(({ rank, fixed }) => (fixed ? [] : [rank])))];
  for (const rank of ranks.sort((a, b) => a - b)) {
    let took = true;
    while (took) {
      const next = pulled(problem, layout, rank);
      took = next !== null && layout.takeSound(next);
      better ||= took;
    }
  }
  return better;
}

/** Sheets numbered anew without those that nothing lies on any more. */
function withoutEmpty({ film, pinned }: Problem, copies: readonly LyingCopy[]): readonly LyingCopy[] {
  if (film.kind === 'roll' || film.printed > 0 || pinned.length > 0) return copies;
  const used = [...new Set(copies.map(({ sheet }) => sheet))].sort((a, b) => a - b);
  return copies.map((copy) => moveTo(copy, { sheet: used.indexOf(copy.sheet) }));
}

/**
 * Puts the copies of the soonest ranks as near to the leading edge as they go where that costs no film: copies of one footprint exchange
 * their places, parts of the film that nothing joins change theirs, and what fits free film nearer to the front moves there. The soonest
 * rank comes first, whatever that is to later ones. No layout gets longer, no knife line is added, no sheet, and pinned copies stay.
 * @param placed the pinned copies first, as in a plan
 */
export function soonestFirst(problem: Problem, placed: readonly Placed[]): readonly Placed[] {
  const ranks = new Set(placed.slice(problem.pinned.length).map(({ piece }) => problem.pieces[piece]?.rank));
  if (ranks.size === 0 || (ranks.size === 1 && problem.pinned.length === 0)) return placed;
  const layout = new SoonestLayout(problem, placed);
  for (let round = 0; round < ROUNDS; round += 1) {
    const found = [
      layout.take(exchanged(problem, layout.copies)),
      orderParts(problem, layout),
      pullForward(problem, layout),
    ];
    if (!found.includes(true)) break;
  }
  return withoutEmpty(problem, layout.copies).map(placedOf);
}
