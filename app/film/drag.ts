import { create } from 'zustand';
import { setPlaces } from '../../src/editing';
import { type LaidCopy, type LaidRun, type Refusal, refusals, snap, withCopy } from '../../src/layout';
import { type Micrometres, um } from '../../src/units';
import { stopPlanning } from '../store/planning';
import { laidDraft, waysNow } from '../store/selectors';
import { commit, mayWrite, useShop } from '../store/shop';
import { notify } from '../store/view';
import { words } from '../words';

/** A copy in the hand: where it would lie if it were let go, and why it may not. Lives while it is held. */
export interface Held {
  readonly copy: LaidCopy;
  readonly refusals: readonly Refusal[];
  /** The run as it would be. */
  readonly run: LaidRun;
}

export const useHeld = create<{ readonly held: Held | null }>(() => ({ held: null }));

/** Takes a copy into the hand; no layout is forced under it meanwhile. */
export function hold(id: string): boolean {
  const run = laidDraft(useShop.getState().book);
  const copy = run?.copies.find((other) => other.id === id);
  if (!run || !copy || !mayWrite()) return false;
  stopPlanning();
  useHeld.setState({ held: { copy, refusals: [], run } });
  return true;
}

/** Carries the held copy to a place, drawn to what is within reach of it. */
export function carryTo(x: number, y: number, reach: Micrometres): void {
  const run = laidDraft(useShop.getState().book);
  const { held } = useHeld.getState();
  if (!run || !held) return;
  const free = { ...held.copy, x: um(x), y: um(y) };
  const copy = { ...free, ...snap(run, free, reach) };
  const next = withCopy(run, copy);
  useHeld.setState({ held: { copy, refusals: refusals(next, copy), run: next } });
}

export const letGo = (): void => useHeld.setState({ held: null });

/** Puts the held copy down where it is, or says why not and leaves it where it lay. */
export function drop(): void {
  const { held } = useHeld.getState();
  letGo();
  if (held) lay(held.copy, held.refusals);
}

function lay(copy: LaidCopy, refused: readonly Refusal[]): void {
  const run = laidDraft(useShop.getState().book);
  const [first] = refused;
  if (first) {
    notify('care', words.film.refused(first, `${copy.order.code} ${copy.number}`, waysNow()));
    return;
  }
  if (!run) return;
  const { x, y, turned, pinned } = copy;
  commit((book) => setPlaces(book, [[copy.id, { run: run.id, x, y, turned, pinned }]]));
}

/** Moves or turns a copy in one go, as keys and fields do; says why not, if it may not lie so. */
export function move(id: string, change: (copy: LaidCopy) => LaidCopy): void {
  const run = laidDraft(useShop.getState().book);
  const copy = run?.copies.find((other) => other.id === id);
  if (!run || !copy || !mayWrite()) return;
  stopPlanning();
  const moved = change(copy);
  lay(moved, refusals(withCopy(run, moved), moved));
}

/** A copy turned by a quarter about its middle. */
export function quarterTurn(copy: LaidCopy): LaidCopy {
  const x = um(copy.x + (copy.width - copy.length) / 2);
  const y = um(copy.y + (copy.length - copy.width) / 2);
  return { ...copy, x, y, width: copy.length, length: copy.width, turned: !copy.turned };
}
