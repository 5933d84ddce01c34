export { type Act, actOf, actsOn, isDusty } from './acts';
export { withAnotherPrinter } from './another-printer';
export { type Batch, batchesOf } from './batches';
export { garmentsPressed, platenClosings, pressedTogether } from './closings';
export { longestWarmUp, numbered, ovenKind, printerFor } from './crews';
export { type DayTerms, type DayWork, dayWork, type OpenRun } from './day';
export { fabricOfCopy, fabricsOn } from './fabrics';
export { wetWhenWhole } from './film-work';
export type { Job, JobKind, Machine, MachineKind, Work, Worker } from './jobs';
export {
  apartKey,
  BEGUN,
  cutKey,
  isAtPrinter,
  isPrintKey,
  orderOfPack,
  packKey,
  printKey,
  READY,
} from './keys';
export { loadsOf } from './loads';
export { type Inches, measures, placesPressed } from './measures';
export { pressedOn } from './pressed-on';
export { cautionsFor, type FabricCaution, type Question, questionCure, questionPress } from './question';
export { cureKey, cureRecipe, pressKey, pressRecipe } from './recipes';
export {
  pressSeconds,
  startingCure,
  startingHeatPress,
  startingOven,
  startingPerson,
  startingPress,
  startingPrinter,
  startingStation,
} from './starting';
export { asTicked, doneAt, printedBefore, ticked, tickedBy, tickedOn, ticksOf } from './ticks';
export { type Bottleneck, type Entry, type Timeline, timelineOf } from './timeline';
export { type WorkProblem, workInHand, workOf } from './work';
