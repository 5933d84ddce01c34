import { counted, type Ways } from '../format';
import { copies } from './counts';
import { runs as first } from './first-runs';

export const runs = {
  ...first,
  title: 'This run',
  name: 'Name',
  takes: 'Include',
  takesAll: 'all ready copies',
  takesChosen: 'chosen copies only',
  nothingWaits: 'No copy waits for a run.',
  dueBy: 'Everything due by',
  takeDue: 'Take these',
  onFilm: (count: number, ways: Ways) => `${counted(count, 'copy lies', 'copies lie', ways)} on film already`,
  taken: (taken: string, all: string) => `${taken} of ${all} taken`,
  remove: 'Remove this run',
  printedToHint: 'Copies that begin before it are done. The rest can be laid out again behind it.',
  printedToNote: 'What is done stays. Lay out the rest, with a rush order if there is one.',
  lengthPrinted: (unit: string) => `Printed, from the run’s start (${unit})`,
  sheetsPrinted: 'Sheets printed',
  withinRun: (most: string) =>
    most === ''
      ? 'Write a number of sheets within this run.'
      : `Write a length above zero and up to the run’s ${most}.`,
  from: (unit: string) => `From (${unit})`,
  to: (unit: string) => `To (${unit})`,
  sheetNumber: 'sheet',
  stretchProblem: 'Write two places within this run, the second behind the first.',
  touched: (count: number, ways: Ways) => `${copies(count, ways)} touched`,
  putBack: 'Put them back on the list',
  spoiledNote: (count: number, ways: Ways) =>
    `${counted(count, 'copy is', 'copies are', ways)} back on the list, and the film counts as used. Lay out again to place them behind it.`,
};
