export { type ProposedClosing, proposeClosing, runCoverage } from './proposal';
export { reasonsBefore } from './reasons';
export { type LogRow, logRows } from './rows';
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
