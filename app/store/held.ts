import { create } from 'zustand';
import { filmEdits } from '../../src/editing';
import {
  type LaidCopy,
  type LaidRun,
  type Refusal,
  refusals,
  snap,
  turnedInPlace,
  withCopies,
} from '../../src/layout';
import { type Angle, type Micrometres, um } from '../../src/units';
import { wordsNow } from '../words';
import { stopPlanning } from './planning';
import { laidNow, waysNow } from './selectors';
import { act, mayWrite } from './shop';
import { notify } from './view';

/** Copies in the hand: where they would lie if they were let go, and why they may not. Lives while they are held. */
export interface Held {
  /** The one under the pointer first. */
  readonly copies: readonly LaidCopy[];
  readonly refusals: readonly Refusal[];
  /** The run as it would be. */
  readonly run: LaidRun;
}

export const useHeld = create<{ readonly held: Held | null }>(() => ({ held: null }));

/** Takes copies into the hand, the first by its corner; no layout is forced under it meanwhile. */
export function hold(ids: readonly string[]): boolean {
  const run = laidNow();
  const copies = ids.flatMap((id) => run?.copies.filter((copy) => copy.id === id && !copy.fixed) ?? []);
  if (!run || copies.length !== ids.length || copies.length === 0 || !mayWrite()) return false;
  stopPlanning();
  useHeld.setState({ held: { copies, refusals: [], run } });
  return true;
}

/** Carries the held copies so that the first comes to a place, drawn to what is within reach of it. */
export function carryTo(x: number, y: number, reach: Micrometres): void {
  const run = laidNow();
  const { held } = useHeld.getState();
  const [first] = held?.copies ?? [];
  if (!run || !held || !first) return;
  const ids = new Set(held.copies.map(({ id }) => id));
  const around = { ...run, copies: run.copies.filter((copy) => !ids.has(copy.id)) };
  const place = snap(around, { ...first, x: um(x), y: um(y) }, reach);
  const [byX, byY] = [place.x - first.x, place.y - first.y];
  const copies = held.copies.map((copy) => ({ ...copy, x: um(copy.x + byX), y: um(copy.y + byY) }));
  const next = withCopies(run, copies);
  useHeld.setState({ held: { copies, refusals: refusals(next, copies), run: next } });
}

/** Turns the one copy in the hand about the middle of its image, as it lay when it was taken. */
export function turnHeld(angle: Angle): void {
  const run = laidNow();
  const { held } = useHeld.getState();
  const lying = run?.copies.find(({ id }) => id === held?.copies[0]?.id);
  if (!run || !held || !lying) return;
  const copies = [turnedInPlace(lying, angle)];
  const next = withCopies(run, copies);
  useHeld.setState({ held: { copies, refusals: refusals(next, copies), run: next } });
}

export const letGo = (): void => useHeld.setState({ held: null });

/** Puts the held copies down where they are, or says why not and leaves them where they lay. */
export function drop(): void {
  const { held } = useHeld.getState();
  letGo();
  if (held) lay(held.copies, held.refusals);
}

function lay(copies: readonly LaidCopy[], refused: readonly Refusal[]): void {
  const run = laidNow();
  const [first] = refused;
  const [copy] = copies;
  if (!run || !copy) return;
  if (first) {
    const name = `${copy.order.code} ${copy.number}`;
    notify('care', wordsNow().film.refused(first, name, copies.length, waysNow()));
    return;
  }
  act(
    filmEdits.setPlaces(
      run.id,
      copies.map(({ id, x, y, angle, pinned }) => [id, { x, y, angle, pinned }]),
    ),
  );
}

/** Moves or turns copies in one go, as keys and fields do; says why not, if they may not lie so. */
export function move(ids: readonly string[], change: (copy: LaidCopy) => LaidCopy): void {
  const run = laidNow();
  const copies = run?.copies.filter((copy) => ids.includes(copy.id) && !copy.fixed) ?? [];
  if (!run || copies.length === 0 || !mayWrite()) return;
  stopPlanning();
  const moved = copies.map(change);
  lay(moved, refusals(withCopies(run, moved), moved));
}
