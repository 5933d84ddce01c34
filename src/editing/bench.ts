import { layRun } from '../layout';
import {
  type Book,
  type Curer,
  type CureValues,
  type Fabric,
  type Id,
  type Instant,
  isPrinted,
  type Origin,
  type Peel,
  type PressValues,
  type Run,
  runStates,
  type Settings,
  type Spoilage,
  type Tick,
} from '../model';
import { cureKey, cureRecipe, type JobKind, pressKey, pressRecipe, ticked, workOf } from '../pressing';
import { takeBackClosing } from './closing';
import { takeOff } from './places';
import { finishRun, moveTo, reopenRun } from './runs';
import type { BookDraft, EditContext } from './step';

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
  const before = pressRecipe(draft as Book, peel, fabric);
  const known = draft.recipe[key];
  const history = historyWith(known?.kind === 'press' ? known.history : [], before, set.values, now);
  draft.recipe[key] = {
    id: key as Id<'recipe'>,
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
  const before = cureRecipe(draft as Book, by);
  const known = draft.recipe[key];
  const history = historyWith(known?.kind === 'cure' ? known.history : [], before, set.values, now);
  draft.recipe[key] = { id: key as Id<'recipe'>, kind: 'cure', by, ...set, history, changed: now };
}

export function editStation(draft: BookDraft, fields: Partial<Settings['station']>): void {
  const { shop } = draft.settings;
  if (shop) Object.assign(shop.station, fields);
}

/** The state that a run has come to when all jobs of some kinds are done. */
const comesTo: readonly { readonly state: Run['state']; readonly kinds: readonly JobKind[] }[] = [
  { state: 'printed', kinds: ['print'] },
  { state: 'cured', kinds: ['cure', 'line'] },
  { state: 'pressed', kinds: ['press', 'again'] },
];

const rank = (state: Run['state']): number => runStates.indexOf(state);

/** Ticks a job, or takes its tick back, and brings the run to the state that its ticks tell. */
export function tickJob(
  draft: BookDraft,
  id: Id<'run'>,
  subject: string,
  done: boolean,
  context: EditContext,
): void {
  const tick = context.newId() as Id<'tick'>;
  draft.tick[tick] = { id: tick, run: id, subject, done, at: context.now, changed: context.now };
  if (done) followTicks(draft, id, context);
}

/** Brings a run on to the state that all its ticks tell; never back. */
function followTicks(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  const { shop } = draft.settings;
  const laid = run && layRun(draft as Book, run as Run);
  if (!run || !shop || !laid || run.state === 'draft' || run.state === 'closed') return;
  const work = workOf(draft as Book, laid, shop.station as Settings['station'], new Date(context.now));
  if (!work.ok) return;
  const done = ticked(ticksOf(draft as Book, id));
  for (const { state, kinds } of comesTo) {
    const jobs = work.value.jobs.filter(({ kind }) => kinds.includes(kind));
    if (jobs.length === 0 || !jobs.every(({ key }) => done.has(key))) break;
    if (rank(run.state) >= rank(state)) continue;
    if (state === 'printed') finishRun(draft, id, context);
    else moveTo(run, state, context.now);
  }
}

/** All that was ticked on a run. */
export const ticksOf = (book: Pick<Book, 'tick'>, run: string): Tick[] =>
  Object.values(book.tick).filter((tick) => tick.run === run);

/** Brings a run that is on film one state on, as far as pressed: closing it takes figures, see `closeRun`. */
export function advanceRun(draft: BookDraft, id: string, { now }: EditContext): void {
  const run = draft.run[id];
  const next = run && runStates[rank(run.state) + 1];
  if (run && next && next !== 'closed' && isPrinted(run)) moveTo(run, next, now);
}

/** Brings a run that is on film one state back; from closed, its stock is back, from printed, its film is on the roll again. */
export function stepRunBack(draft: BookDraft, id: Id<'run'>, context: EditContext): void {
  const run = draft.run[id];
  if (!run || !isPrinted(run)) return;
  const before = runStates[rank(run.state) - 1];
  if (run.state === 'printed') reopenRun(draft, id, context);
  else if (before) {
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
  const copy = draft.copy[fields.copy];
  if (!run || !copy || !isPrinted(run) || copy.run !== run.id) return;
  const id = newId() as Id<'spoilage'>;
  draft.spoilage[id] = { id, ...fields, changed: now };
  takeOff(draft, [copy.id]);
  // The run is printed: a reprint is for another.
  copy.run = null;
  const order = draft.order[draft.transfer[copy.transfer]?.order ?? ''];
  if (order && fields.garment) order.awaits.blanks = true;
}
