export { closingsOf, pressedTogether } from './closings';
export { BEGUN, cutKey, orderOfPack, packKey } from './keys';
export { loadsOf } from './loads';
export { cautionsFor, type FabricCaution, type Question, questionCure, questionPress } from './question';
export { cureKey, cureRecipe, pressKey, pressRecipe } from './recipes';
export { pressSeconds, startingCure, startingPress, startingStation } from './starting';
export { asTicked, ticked } from './ticks';
export { type Bottleneck, type Entry, type Timeline, timelineOf } from './timeline';
export {
  type Job,
  type JobKind,
  pressedOn,
  type Work,
  type Worker,
  type WorkProblem,
  workOf,
} from './work';
