export { type CoverageOf, proposeClosing } from './proposal';
export { type LogRow, logRows } from './rows';
