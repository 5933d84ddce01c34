export { printedOn } from './printed-on';
export { type ProposedClosing, proposeClosing } from './proposal';
export { reasonsBefore } from './reasons';
export { type LogRow, logRows } from './rows';
export { runCoverage } from './run-coverage';
export {
  type Compared,
  compared,
  filmByWeek,
  median,
  planAndFact,
  spoiledByHumidity,
  spoiledByLot,
  spoiledByReason,
  wasteTogether,
} from './trends';
