import {
  asId,
  type Curer,
  type CureValues,
  embeddedIn,
  type Id,
  type Instant,
  isPrinted,
  type Origin,
  type Peel,
  type PressValues,
  type Printer,
  printerOf,
  type Roll,
  type Run,
  runStates,
  type Sending,
  type Settings,
  type Spoilage,
  withPrinter,
} from '../model';
import { cureKey, cureRecipe, pressKey, pressRecipe } from '../pressing';
import type { Fabric } from '../units';
import { takeBackClosing } from './closing';
import { bring } from './places';
import { moveTo, reopenRun } from './runs';
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

/** Changes the shop's equipment. Once it is said how runs reach the printer, it is known what of a roll is a job. */
export function editStation(draft: BookDraft, fields: Partial<Settings['station']>): void {
  const { shop } = draft.settings;
  if (!shop) return;
  const before = new Map(shop.station.printers.map(({ id, sends }) => [id, sends]));
  Object.assign(shop.station, fields);
  for (const printer of shop.station.printers) {
    const { id, sends } = printer;
    if (sends === null || sends === before.get(id)) continue;
    for (const film of Object.values(draft.film)) {
      if (film.kind === 'roll' && printerOf(shop.station, film).id === id) film.jobs = jobsBy(sends);
    }
  }
}

/** Changes one printer of the shop, and tells nothing of any other. */
export function editPrinter(draft: BookDraft, id: string, fields: Partial<Omit<Printer, 'id'>>): void {
  const { shop } = draft.settings;
  if (!shop) return;
  const { printers } = shop.station;
  const own = printers.find((printer) => printer.id === id);
  if (own) editStation(draft, { printers: withPrinter(printers, { ...own, ...fields }) });
}

/** What of a roll is a job, as runs are sent to the printer. */
export const jobsBy = (sends: Sending): Roll['jobs'] => (sends === 'by-span' ? 'span' : 'run');

/** How far a state is. */
export const rank = (state: Run['state']): number => runStates.indexOf(state);

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
  // The film of a received run is not of this book.
  if (run.state === 'printed' && !run.received) reopenRun(draft, id, context);
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

/** A spoiled copy leaves its run, to be printed again; a spoiled garment is waited for, and the order is neither packed nor in the archive. */
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
  order.archived = false;
}
