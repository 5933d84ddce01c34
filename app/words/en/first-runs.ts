import type { Run } from '../../../src/model';
import { counted, listedUpTo, type Ways } from '../format';

export const runs = {
  run: 'Run',
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
  spoiled: 'Spoiled from – to …',
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
