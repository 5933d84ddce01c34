export { proposeClosing } from './proposal';
export { type LogRow, logRows } from './rows';
