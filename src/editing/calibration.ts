import type { Change } from '../costing/calibration';
import {
  asId,
  type Calibration,
  type Id,
  type LeftOut,
  type Quantity,
  type Tuned,
  tune,
  tunedTo,
} from '../model';
import type { BookDraft, EditContext } from './step';

/** Sets what closed runs told, and keeps what was set before. */
export function calibrate(
  draft: BookDraft,
  told: Pick<Calibration, 'quantity' | 'driver' | 'printer' | 'found' | 'runs'> & {
    readonly set: readonly Change[];
  },
  { newId, now }: EditContext,
): void {
  const { shop } = draft.settings;
  if (!shop || told.set.length === 0) return;
  for (const { setting, after } of told.set) tune(shop, setting, told.printer, after);
  const id = newId<'calibration'>();
  draft.calibration[id] = {
    id,
    ...told,
    set: [...told.set],
    at: now,
    takenBack: null,
    changed: now,
  };
}

/** Whether a change still is what is set: it was neither taken back nor set otherwise since. */
export const isInForce = ({ takenBack, printer, set }: Calibration, settings: Tuned): boolean =>
  takenBack === null && set.every(({ setting, after }) => tunedTo(settings, setting, printer) === after);

/** Takes a change back that is still in force: each setting is what it was before. */
export function takeBackCalibration(draft: BookDraft, id: string, { now }: EditContext): void {
  const change = draft.calibration[id];
  const { shop } = draft.settings;
  if (!change || !shop || !isInForce(change, shop)) return;
  for (const { setting, before } of change.set) tune(shop, setting, change.printer, before);
  change.takenBack = now;
}

/** Leaves a closed run out when a quantity is calibrated, or takes it in again. */
export function leaveRunOut(
  draft: BookDraft,
  quantity: Quantity,
  run: Id<'run'>,
  out: boolean,
  { now }: EditContext,
): void {
  const id: LeftOut['id'] = asId(`${quantity}/${run}`);
  if (out) draft.leftOut[id] = { id, quantity, run, changed: now };
  else delete draft.leftOut[id];
}
