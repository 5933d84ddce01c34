import { changeRecords, inReceived, inSettings } from './change-records';
import { isObject } from './stored';

/** Nobody was asked until now. */
const withCaps = (station: Record<string, unknown>) =>
  isObject(station.press) ? { ...station, press: { ...station.press, caps: false } } : station;

/** Version 43 knows whether a platen for caps is there. */
export const askForCaps = changeRecords({
  settings: (settings) => inSettings(settings, withCaps),
  run: (run) => inReceived(run, withCaps),
});
