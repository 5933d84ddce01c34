import type { Grade } from '../../src/artwork';
import type { ArtworkProblem } from '../../src/artwork/browser';
import type { CellProblem, Column } from '../../src/intake';
import { MOST_COPIES, MOST_COPIES_IN_ALL } from '../../src/intake';
import type { Refusal } from '../../src/layout';
import type { OrderState, SizeGroup } from '../../src/model';
import type { UnplacedReason } from '../../src/packing';
import type { DateProblem, LengthProblem, MoneyProblem } from '../../src/units';
import { benchLength, counted, type Ways, whole } from './format';

const copies = (count: number, ways: Ways) => counted(count, 'copy', 'copies', ways);
const transfers = (count: number, ways: Ways) => counted(count, 'transfer', 'transfers', ways);
const orders = (count: number, ways: Ways) => counted(count, 'order', 'orders', ways);

/** A piece of a sentence; the figures are set large. */
export interface SentencePart {
  readonly text: string;
  readonly figure: boolean;
}

const say = (text: string): SentencePart => ({ text, figure: false });
const figure = (text: string): SentencePart => ({ text, figure: true });

const lengthProblems: Record<LengthProblem, string> = {
  empty: 'Type a length, such as 89 mm or 3 1/2 in.',
  unreadable:
    'This is not a length. Type a number with or without a unit, such as 89 mm, 8.9 cm or 3 1/2 in.',
  'not-positive': 'A length must be above zero.',
  'too-long': 'This is longer than any film. Check the unit.',
};

const moneyProblems: Record<MoneyProblem, string> = {
  empty: 'Type an amount, 0 if it costs nothing.',
  unreadable: 'This is not an amount. Type figures only, such as 8.40.',
  negative: 'A price cannot be below zero.',
  'too-much': 'This is more than any film costs. Check the figures.',
};

const dateProblems: Record<DateProblem, string> = {
  empty: 'There is no date.',
  unreadable: 'This is not a date. Write it as 2026-11-27.',
  'no-such-day': 'There is no such day in the calendar.',
  ambiguous: 'This could be two different days. Say below whether the day or the month comes first.',
};

const unplaced: Record<UnplacedReason, string> = {
  'too-wide': 'is wider than the printable film, even where it may be turned',
  'too-long': 'is longer than a span or the film allows',
  'no-room': 'found no room: the roll is too short for all of them',
};

function refusal(problem: Refusal, ways: Ways): string {
  switch (problem.code) {
    case 'outside-left':
    case 'outside-right':
      return 'there it would reach into the unprintable side of the film';
    case 'before-lead':
      return 'there it would reach into the blank at the front';
    case 'past-end':
      return 'the film is not that long there';
    case 'no-print':
      return 'that film may not be used';
    case 'too-close':
      return `there it would come closer than ${benchLength(problem.gap, ways)} to ${problem.other.order.code} ${problem.other.number}`;
    case 'no-knife-line':
      return `no straight cut would fit any more, and no span may be longer than ${benchLength(problem.spanMax, ways)}`;
    case 'may-not-turn':
      return 'this transfer may not be turned';
  }
}

const columns: Record<Column, string> = {
  order: 'Order',
  transfer: 'Transfer',
  width: 'Width',
  height: 'Height',
  count: 'Count',
  due: 'Due',
  turn: 'May turn',
};

function countProblem(problem: Extract<CellProblem, { column: 'count' }>, ways: Ways): string {
  switch (problem.code) {
    case 'unreadable':
      return 'write a whole number in figures, such as 12.';
    case 'zero':
      return 'there must be at least one copy.';
    case 'too-many':
      return `no transfer takes more than ${whole(MOST_COPIES, ways)} copies; check the figure.`;
    case 'too-many-in-all':
      return `with these the table would bring more than ${whole(MOST_COPIES_IN_ALL, ways)} copies; add it in parts.`;
  }
}

/** One cell of a pasted table that could not be used: what stands there, and how to mend it. */
function cellProblem(problem: CellProblem, ways: Ways): string {
  const stands = 'text' in problem && problem.text !== '' ? ` "${problem.text}"` : '';
  const name = `${columns[problem.column]}${stands}:`;
  switch (problem.column) {
    case 'order':
      return `${name} name the order; an empty cell stands for the order above it, and there is none.`;
    case 'transfer':
      return `${name} name the transfer, so that its copies can be told apart.`;
    case 'width':
    case 'height':
      return `${name} ${lengthProblems[problem.code]}`;
    case 'count':
      return `${name} ${countProblem(problem, ways)}`;
    case 'due':
      return `${name} ${dateProblems[problem.code]}`;
    case 'turn':
      return `${name} write yes or no.`;
  }
}

const artworkProblems: Record<ArtworkProblem, string> = {
  'not-image':
    'is not a PNG, JPEG, WebP or SVG image. Export the artwork as PNG with a transparent ground and drop that.',
  cmyk: 'is a JPEG in four printing inks, which a browser cannot show rightly. Export it as sRGB PNG.',
  broken: 'is damaged: a part of it is cut off or changed. Export it again.',
  'no-size': 'is damaged: it does not say how large it is. Export it again.',
  unreadable: 'could not be read. See that it is still there and try again.',
  'too-large': 'has more than 150 million pixels. Export it at its printed size with 300 ppi.',
  blank: 'is blank: every pixel is transparent. See that the right layer was exported.',
};

export const en = {
  name: 'Rollwright',
  rooms: { orders: 'Orders', film: 'Film', cut: 'Cut', press: 'Press', label: 'Rooms' },
  skip: 'Skip to the work',
  common: {
    cancel: 'Cancel',
    close: 'Close',
    save: 'Save',
    add: 'Add',
    remove: 'Remove',
    dismiss: 'Dismiss',
    yes: 'yes',
    no: 'no',
  },
  kept: {
    saving: 'Keeping…',
    saved: (time: string) => `Kept on this device, ${time}`,
    failed: 'Not kept',
    offline: 'works offline',
  },
  strip: {
    title: 'Test strip',
    intro:
      'Print this strip once on each printer, with its own software set as for any job. Then say what came out; the print-ready image and the cut map follow.',
    save: 'Save the test strip',
    fileName: 'rollwright test strip.png',
    firstEnd: 'Which end came out first?',
    ends: { lead: 'END 1', tail: 'END 2' },
    inkUp: 'How does the F read, ink up?',
    shows: { mirrored: 'mirrored, as is usual', plain: 'rightly' },
    measured: 'From bar to bar, measured',
    feed: (factor: string) =>
      `500 mm on the strip, between the inner edges of the two bars. Distances are multiplied by ${factor} now.`,
    implausible:
      'That is more than 5% from 500 mm, which no feed is. Measure again between the inner edges of the bars.',
    after: 'Keep hands and scissors away from the print head while the strip comes out.',
    reset: 'As if none was printed',
  },
  keep: {
    title: 'Kept and backed up',
    backups: 'Backup',
    never:
      'No backup has been saved yet. A backup is one file with all orders, runs and artwork; keep it on another device.',
    last: (when: string) => `The last backup was saved on ${when}.`,
    save: 'Save a backup',
    restore: 'Bring a backup back',
    restoreHint:
      'The whole file is checked before anything here is touched, and what is here is kept as a snapshot.',
    fileName: (day: string) => `rollwright backup ${day}.zip`,
    failed: 'That did not work. Nothing here was changed; try again.',
    restored: (count: number, ways: Ways) =>
      `${counted(count, 'order is', 'orders are', ways)} back. What was here before is the first snapshot.`,
    problems: {
      'not-backup': 'This file is not a backup of Rollwright. Nothing here was changed.',
      damaged: 'This backup is damaged: a part of it is missing or was changed. Nothing here was changed.',
      newer:
        'This backup was made by a newer version of Rollwright. Reload the page to get that version, then try again.',
      'not-kept':
        'The backup could not be stored here, perhaps since the disk is full or another tab writes. Nothing here was changed.',
    },
    snapshots: 'As it was',
    noSnapshots: 'A snapshot is taken on the first opening of each day.',
    snapshot: (why: 'day' | 'before-restoring', orderCount: number, copyCount: number, ways: Ways) =>
      `${why === 'day' ? 'opening of the day' : 'before something was brought back'}: ${orders(orderCount, ways)}, ${copies(copyCount, ways)}`,
    bringBack: 'Bring back',
    bringBackNamed: (when: string) => `Bring back ${when}`,
    broughtBack: 'That is how it was. What was here before is the first snapshot.',
    durable: 'Against clearing',
    isDurable: 'The browser keeps this data even when the disk is nearly full.',
    mayBeCleared: 'A browser may clear stored data when the disk is nearly full.',
    ask: 'Ask the browser to keep it',
    notDurable: 'The browser did not agree. Install the app or bookmark it and ask again, and save backups.',
  },
  bands: {
    demo: 'This is a demo day with invented orders. Look around and try everything; your own orders are kept apart.',
    leaveDemo: 'Start with my own orders',
    backToDemo: 'Look at the demo day',
    follows: 'Rollwright is open in another tab, which does the writing. This one shows what happens there.',
    takeOver: 'Write here instead',
    update: 'A new version is ready.',
    updateNow: 'Load it now',
    newer:
      'What is stored here was written by a newer version of Rollwright. It is left untouched. Reload the page to get that version.',
    setAside: (count: number, ways: Ways) =>
      `${counted(count, 'stored entry', 'stored entries', ways)} could not be read and is left untouched in storage. All others are here.`,
  },
  storage: {
    quota:
      'The disk is full, so the last changes are kept in memory only. Free some space and press "Try again" before you close this tab.',
    unavailable:
      'This browser does not let Rollwright keep anything, as in a private window. You can work, but all of it is gone when the tab is closed.',
    closed: 'The storage was closed from outside. The last changes are in memory only; press "Try again".',
    blocked:
      'Another tab with an older version holds the storage. Close the other Rollwright tabs, then press "Try again".',
    unknown: 'The last changes could not be kept. They are still in memory; press "Try again".',
    retry: 'Try again',
    opening: 'Opening your orders…',
  },
  orders: {
    title: 'Orders',
    summary: (orderCount: number, transferCount: number, copyCount: number, ways: Ways) =>
      `${orders(orderCount, ways)}, ${transfers(transferCount, ways)}, ${copies(copyCount, ways)}`,
    emptyTitle: 'No orders yet',
    empty:
      'Copy the day from a spreadsheet and paste it here, open a CSV file, or add an order by hand. Columns: order, transfer, width, height, count, due, may turn.',
    paste: 'Paste a table',
    open: 'Open a file',
    addOrder: 'Add an order',
    newOrder: 'New order',
    search: 'Search',
    sort: 'Sort by',
    sortings: { due: 'due date', name: 'name', state: 'state' },
    show: 'Show',
    showOpen: 'orders at work',
    showArchived: 'archived orders',
    noneFound: 'No order or transfer holds what you search for.',
    details: 'Details',
    duplicate: 'Again',
    duplicateNamed: (name: string) => `Order ${name} again`,
    again: (name: string) => `${name}, again`,
    archive: 'Archive',
    archiveNamed: (name: string) => `Archive ${name}`,
    unarchive: 'Back to work',
    unarchiveNamed: (name: string) => `Bring ${name} back to work`,
    inPrint: (name: string) =>
      `${name} has copies in print, so it stays. Take the run back to draft first, or archive the order.`,
    rush: 'rush',
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
    progress: 'Beyond the press',
    progresses: { open: 'still at work', packed: 'packed', collected: 'collected or shipped' },
    isRush: 'Rush',
    awaitsProof: 'Waits for a proof to be approved',
    awaitsBlanks: 'Waits for garments',
    grid: 'Garments and places',
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
    codeShape: 'A code has one to four letters or figures.',
    orderName: 'Order',
    due: 'Due',
    noDue: 'no date',
    dueOn: (day: string) => `due ${day}`,
    transfer: 'Transfer',
    width: 'Width',
    height: 'Height',
    count: 'Copies',
    mayTurn: 'May turn',
    artwork: 'Artwork',
    prints: 'Will print',
    addArtwork: (name: string) => `Choose an image for ${name}`,
    dropHere: 'Drop a PNG here',
    readingArtwork: 'Reading the image…',
    ppi: (ppi: string) => `${ppi} ppi`,
    trimmed: 'empty margin trimmed',
    countProblem: (most: string) => `The number of copies is a whole number from 1 to ${most}.`,
    nameEmpty: 'A name is needed, so that the copy can be found again.',
    keepProportions: 'Set height by artwork',
    takenOff: (count: number) =>
      count === 1
        ? 'One copy no longer fits where it lay and came off the film. Lay out again, or undo.'
        : `${count} copies no longer fit where they lay and came off the film. Lay out again, or undo.`,
    tooLarge: (reason: UnplacedReason) =>
      `This transfer ${unplaced[reason]}. Make it smaller, or choose other film.`,
    fileSays: (size: string) => `The file says ${size}, its empty margin trimmed.`,
    useFileSize: 'Use that size',
    otherProportions: 'The artwork has other proportions and would be stretched.',
    artworkRefused: (fileName: string, problem: ArtworkProblem) => `${fileName} ${artworkProblems[problem]}`,
    all: (placed: number, total: number, ways: Ways) =>
      placed === total
        ? `all ${whole(total, ways)} placed`
        : `${whole(placed, ways)} of ${whole(total, ways)} placed`,
    ambiguousDates: 'In dates such as 3/4/2026',
    dayFirst: 'the day comes first',
    monthFirst: 'the month comes first',
  },
  grade: {
    names: { good: 'good', check: 'check', poor: 'poor' } satisfies Record<Grade, string>,
    checking: 'checking',
    notChecked: 'not checked',
    look: (name: string, grade: string) => `Artwork of ${name}: ${grade}. See what will print`,
  },
  grid: {
    title: (name: string) => `${name}: garments and places`,
    hint: 'Each place is printed on every garment, at a width for its group of sizes. The transfers and their counts follow.',
    garments: 'Garments',
    style: 'Style',
    aStyle: 'T-shirt',
    colour: 'Colour',
    shade: 'Colour on screen',
    size: 'Size',
    howMany: 'How many',
    addGarment: 'Add a line',
    removeGarment: 'Remove this line',
    placements: 'Places',
    place: 'Place',
    design: 'Design',
    aDesign: 'design',
    addPlacement: 'Add a place',
    removePlacement: 'Remove this place',
    groups: { adult: 'adult', youth: 'youth', toddler: 'toddler' } satisfies Record<SizeGroup, string>,
    widthFor: (group: string) => `Width, ${group}`,
    adultHeight: 'Height, adult',
    printed: (width: string, count: number, sizes: string, ways: Ways) =>
      `${width} wide: ${copies(count, ways)} for ${sizes}`,
    tooWide: (width: string, size: string) =>
      `${width} is wider than a garment of size ${size} takes (common practice). Give its group a width of its own.`,
  },
  names: {
    title: (name: string) => `${name}: names and numbers`,
    hint: 'Paste one line a garment: name, number, size, in any order. Each becomes one transfer and one garment.',
    list: 'Names and numbers',
    style: 'Garment',
    row: (name: string, number: string, size: string) => [name, number, size].filter(Boolean).join(' · '),
    more: (count: number, ways: Ways) => `and ${whole(count, ways)} more`,
    bad: (line: number) => `Line ${line} has neither a name nor a number, so it is left out.`,
    add: (count: number, ways: Ways) => `Add ${transfers(count, ways)}`,
    added: (count: number, ways: Ways) => `${transfers(count, ways)} added, each with its garment.`,
  },
  table: {
    mapTitle: 'Columns that are not known',
    mapTo: (heading: string) => `“${heading}” is`,
    notUsed: 'not used',
    columns,
    title: 'Paste a table of orders',
    hint: 'One transfer a row: order, transfer, width, height, count, due, may turn. A heading row is recognised. Sizes may be written as 89 mm, 8,9 cm, 3.5in or 3 1/2".',
    label: 'Table',
    empty: 'Paste a table, or type rows separated by commas, semicolons or tabs.',
    size: 'Size',
    missingColumns: (missing: readonly Column[]) =>
      `The heading has no column for ${missing.map((column) => columns[column].toLowerCase()).join(', ')}. Add it, or leave the heading out and keep the order of columns named above.`,
    cellProblem,
    understood: (count: number, ways: Ways) => `${counted(count, 'row', 'rows', ways)} understood`,
    bad: (count: number, ways: Ways) => `${counted(count, 'row', 'rows', ways)} to mend`,
    badRow: (line: number) => `Row ${line}`,
    add: (count: number, ways: Ways) => `Add ${transfers(count, ways)}`,
    added: (count: number, bad: number, ways: Ways) =>
      bad === 0
        ? `${transfers(count, ways)} added.`
        : `${transfers(count, ways)} added. ${counted(bad, 'row', 'rows', ways)} left to mend are still in the box.`,
    unreadableFile: (name: string) =>
      `${name} is not a text table. Save the sheet as CSV (comma or semicolon separated) and open that.`,
  },
  film: {
    title: 'Film',
    firstRun: 'Run 1',
    sentence: (length: string, waste: string, cost: string, doneBy: string | null): SentencePart[] => [
      figure(length),
      say(' of film, '),
      figure(waste),
      say(' of it waste, '),
      figure(cost),
      ...(doneBy === null ? [] : [say(', done by '), figure(doneBy)]),
      say('.'),
    ],
    nothingLaid: 'Nothing lies on the film yet.',
    detailsOfSheets: (left: string, fewest: string, unavoidable: string) =>
      `${left} · fewest possible ${fewest} · ${unavoidable} no layout can avoid`,
    details: (left: string, shortest: string, unavoidable: string) =>
      `${left} · shortest possible ${shortest} · ${unavoidable} no layout can avoid`,
    sheets: (count: number, ways: Ways) => counted(count, 'sheet', 'sheets', ways),
    leftOfSheets: (count: number, ways: Ways) => `${counted(count, 'sheet', 'sheets', ways)} left`,
    straightCuts: (count: number, ways: Ways) =>
      `${counted(count, 'straight cut parts', 'straight cuts part', ways)} all copies`,
    notStraight:
      'Straight cuts alone no longer part these copies. Lay out again, or cut this film with scissors.',
    cleanOffcut: (size: string) => `${size} of the last sheet stays clean`,
    sheetFlag: (number: number) => `sheet ${number}`,
    selected: (count: number, ways: Ways) => `${copies(count, ways)} selected`,
    fixed: 'in print: stays where it is',
    moveTo: 'Move to',
    leftOnRoll: (left: string) => `${left} on the roll`,
    gapsAreWaste: 'Gaps and blank ends count as waste.',
    atMost: (share: string) => `at most ${share} longer than the shortest possible`,
    atMostSheets: (share: string) => `at most ${share} more sheets than the fewest possible`,
    offer: (less: string, cost: string) => `A layout that takes ${less} less is ready: it saves ${cost}.`,
    takeOffer: 'Take it',
    declineOffer: 'Not now',
    ordersNear: (share: string) => `an order’s copies lie within ${share} of the film, on average`,
    proven: 'proven: no layout is shorter',
    provenSheets: 'proven: no fewer sheets will do',
    stillLooking: 'still looking',
    looking: 'Looking for a shorter layout',
    nothingToLay: 'There is nothing to lay out: every copy lies on the film already, pinned or placed.',
    planRefused: 'A layout failed its check and was not used. What lay on the film is still there.',
    planFailed: 'The layout stopped for a reason of its own. What lay on the film is still there; try again.',
    uncuttable: (most: string) =>
      `No straight cuts can part this layout into spans of ${most} or less. Lay out again, or allow longer spans.`,
    leftOut: (name: string, count: number, reason: UnplacedReason, ways: Ways) =>
      `${name}: ${copies(count, ways)} left out, since it ${unplaced[reason]}.`,
    refused: (problem: Refusal, name: string, count: number, ways: Ways) =>
      count === 1
        ? `${name} stays where it was: ${refusal(problem, ways)}.`
        : `${copies(count, ways)} stay where they were: ${refusal(problem, ways)}.`,
    refusedShort: refusal,
    knifeFlag: (number: number, distance: string) => `knife ${number}, ${distance}`,
    filmLabel: (count: number, ways: Ways) => `Film with ${copies(count, ways)}`,
    filmKeys:
      'N selects the next copy, arrows move it by 1 mm, R turns it, P pins it, Delete takes it off. Question mark shows every key. The same copies are in the table below.',
    ordersOnFilm: 'Orders for this film',
    soonestFirst: 'soonest first',
    keysHint: '? shows every key',
    wait: (count: number, ways: Ways) => `${whole(count, ways)} wait for a place`,
    putBack: 'Put one on the film',
    putBackNamed: (name: string) => `Put one ${name} on the film`,
    noRoom: 'There is no room left for it on this film. Take something off, or choose a longer roll.',
    allPlaced: (count: number, ways: Ways) => `all ${whole(count, ways)} placed`,
    table: 'Copies as a table',
    tableHint:
      'Everything the film can do works here too. Positions are measured from the film’s near edge and from its front.',
    copy: 'Copy',
    size: 'Size',
    across: 'From edge',
    along: 'Along',
    turned: 'Turned',
    pinned: 'Pinned',
    overview: 'The whole run; the frame is what is in view',
    settings: 'Film and price',
    filmLine: (width: string, gap: string, span: string | null) =>
      span === null ? `${width} wide, gap ${gap}, not cut` : `${width} wide, gap ${gap}, spans up to ${span}`,
    emptyTitle: 'The film is empty',
    empty: 'Paste your orders first, then lay them out here.',
    toOrders: 'Go to the orders',
    zoom: 'Zoom',
    several: 'Select several',
    outlines: 'Outlines',
  },
  runs: {
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
    takes: 'Takes',
    takesAll: 'every copy that waits and is ready',
    takesChosen: 'only the copies chosen for it',
    nothingWaits: 'No copy waits for a run.',
    dueBy: 'Everything due by',
    takeDue: 'Take these',
    taken: (taken: string, all: string) => `${taken} of ${all} taken`,
    remove: 'Remove this run',
    lock: 'Lock for print',
    unlock: 'Back to draft',
    lockedNote: (name: string) =>
      `${name} is locked for print: later edits of orders and film do not change it. Undo begins anew here.`,
    printedTo: 'Printed to …',
    printedToHere: (length: string) => `printed to ${length}; only what lies behind is planned`,
    printedToHint: 'Copies that begin before it are done. The rest can be laid out anew behind it.',
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
    allPrinted: 'All printed',
    printedNote: (name: string) => `${name} is printed; its film is off the roll.`,
    stepBack: 'Step back to locked',
  },
  filmForm: {
    title: 'Film and price',
    firstFilm: 'Roll, 13 in',
    film: 'Film',
    newRoll: 'a new roll',
    newSheets: 'a new stack of sheets',
    preset: 'Trade size',
    ownSize: 'another width',
    presets: {
      'roll-13in': 'roll, 13 in (330 mm)',
      'roll-16in': 'roll, 16 in (406 mm)',
      'roll-22in': 'roll, 22 in (559 mm)',
      'roll-24in': 'roll, 24 in (610 mm)',
    },
    sheetPresets: {
      'sheet-a4': 'sheet, A4 (210 × 297 mm)',
      'sheet-a3': 'sheet, A3 (297 × 420 mm)',
      'sheet-13x19in': 'sheet, 13 × 19 in (330 × 483 mm)',
    },
    length: 'Length',
    sheetsLeft: 'Sheets left',
    sheetCount: 'Write how many sheets are left as a whole number.',
    sheetTooShort: 'The blank at the front and at the end leaves nothing of this length to print on.',
    cutting: 'Cut apart',
    tryAll: 'Try every film in stock',
    tried: (name: string, used: string, cost: string) => `${name}: ${used}, ${cost}`,
    triedLeftOut: (count: number, ways: Ways) => `${copies(count, ways)} would be left out`,
    compare: 'Compare in film',
    compareFirst: 'Mend the fields above first, then compare.',
    nothingToCompare: 'There is no copy to compare with yet.',
    compared: (used: string, more: string | null) => (more === null ? used : `${used}, ${more} more`),
    comparedQuickly: 'These are quick layouts; those looked for longer take less.',
    sheets: (count: number, ways: Ways) => counted(count, 'sheet', 'sheets', ways),
    cuttings: {
      free: 'with scissors, along any line',
      straight: 'straight from edge to edge, in any order',
      staged: 'straight, first across the film, then along',
    },
    together: 'Copies of one order',
    togethers: {
      any: 'wherever they take least film',
      near: 'near each other, for a little more film',
      apart: 'each order in a stretch of its own',
    },
    nearShare: 'Film this may cost, %',
    nearProblem: 'Write a percentage from 0 to 100, such as 2.',
    curl: 'Curl allowance',
    curlHint: 'more blank at the front, where a cut end curls up',
    jobBlank: 'Blank the printer adds per job',
    cutBlank: 'Blank per cut',
    cutBlankHint: 'from the print head to the knife; 0 if the printer feeds it back',
    unreached: 'End the printer cannot reach',
    noPrint: 'No-print stretches',
    noPrintHint: 'scuffs and splices from the leading edge, such as 1200 – 1260; 3000 – 3050',
    stretches: 'Write each stretch as from – to, with a semicolon between two: 1200 – 1260; 3000 – 3050.',
    tray: 'Powder tray, length',
    platen: 'Curing platen, length',
    pricePerSheet: 'Price of a sheet',
    name: 'Name',
    width: 'Width',
    left: 'Unprintable, near side',
    right: 'Unprintable, far side',
    lead: 'Blank at the front',
    tail: 'Blank at the end',
    lengthLeft: 'Left on the roll',
    gap: 'Gap between copies',
    gapHint: '5 mm for scissors, 8 mm for a trimmer (common practice)',
    spanMax: 'Longest span',
    spanHint: 'The shorter of powder tray and curing platen, less 20 mm. Leave empty if the roll is not cut.',
    price: 'Price',
    pricePer: 'for',
    currency: 'Currency',
    unit: 'Measures',
    mm: 'millimetres',
    in: 'inches',
    noPrintableWidth: 'The unprintable sides leave nothing of this width to print on.',
    rollTooShort: 'The blank at the front and at the end need more than is left on the roll.',
    spanTooShort: 'A span must be longer than the blank at the front and the gap.',
    nameEmpty: 'The film needs a name.',
  },
  lengthProblems,
  moneyProblems,
  dateProblems,
  commands: {
    layOut: 'Lay out',
    placeWaiting: 'Place what waits',
    stop: 'Stop',
    turn: 'Turn',
    pin: 'Pin here',
    unpin: 'Unpin',
    takeOff: 'Take off',
    alignAcross: 'Level at near edge',
    alignAlong: 'Level at front',
    selectOrder: 'Whole order',
    tighten: 'Tighten from here',
    selectAll: 'Select every copy',
    zoomToSelection: 'Zoom to selection',
    undo: 'Undo',
    redo: 'Redo',
    keys: 'Show every key',
    nudge: 'Move by 1 mm',
    nudgeFar: 'Move by 10 mm',
    nudgeFine: 'Move by 0.1 mm',
    nextCopy: 'Select the next copy',
    previousCopy: 'Select the copy before',
    selectNothing: 'Select nothing',
    zoomIn: 'Zoom in',
    zoomOut: 'Zoom out',
    wholeWidth: 'Whole width',
    wholeRun: 'Whole run',
    panOn: 'Further along the film',
    panBack: 'Back along the film',
    cutMap: 'Cut map',
    printImage: 'Print-ready image',
  },
  keys: {
    title: 'Every key',
    onFilm: 'while the film or the table of copies has the focus',
    everywhere: 'everywhere',
    mod: 'Ctrl',
    names: {
      ArrowRight: '→',
      ArrowLeft: '←',
      ArrowUp: '↑',
      ArrowDown: '↓',
      Delete: 'Delete',
      Backspace: 'Backspace',
      Enter: 'Enter',
      Escape: 'Esc',
      PageDown: 'Page down',
      PageUp: 'Page up',
    } as Record<string, string>,
  },
} as const;
