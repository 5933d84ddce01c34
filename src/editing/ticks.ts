import { layRun } from '../layout';
import { asInstant, type Book, type Id, type Instant, type LockedRun, type Tick } from '../model';
import { doneAt, type JobKind, orderOfPack, packKey, ticked, ticksOf, workInHand } from '../pressing';
import { rank, stepRunBack } from './bench';
import { finishRun, moveTo } from './runs';
import { type BookDraft, bookSoFar, type EditContext } from './step';

/** The state that a run has come to when all jobs of some kinds are done. */
const comesTo: readonly { readonly state: LockedRun['state']; readonly kinds: readonly JobKind[] }[] = [
  { state: 'printed', kinds: ['print'] },
  { state: 'cured', kinds: ['cure', 'line'] },
  { state: 'pressed', kinds: ['press', 'again'] },
];

/** Whether something is ticked or taken back, and the initials of who does it. */
export interface Ticking {
  readonly done: boolean;
  readonly by: string;
  /** On which machine each subject was done, where there are several of its kind. */
  readonly machines?: ReadonlyMap<string, string>;
}

/** Now, or just behind what was ticked of the same subjects last: another device's clock may be ahead. */
function instantAfter(now: Instant, before: readonly Tick[]): Instant {
  const last = Math.max(...before.map(({ at }) => Date.parse(at)));
  return Date.parse(now) > last ? now : asInstant(new Date(last + 1));
}

/**
 * Ticks jobs of a run at one instant, or takes their ticks back, and brings the run to the state that its ticks tell. One that is
 * taken back takes the run with it out of the states that it brought it to.
 */
export function tickJobs(
  draft: BookDraft,
  id: Id<'run'>,
  subjects: readonly string[],
  { done, by, machines }: Ticking,
  context: EditContext,
): void {
  const own = new Set(subjects);
  const before = ticksOf(bookSoFar(draft), id).filter(({ subject }) => own.has(subject));
  const at = instantAfter(context.now, before);
  for (const subject of own) {
    const tick = context.newId<'tick'>();
    const machine = machines?.get(subject) ?? null;
    draft.tick[tick] = { id: tick, run: id, subject, done, at, by, machine, changed: context.now };
  }
  if (done) followTicks(draft, id, context);
  else leaveStates(draft, id, new Set(ticked(before).values()), context);
  for (const subject of own) followPacking(draft, id, subject);
}

/**
 * The states that all its ticks tell of a run, each with its instant. What a job waited for is done with it; film that bears nothing
 * is waited for by nobody. A run of which nothing is pressed here is done with its last job.
 */
function statesTold(book: Book, id: string): { state: LockedRun['state']; at: Instant }[] {
  const run = book.run[id];
  const laid = run && layRun(book, run);
  const work = laid && workInHand(laid);
  if (!work) return [];
  const ends = doneAt(work, laid, ticked(ticksOf(book, id)));
  const jobs = work.jobs.flatMap(({ kind, copies }, at) =>
    copies.length > 0 ? [{ kind, end: ends[at] ?? null }] : [],
  );
  const told: ReturnType<typeof statesTold> = [];
  for (const { state, kinds } of comesTo) {
    const own = jobs.filter(({ kind }) => kinds.includes(kind));
    const done = (own.length > 0 ? own : jobs).map(({ end }) => end ?? Number.POSITIVE_INFINITY);
    const last = Math.max(...done);
    if (!Number.isFinite(last)) break;
    told.push({ state, at: asInstant(new Date(last)) });
  }
  return told;
}

/** Brings a run on to the state that all its ticks tell, dated by them; never back. */
export function followTicks(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  if (!run || run.state === 'draft' || run.state === 'closed') return;
  for (const { state, at } of statesTold(bookSoFar(draft), id)) {
    if (rank(run.state) >= rank(state)) continue;
    // The film of a received run is another shop's, or another station's of this one.
    if (state === 'printed' && !run.received) finishRun(draft, id, { ...context, now: at });
    else moveTo(run, state, at);
  }
}

/** Takes a run out of the states that it came to last, by ticks of some instants that are taken back now. */
function leaveStates(
  draft: BookDraft,
  id: Id<'run'>,
  withdrawn: ReadonlySet<string>,
  context: EditContext,
): void {
  const run = draft.run[id];
  if (!run || run.state === 'draft' || run.state === 'closed') return;
  const kept = run.history.findLastIndex(({ at }) => !withdrawn.has(at));
  const told = statesTold(bookSoFar(draft), id).at(-1)?.state ?? 'locked';
  const steps = Math.min(run.history.length - 1 - kept, rank(run.state) - rank(told));
  for (let step = 0; step < steps; step += 1) stepRunBack(draft, id, context);
  // An order that is packed all the same stays so.
  if (steps > 0)
    for (const subject of ticked(ticksOf(bookSoFar(draft), id)).keys()) followPacking(draft, id, subject);
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
