import { changeRecords } from './change-records';
import { isObject } from './stored';

const onNone = (tick: unknown): unknown => (isObject(tick) ? { ...tick, machine: null } : tick);

/** Version 47 keeps with each tick the machine that its job was done on; of what was ticked before nobody has said. */
export const keepDoneOn = changeRecords({
  tick: onNone,
  aside: (aside) => (Array.isArray(aside.ticks) ? { ...aside, ticks: aside.ticks.map(onNone) } : aside),
});
