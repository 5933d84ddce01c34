import type { EntryKind, StockUnit } from '../../../src/model';
import type { EntryProblem, Warning } from '../../../src/stock';
import { counted, filmLength, inkVolume, powderMass, type Ways, whole } from '../format';

const amount = (value: number, unit: StockUnit, ways: Ways): string => {
  const size = Math.abs(value);
  const told = {
    length: () => filmLength(size as Parameters<typeof filmLength>[0], ways),
    sheets: () => counted(size, 'sheet', 'sheets', ways),
    volume: () => inkVolume(size as Parameters<typeof inkVolume>[0], ways),
    mass: () => powderMass(size as Parameters<typeof powderMass>[0], ways),
    pieces: () => whole(size, ways),
  }[unit]();
  return value < 0 ? `−${told}` : told;
};

/** The Stock room and its ledger. */
export const stock = {
  title: 'Stock',
  add: 'Add to stock',
  amount,
  change: (value: number, unit: StockUnit, ways: Ways) =>
    value > 0 ? `+${amount(value, unit, ways)}` : amount(value, unit, ways),
  toOrder: (names: string) => `To order: ${names}.`,
  toLookAt: (names: string) => `To look at: ${names}.`,
  film: 'Film',
  supplies: 'Ink and powder',
  noSupplies: 'No ink or powder is kept yet. Add what you have, and closing a run takes out what it used.',
  garments: 'Blanks',
  noGarments: 'No blanks are kept, and no open order asks for any.',
  shelf: 'Shelf',
  shelfEmpty:
    'Nothing lies on the shelf. Spare copies of closed runs are kept here until an order needs them.',
  item: 'Item',
  present: 'On hand',
  box: 'Lots and dates',
  reorderBelow: 'Reorder below',
  lot: (lot: string) => `lot ${lot}`,
  bestBefore: (day: string) => `best before ${day}`,
  opened: (day: string) => `opened ${day}`,
  offcutOf: (film: string) => `offcut of ${film}`,
  warnings: {
    'below-reorder': 'reorder',
    'past-best-before': 'past its best before',
    'below-nothing': 'less than nothing: count it',
  } satisfies Record<Warning, string>,
  reserved: 'Reserved by open orders',
  short: (count: number, ways: Ways) => `${whole(count, ways)} short`,
  notKept: 'not kept in stock',
  keepIt: 'Keep it in stock',
  openItem: (name: string) => `Open ${name}`,
  ledger: 'Ledger',
  ledgerLead:
    'Every change there was, the latest first. Entries are never removed: one that is wrong is undone by another.',
  ledgerAll: 'Everything',
  ledgerOf: 'Of',
  when: 'When',
  what: 'What',
  changed: 'Change',
  run: 'Run',
  note: 'Note',
  goneItem: 'gone',
  undone: 'undone',
  undo: 'Undo',
  undoEntry: (what: string, name: string) => `Undo: ${what}, ${name}`,
  undoneNote: (name: string, present: string) => `Undone by another entry. ${name}: ${present}.`,
  kinds: {
    opening: 'was there',
    bought: 'bought',
    printed: 'printed by a run',
    used: 'used by a run',
    counted: 'counted',
    'weighed-out': 'weighed out',
    returned: 'returned',
    discarded: 'discarded',
    spoiled: 'spoiled',
    cut: 'cut off or put back',
    counter: 'undoes another entry',
  } satisfies Record<EntryKind, string>,
  problems: {
    gone: (name: string) =>
      `${name} is no longer in stock, so its entries can only be read. Add it anew and enter the change there.`,
    'less-than-nothing': (name: string, present: string) =>
      `There is only ${present} of ${name}. Take less, or count it first.`,
    undone: (name: string) => `This entry of ${name} is undone already.`,
    'by-run': () => 'A step of a run made this entry. Take the run a step back, and it is undone.',
  } satisfies Record<EntryProblem, (name: string, present: string) => string>,

  addTitle: 'Add to stock',
  kind: 'What',
  kindNames: {
    film: 'Film like one in stock',
    colour: 'Colour ink',
    white: 'White ink',
    powder: 'Powder',
    blank: 'Blanks to print on',
  },
  like: 'Like',
  likeHint: 'It takes over width, margins, gap and price. Change them in the Film room.',
  name: 'Name',
  nameEmpty: 'Give it a name that tells it from the others.',
  nameTaken:
    'Something in stock has this name already. Note what you bought there, or give this one another name.',
  howMuch: {
    length: (unit: string) => `Length (${unit})`,
    sheets: () => 'Sheets',
    volume: () => 'Amount (ml)',
    mass: () => 'Amount (g)',
    pieces: () => 'Pieces',
  } satisfies Record<StockUnit, (unit: string) => string>,
  style: 'Style',
  styleEmpty: 'Say what garment it is, such as T-shirt.',
  colour: 'Colour',
  sizes: 'Sizes and how many',
  sizesHint: 'Such as S 10, M 20, L 15',
  sizesProblem: 'Write each size with its quantity, such as S 10, M 20, L 15.',
  lotLabel: 'Lot',
  bestBeforeLabel: 'Best before',
  openedLabel: 'Opened on',
  reorderLabel: (unit: string) => (unit === '' ? 'Reorder below' : `Reorder below (${unit})`),
  orderLabel: 'What to order',
  aboveZero: 'Type an amount above zero.',
  wholeNumber: 'Type a whole number, such as 12.',
  added: (name: string) => `${name} is in stock.`,

  entry: 'Note a change',
  happened: 'What happened',
  entryKinds: {
    bought: 'bought',
    counted: 'counted: on hand',
    'weighed-out': 'weighed out for a run',
    returned: 'returned',
    discarded: 'discarded',
    spoiled: 'spoiled',
  },
  forRun: 'For the run',
  noRun: 'none',
  saveEntry: 'Enter it',
  entered: (name: string, present: string) => `${name}: ${present}.`,
  details: 'Lots, dates and when to order',
  saveDetails: 'Save',
  saved: (name: string) => `${name} is up to date.`,
  putAway: 'Put away',
  putAwayNote: (name: string) => `${name} is put away. Its entries stay in the ledger.`,
  putAwayItems: (count: number, ways: Ways) => `Put away: ${whole(count, ways)}`,
  takeOut: 'Take it out',
  takeOutItem: (name: string) => `Take ${name} out`,
  history: 'Its entries',
  cut: 'Cut off as a film of its own',
  cutLength: (unit: string) => `Length to cut off (${unit})`,
  cutName: 'Name of the offcut',
  cutNameOf: (film: string) => `${film}, offcut`,
  cutDo: 'Make it a film',
  cutDone: (name: string) => `${name} can be chosen as a film in the Film room.`,
  cutTooShort: (least: string) => `A piece must be longer than its margins, ${least}.`,
  cutTooLong: (left: string) => `Only ${left} is left on it.`,
  putBack: 'Put it back on its roll',
  putBackSheet: 'It is no offcut after all',
  putBackDone: (film: string) => `It is back: ${film}.`,
  powderCaution:
    'Powder dust hurts lungs: weigh it slowly, away from draughts, with the ventilation on. Read the maker’s safety data sheet.',
  inkCaution: 'Keep ink off skin and eyes, and read its safety data sheet.',

  lastsAll: (left: string, runs: number, ways: Ways) =>
    `${left} left after all ${whole(runs, ways)} open runs on it.`,
  filmTooShort: (missing: string) => `The film will not last for this run: ${missing} too little.`,
  filmTooShortForWanted: (missing: string) =>
    `The film will not last for all that waits: at least ${missing} too little.`,
  filmTooShortForAll: (missing: string, runs: number, ways: Ways) =>
    `The film lasts for this run, not for all ${whole(runs, ways)} open runs on it: ${missing} too little.`,
  supplyShort: (name: string, present: string, needed: string) =>
    `${name}: ${present} in stock, this run takes about ${needed}.`,
};
