import type { Change } from '../costing/calibration';
import type { Calibration, Id, LeftOut, Quantity, Settings, Tunable } from '../model';
import type { BookDraft, EditContext } from './step';

type Tuned = Pick<Settings, 'rates' | 'station' | 'costs'>;

/** Where a setting lies: the object it is in, and its name there. */
function placeOf(
  { rates, station, costs }: Tuned,
  setting: Tunable,
): readonly [Record<string, number>, string] {
  const [part = '', name = ''] = setting.split('.');
  const parts: Readonly<Record<string, object>> = {
    rates,
    start: costs.maintenance.start,
    printer: station.printer,
    handling: station.handling,
  };
  return [(parts[part] ?? {}) as Record<string, number>, name];
}

const settingOf = (settings: Tuned, setting: Tunable): number => {
  const [holder, name] = placeOf(settings, setting);
  return holder[name] ?? 0;
};

/** Sets what closed runs told, and keeps what was set before. */
export function calibrate(
  draft: BookDraft,
  told: Pick<Calibration, 'quantity' | 'driver' | 'found' | 'runs'> & { readonly set: readonly Change[] },
  { newId, now }: EditContext,
): void {
  const { shop } = draft.settings;
  if (!shop || told.set.length === 0) return;
  for (const { setting, after } of told.set) {
    const [holder, name] = placeOf(shop, setting);
    holder[name] = after;
  }
  const id = newId() as Id<'calibration'>;
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
export const isInForce = ({ takenBack, set }: Calibration, settings: Tuned): boolean =>
  takenBack === null && set.every(({ setting, after }) => settingOf(settings, setting) === after);

/** Takes a change back that is still in force: each setting is what it was before. */
export function takeBackCalibration(draft: BookDraft, id: string, { now }: EditContext): void {
  const change = draft.calibration[id];
  const { shop } = draft.settings;
  if (!change || !shop || !isInForce(change, shop)) return;
  for (const { setting, before } of change.set) {
    const [holder, name] = placeOf(shop, setting);
    holder[name] = before;
  }
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
  const id = `${quantity}/${run}` as LeftOut['id'];
  if (out) draft.leftOut[id] = { id, quantity, run, changed: now };
  else delete draft.leftOut[id];
}
