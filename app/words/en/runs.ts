import type { Run } from '../../../src/model';
import { counted, listedUpTo, type Ways } from '../format';
import { copies } from './counts';

export const runs = {
  run: 'Run',
  title: 'This run',
  name: 'Name',
  add: 'a new run',
  numbered: (number: number) => `Run ${number}`,
  states: {
    draft: 'draft',
    locked: 'locked',
    printed: 'printed',
    cured: 'cured',
    pressed: 'pressed',
    closed: 'closed',
  },
  choose: 'Choose copies',
  takes: 'Include',
  takesAll: 'all ready copies',
  takesChosen: 'chosen copies only',
  nothingWaits: 'No copy waits for a run.',
  dueBy: 'Everything due by',
  takeDue: 'Take these',
  onFilm: (count: number, ways: Ways) => `${counted(count, 'copy lies', 'copies lie', ways)} on film already`,
  taken: (taken: string, all: string) => `${taken} of ${all} taken`,
  remove: 'Remove this run',
  lock: 'Lock for print',
  withoutArtwork: (names: readonly string[], ways: Ways) =>
    `Without artwork: ${listedUpTo(4, names, 'more', ways)}. ${names.length > 1 ? 'They stay' : 'It stays'} blank in the print-ready image.`,
  lettingGo: (count: number, ways: Ways) =>
    `${counted(count, 'copy', 'copies', ways)} chosen for this run do not lie on its film. Locked without them, it leaves them to other runs.`,
  unlock: 'Back to draft',
  lockedNote: (name: string) =>
    `${name} is locked for print: later edits of orders and film do not change it. You cannot undo past this.`,
  printedTo: 'Printed to …',
  printedToHere: (length: string) => `printed to ${length}; only what lies behind is planned`,
  printedToHint: 'Copies that begin before it are done. The rest can be laid out again behind it.',
  printedToNote: 'What is done stays. Lay out the rest, with a rush order if there is one.',
  lengthPrinted: (unit: string) => `Printed, from the run’s start (${unit})`,
  sheetsPrinted: 'Sheets printed',
  withinRun: (most: string) =>
    most === ''
      ? 'Write a number of sheets within this run.'
      : `Write a length above zero and up to the run’s ${most}.`,
  spoiled: 'Spoiled from – to …',
  from: (unit: string) => `From (${unit})`,
  to: (unit: string) => `To (${unit})`,
  sheetNumber: 'sheet',
  stretchProblem: 'Write two places within this run, the second behind the first.',
  touched: (count: number, ways: Ways) => `${copies(count, ways)} touched`,
  putBack: 'Put them back on the list',
  spoiledNote: (count: number, ways: Ways) =>
    `${counted(count, 'copy is', 'copies are', ways)} back on the list, and the film counts as used. Lay out again to place them behind it.`,
  printedNote: (name: string) => `${name} is printed; its film is off the roll.`,
  stepBack: 'Step back to locked',
  leadOn: {
    draft: 'To the Film room',
    locked: 'All printed',
    printed: 'All cured',
    cured: 'All pressed',
    pressed: 'Close the run',
    closed: 'To the log',
  } satisfies Record<Run['state'], string>,
};
