import type { ArtworkProblem } from '../../../src/artwork/browser';
import type { OrderState } from '../../../src/model';
import type { UnplacedReason } from '../../../src/packing';
import { counted, type Ways, whole } from '../format';
import { copies, orders as counts, transfers } from './counts';
import { orders as first } from './first-orders';
import { unplaced } from './refusals';

const artworkProblems: Record<ArtworkProblem, string> = {
  'not-image':
    'is not a PNG, JPEG, WebP, SVG or PDF. Export the artwork as PNG with a transparent background and drop that.',
  'large-inks': 'is a JPEG in four printing inks with more than 40 million pixels. Export it as sRGB PNG.',
  broken: 'is damaged: a part of it is cut off or changed. Export it again.',
  'no-size': 'is damaged: it does not say how large it is. Export it again.',
  unreadable: 'could not be read. See that it is still there and try again.',
  'too-large': 'has more than 150 million pixels. Export it at its printed size with 300 ppi.',
  'too-wide':
    'is more than 65,535 pixels wide, which a browser cannot show. Turn it, or export it at its printed size.',
  'many-parts': 'is made of more parts than an image needs. Open it in an image program and save it again.',
  'too-long': 'is an SVG of more than 50 MB. Simplify it, or export it as PNG at its printed size.',
  'too-slow': 'takes too long to draw. Flatten its effects, or export it as PNG at its printed size.',
  'many-elements':
    'has more than 100,000 shapes, each counted as often as it is repeated. Export it as PNG at its printed size.',
  'many-filters':
    'has more blurs, shadows and other filters than can be drawn. Flatten them, or export it as PNG.',
  nested: 'has groups or repeats within each other without an end. Ungroup them, or export it as PNG.',
  indirect: 'holds another SVG, or parts told only in a roundabout way. Export it as plain SVG or as PNG.',
  locked: 'is a PDF that opens with a password only. Save it again without one, or export it as PNG.',
  'no-page': 'does not have a page of that number.',
  'not-whole':
    'cannot be drawn whole: a part is damaged, or of a kind that is not read here. Export it as PNG at its printed size.',
  layered:
    'holds no picture that is read here: it has layers alone, or printing inks. Hide its background and export it as PNG at its printed size.',
  postscript: 'is PostScript, which is not run here. Save it as PDF or SVG with its text as paths.',
  blank: 'is blank: every pixel is transparent. See that the right layer was exported.',
};

export const orders = {
  ...first,
  title: 'Orders',
  summary: (orderCount: number, transferCount: number, copyCount: number, ways: Ways) =>
    `${counts(orderCount, ways)}, ${transfers(transferCount, ways)}, ${copies(copyCount, ways)}`,
  emptyTitle: 'No orders yet',
  empty:
    'Copy the day from a spreadsheet and paste it here, open a CSV file, or add an order by hand. Columns: order, transfer, width, height, qty, due, may turn.',
  paste: 'Paste a table',
  open: 'Open a file',
  addOrder: 'Add an order',
  newOrder: 'New order',
  search: 'Search',
  sort: 'Sort by',
  sortings: { due: 'due date', name: 'name', state: 'state' },
  show: 'Show',
  showOpen: 'open orders',
  showArchived: 'archived orders',
  noneFound: 'No order or transfer holds what you search for.',
  details: 'Details',
  duplicate: 'Repeat order',
  duplicateNamed: (name: string) => `Repeat order ${name}`,
  again: (name: string) => `${name}, again`,
  archive: 'Archive',
  archiveNamed: (name: string) => `Archive ${name}`,
  archived: 'archived',
  partDone: (inPrint: number, lying: number, waiting: number, ways: Ways) =>
    `This order is not done: ${counted(inPrint, 'copy is', 'copies are', ways)} printed or sent to print, ${whole(lying, ways)} on film, ${whole(waiting, ways)} waiting.`,
  archiveKeeps: 'Copies stay where they are, and are printed with their run. A search finds the order again.',
  unarchive: 'Back to work',
  unarchiveNamed: (name: string) => `Bring ${name} back to work`,
  inPrint: (name: string) =>
    `${name} has copies in print, so it stays. Take the run back to draft first, or archive the order.`,
  states: {
    waiting: 'waiting',
    ready: 'ready',
    'in-run': 'in a run',
    'part-done': 'part done',
    printed: 'printed',
    packed: 'packed',
    collected: 'collected',
  } satisfies Record<OrderState, string>,
  contact: 'Contact',
  notes: 'Notes',
  dueTime: 'Due at',
  handover: 'Handed over',
  handovers: { collect: 'is collected', ship: 'is shipped' },
  status: 'Status',
  statuses: { open: 'open', packed: 'packed', collected: 'collected or shipped' },
  isRush: 'Rush',
  awaitsProof: 'Waits for a proof to be approved',
  awaitsBlanks: 'Waits for garments',
  grid: 'Garments and placements',
  names: 'Names and numbers',
  moreOf: (name: string) => `More about ${name}`,
  overs: 'Overs',
  oversHint: 'spare copies made on purpose',
  fillers: 'Fillers',
  fillersHint: 'wanted, but placed only where they add no film',
  shade: 'Garment colour to look at it on',
  noShade: 'none',
  otherShade: 'another',
  shadeNamed: (shade: string) => `Colour ${shade}`,
  filesTaken: (count: number, ways: Ways) => `${counted(count, 'file is', 'files are', ways)} taken in.`,
  addTransfer: 'Add a transfer',
  newTransfer: 'transfer',
  removeOrder: (code: string) => `Remove order ${code}`,
  removeTransfer: (name: string) => `Remove ${name}`,
  removedOrder: (name: string) => `${name} is removed with its transfers. Undo brings it back.`,
  removedTransfer: (name: string) => `${name} is removed. Undo brings it back.`,
  code: 'Code',
  codeTaken: (code: string) =>
    `Another order has the code ${code}. Codes are printed on every copy, so each must be unique.`,
  codeEnd: 'End the code with a letter: on the film, each copy’s number follows it.',
  codeBegins: (code: string, other: string) =>
    `${code} and another order’s code, ${other}, begin alike. Choose one that cannot be taken for it.`,
  codeLater: 'on film, then',
  codeLaterOf: (name: string) => `Code of ${name} once it is off film`,
  codeKept: (name: string, onFilm: string, code: string) =>
    `${name} goes by ${onFilm} while that stands on film. Once its runs are closed it is ${code}.`,
  codeShape: 'A code has one to four letters or figures.',
  orderName: 'Order',
  due: 'Due',
  transfer: 'Transfer',
  width: 'Width',
  height: 'Height',
  count: 'Qty',
  mayTurn: 'May turn',
  turnings: { fixed: 'No', half: 'Half round', quarter: 'By quarters', any: 'Any angle' },
  artwork: 'Artwork',
  prints: 'Will print',
  addArtwork: (name: string) => `Choose an image for ${name}`,
  dropHere: 'Drop a PNG here',
  readingArtwork: 'Reading the image…',
  ppi: (ppi: string) => `${ppi} ppi`,
  trimmed: 'empty margin trimmed',
  countProblem: (least: number, most: string) =>
    `The number of copies is a whole number from ${least} to ${most}.`,
  countInPrint: (count: number, ways: Ways) =>
    `${counted(count, 'copy is', 'copies are', ways)} printed or sent to print. Write ${whole(count, ways)} or more; spoiled ones are noted in the room Press.`,
  nameEmpty: 'A name is needed, so that the copy can be found again.',
  keepProportions: 'Set height by artwork',
  tooLarge: (reason: UnplacedReason) =>
    `This transfer ${unplaced[reason]}. Make it smaller, or choose other film.`,
  fileSays: (size: string) => `The file says ${size}, its empty margin trimmed.`,
  useFileSize: 'Use that size',
  otherProportions: 'The artwork has other proportions and would be stretched.',
  pageTaken: (fileName: string, page: number, total: number, ways: Ways) =>
    `${fileName} has ${whole(total, ways)} pages; page ${whole(page, ways)} is taken. Choose another in the window of what will print.`,
  artworkRefused: (fileName: string, problem: ArtworkProblem) => `${fileName} ${artworkProblems[problem]}`,
  all: (placed: number, total: number, ways: Ways) =>
    placed === total
      ? `all ${whole(total, ways)} placed`
      : `${whole(placed, ways)} of ${whole(total, ways)} placed`,
  ambiguousDates: 'In dates such as 3/4/2026',
  askOrder: 'as your country writes them',
  dayFirst: 'the day comes first',
  monthFirst: 'the month comes first',
};
