import { counted, listed, listedUpTo, type Ways } from '../format';
import { copies, orders } from './counts';

/** What is said before something that was kept is brought back. */
export const bringBack = {
  lacks: 'Not all of it can be read. Nothing here has been touched yet.',
  leftOut: 'This would be left out; it stays where it is:',
  settings: (fields: readonly string[], ways: Ways) => `settings, as in a new shop: ${listed(fields, ways)}`,
  allSettings: 'all settings, as in a new shop',
  records: (what: string, names: readonly string[], ways: Ways) =>
    names.length > 0 ? `${what}: ${listedUpTo(20, names, 'more', ways)}` : what,
  images: (count: number, names: readonly string[], ways: Ways) =>
    `${counted(count, 'image file', 'image files', ways)}: ${listedUpTo(20, names, 'more', ways)}`,
  unsummed: (films: readonly string[], ways: Ways) =>
    `The stock entries of a film do not add up to what is left of it: ${listedUpTo(4, films, 'more', ways)}. An entry of the difference would be added. Nothing here has been touched yet.`,
  rest: 'Bring back the rest',
  leave: 'Leave all as it is',
  lookInside: 'Look inside',
  lookInsideNamed: (when: string) => `Look inside ${when}`,
  asOf: (when: string) => `As it was: ${when}`,
  reading: 'Reading the snapshot…',
  noOrders: 'There is no order in this snapshot.',
  choose: 'Choose orders to bring back into the book as it is now.',
  asWaiting: 'Their copies come as waiting. Other orders are not touched; one press of undo takes it back.',
  ordersOf: 'Orders of this snapshot',
  order: (name: string, due: string, copyCount: number, ways: Ways) =>
    `${name}, ${due}, ${copies(copyCount, ways)}`,
  due: (day: string) => `due ${day}`,
  noDate: 'no due date',
  stillHere: 'still in the book: it comes as another order',
  all: 'Choose all',
  none: 'Choose none',
  bringOrders: (count: number, ways: Ways) =>
    count === 0 ? 'Bring orders back' : `Bring ${orders(count, ways)} back`,
  broughtOrders: (orderCount: number, copyCount: number, ways: Ways) =>
    `Back as waiting: ${orders(orderCount, ways)}, ${copies(copyCount, ways)}. Undo takes it back.`,
  whole: 'Bring the whole book back',
  wholeHint: 'The whole book takes the place of what is here, which is kept as a snapshot first.',
  back: 'Back to the list',
};
