export { type CoverageOf, proposeClosing, runCoverage } from './proposal';
export { type LogRow, logRows } from './rows';
