import { layRun } from '../layout';
import {
  asId,
  asInstant,
  type Book,
  type Curer,
  type CureValues,
  embeddedIn,
  type Fabric,
  type Id,
  type Instant,
  isPrinted,
  type LockedRun,
  type Origin,
  type Peel,
  type PressValues,
  type Run,
  runStates,
  type Settings,
  type Spoilage,
  type Tick,
} from '../model';
import {
  cureKey,
  cureRecipe,
  type JobKind,
  jobsOf,
  orderOfPack,
  packKey,
  pressKey,
  pressRecipe,
  ticked,
} from '../pressing';
import { takeBackClosing } from './closing';
import { bring } from './places';
import { finishRun, moveTo, reopenRun } from './runs';
import { type BookDraft, bookSoFar, type EditContext } from './step';

/** What a recipe was until now, behind what it was before; nothing is added where its values stay. */
function historyWith<Values>(
  history: readonly { until: Instant; values: Values; origin: Origin }[],
  { values, origin }: { values: Values; origin: Origin },
  next: Values,
  until: Instant,
) {
  const isSame = JSON.stringify(values) === JSON.stringify(next);
  return isSame ? [...history] : [...history, { until, values, origin }];
}

/** Sets a press recipe; what it was goes into its history. */
export function setPress(
  draft: BookDraft,
  { peel, fabric }: { peel: Peel; fabric: Fabric },
  set: { values: PressValues; origin: Origin; notes: string },
  { now }: EditContext,
): void {
  const key = pressKey(peel, fabric);
  const before = pressRecipe(draft, peel, fabric);
  const known = draft.recipe[key];
  const history = historyWith(known?.kind === 'press' ? known.history : [], before, set.values, now);
  draft.recipe[key] = {
    id: asId(key),
    kind: 'press',
    peel,
    fabric,
    ...set,
    history,
    changed: now,
  };
}

/** Sets a curing recipe; what it was goes into its history. */
export function setCure(
  draft: BookDraft,
  by: Curer,
  set: { values: CureValues; origin: Origin; notes: string },
  { now }: EditContext,
): void {
  const key = cureKey(by);
  const before = cureRecipe(draft, by);
  const known = draft.recipe[key];
  const history = historyWith(known?.kind === 'cure' ? known.history : [], before, set.values, now);
  draft.recipe[key] = { id: asId(key), kind: 'cure', by, ...set, history, changed: now };
}

export function editStation(draft: BookDraft, fields: Partial<Settings['station']>): void {
  const { shop } = draft.settings;
  if (shop) Object.assign(shop.station, fields);
}

/** The state that a run has come to when all jobs of some kinds are done. */
const comesTo: readonly { readonly state: LockedRun['state']; readonly kinds: readonly JobKind[] }[] = [
  { state: 'printed', kinds: ['print'] },
  { state: 'cured', kinds: ['cure', 'line'] },
  { state: 'pressed', kinds: ['press', 'again'] },
];

const rank = (state: Run['state']): number => runStates.indexOf(state);

/** Now, or just behind what was ticked of the same subject last: another device's clock may be ahead. */
function instantAfter(now: Instant, before: readonly Tick[]): Instant {
  const last = Math.max(...before.map(({ at }) => Date.parse(at)));
  return Date.parse(now) > last ? now : asInstant(new Date(last + 1));
}

/** Ticks a job, or takes its tick back, and brings the run to the state that its ticks tell. */
export function tickJob(
  draft: BookDraft,
  id: Id<'run'>,
  subject: string,
  done: boolean,
  context: EditContext,
): void {
  const tick = context.newId<'tick'>();
  const before = ticksOf(bookSoFar(draft), id).filter((other) => other.subject === subject);
  const at = instantAfter(context.now, before);
  draft.tick[tick] = { id: tick, run: id, subject, done, at, changed: context.now };
  if (done) followTicks(draft, id, context);
  followPacking(draft, id, subject);
}

/** Brings a run on to the state that all its ticks tell, dated by them; never back. */
export function followTicks(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  if (!run || run.state === 'draft' || run.state === 'closed') return;
  const book = bookSoFar(draft);
  const laid = book.run[id] && layRun(book, book.run[id]);
  if (!laid) return;
  const done = ticked(ticksOf(book, id));
  for (const { state, kinds } of comesTo) {
    const jobs = jobsOf(laid).filter(({ kind }) => kinds.includes(kind));
    if (jobs.length === 0 || !jobs.every(({ key }) => done.has(key))) break;
    if (rank(run.state) >= rank(state)) continue;
    const now = jobs
      .map(({ key }) => done.get(key) ?? '')
      .sort()
      .at(-1) as Instant;
    // The film of a received run is another shop's, or another station's of this one.
    if (state === 'printed' && !run.received) finishRun(draft, id, { ...context, now });
    else moveTo(run, state, now);
  }
}

/** Whether every copy of an order is ticked as packed, in whatever run it was printed, or came from the shelf. */
function isPacked(book: Book, order: string): boolean {
  const copies = Object.values(book.copy).filter(
    (copy) => copy.role === 'ordered' && book.transfer[copy.transfer]?.order === order,
  );
  const runs = new Set(copies.flatMap(({ run }) => run ?? []));
  const packed = new Set<string>([...runs].filter((run) => ticked(ticksOf(book, run)).has(packKey(order))));
  return (
    copies.some(({ state }) => state !== 'shelved') &&
    copies.every(({ state, run }) => state === 'shelved' || (run !== null && packed.has(run)))
  );
}

/** Makes an order packed when the last of it is ticked as packed, and open again when that is taken back; what was collected stays so. */
export function followPacking(draft: BookDraft, run: string, subject: string): void {
  const id = orderOfPack(subject);
  const order = id === null ? undefined : draft.order[id];
  if (id === null || !order || order.progress === 'collected') return;
  const book = bookSoFar(draft);
  if (isPacked(book, id)) order.progress = 'packed';
  else if (order.progress === 'packed' && !ticked(ticksOf(book, run)).has(subject)) order.progress = 'open';
}

/** All that was ticked on a run. */
export const ticksOf = (book: Pick<Book, 'tick'>, run: string): Tick[] =>
  Object.values(book.tick).filter((tick) => tick.run === run);

/** Brings a run that is on film one state on, as far as pressed: closing it takes figures, see `closeRun`. */
export function advanceRun(draft: BookDraft, id: string, { now }: EditContext): void {
  const run = draft.run[id];
  const next = run && runStates[rank(run.state) + 1];
  if (!run || run.state === 'draft' || run.state === 'locked') return;
  if (next && next !== 'draft' && next !== 'closed') moveTo(run, next, now);
}

/**
 * Brings a run that is on film one state back; from closed, its stock is back, from pressed, nothing of it is packed, and from printed,
 * its film is on the roll again.
 */
export function stepRunBack(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  if (!run || run.state === 'draft' || run.state === 'locked') return;
  const before = runStates[rank(run.state) - 1];
  if (run.state === 'pressed') {
    for (const { id: order } of embeddedIn(run).flatMap(({ orders }) => orders)) {
      const own = draft.order[order];
      if (own?.progress === 'packed') own.progress = 'open';
    }
  }
  if (run.state === 'printed') reopenRun(draft, id, context);
  else if (before && before !== 'draft') {
    if (run.state === 'closed') takeBackClosing(draft, id, context);
    moveTo(run, before, context.now);
  }
}

/**
 * Notes that a copy of a printed run was spoiled. It waits for a reprint; if its garment is spoiled too, the order waits for
 * another blank.
 */
export function spoilCopy(
  draft: BookDraft,
  fields: Pick<Spoilage, 'run' | 'copy' | 'stage' | 'garment' | 'reason'>,
  { newId, now }: EditContext,
): void {
  const run = draft.run[fields.run];
  if (!run || !isPrinted(run)) return;
  const isOn = embeddedIn(run).some(({ copies }) => copies.some(({ id }) => id === fields.copy));
  const isKnown = Object.values(draft.spoilage).some(
    (own) => own.run === fields.run && own.copy === fields.copy,
  );
  if (!isOn || isKnown) return;
  const id = newId<'spoilage'>();
  draft.spoilage[id] = { id, ...fields, changed: now };
  takeOutSpoiled(draft, fields);
}

/** A spoiled copy leaves its run, to be printed for another; a spoiled garment is waited for, and the order is not packed. */
export function takeOutSpoiled(
  draft: BookDraft,
  { run, copy: id, garment }: Pick<Spoilage, 'run' | 'copy' | 'garment'>,
): void {
  const copy = draft.copy[id];
  if (copy?.run !== run) return;
  bring(copy, { state: 'waiting', run: null, place: null });
  const order = draft.order[draft.transfer[copy.transfer]?.order ?? ''];
  if (!order) return;
  if (garment) order.awaits.blanks = true;
  if (order.progress === 'packed') order.progress = 'open';
}
