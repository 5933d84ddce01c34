import { changeRecords, inReceived, inSettings } from './change-records';
import { isObject } from './stored';

/** From here a transfer is pressed as a large one: 200 mm until now, in shops of inches 8 in. */
const LARGE = { mm: 200_000, in: 203_200 };

const withLarge = (large: number) => (station: Record<string, unknown>) =>
  isObject(station.press) ? { ...station, press: { ...station.press, large } } : station;

/** Version 38 lets the shop say from which size a transfer is pressed as a large one; a run of another device goes on as it did. */
export const askForLarge = changeRecords({
  settings: (settings) => inSettings(settings, withLarge(LARGE[settings.unit === 'in' ? 'in' : 'mm'])),
  run: (run) => inReceived(run, withLarge(LARGE.mm)),
});
