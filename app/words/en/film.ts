import type { Refusal, Untaken, Wish } from '../../../src/layout';
import type { UnplacedReason } from '../../../src/packing';
import { counted, type Moment, type Ways, whole } from '../format';
import { figure, opening, type SentencePart, say, stopAfter } from '../format/sentence';
import { copies } from './counts';
import { refusal, unplaced } from './refusals';
import { when } from './when';

export const film = {
  title: 'Film',
  firstRun: 'Run 1',
  sentence: (length: string, waste: string, cost: string, doneBy: Moment | null): SentencePart[] => [
    figure(length),
    say(' of film, '),
    figure(waste),
    say(' of it waste, '),
    opening(cost),
    ...(doneBy === null
      ? [say(' of film.')]
      : [say(' of film, done by '), figure(when(doneBy)), stopAfter(doneBy.time)]),
  ],
  nothingLaid: 'Nothing lies on the film yet.',
  detailsOfSheets: (left: string, fewest: string, unavoidable: string) =>
    `${left} · fewest possible ${fewest} · ${unavoidable} no layout can avoid`,
  details: (left: string, shortest: string, unavoidable: string) =>
    `${left} · shortest possible ${shortest} · ${unavoidable} no layout can avoid`,
  detailsByOutlines: (left: string, least: string) => `${left} · no layout takes less than ${least}`,
  sheets: (count: number, ways: Ways) => counted(count, 'sheet', 'sheets', ways),
  leftOfSheets: (count: number, ways: Ways) => `${counted(count, 'sheet', 'sheets', ways)} left`,
  straightCuts: (count: number, ways: Ways) =>
    `${counted(count, 'straight cut parts', 'straight cuts part', ways)} all copies`,
  boxesTogether:
    'Orders lie near or apart, or by due date: such layouts go by boxes. Film settings tell which.',
  layByOutlines: (count: number, ways: Ways) =>
    `${copies(count, ways)} keep their boxes: no outline of the artwork is known.`,
  broken: {
    'not-straight':
      'Straight cuts alone no longer part these copies. Lay out again, or cut this film with scissors.',
    'not-staged':
      'Cuts across, along and across again no longer part these copies. Lay out again, or allow any order of cuts.',
    'not-apart': 'Orders no longer lie apart: some share a stretch of film. Lay out again to part them.',
    'not-by-due':
      'Some copies lie behind others that are due later. Lay out again to put what is due soonest first.',
  } satisfies Record<Wish, string>,
  cleanOffcut: (size: string) => `${size} of the last sheet stays clean`,
  sheetFlag: (number: number) => `sheet ${number}`,
  selected: (count: number, ways: Ways) => `${copies(count, ways)} selected`,
  chosen: (name: string, size: string, across: string, along: string) =>
    `${name}, ${size}, ${across} from the edge, ${along} along`,
  fixed: 'in print: stays where it is',
  moveTo: 'Move to',
  leftOnRoll: (left: string) => `${left} left on the roll after it`,
  gapsAreWaste: 'Gaps and margins count as waste.',
  atMost: (share: string) => `at most ${share} longer than the shortest possible`,
  covered: (share: string) =>
    `copies cover ${share} of the film; the shortest layout by outlines is not known`,
  atMostSheets: (more: number, ways: Ways) =>
    `at most ${counted(more, 'sheet', 'sheets', ways)} more than the fewest possible`,
  offer: (less: string, cost: string) => `A layout that takes ${less} less is ready: it saves ${cost}.`,
  takeOffer: 'Take it',
  declineOffer: 'Not now',
  ordersNear: (share: string) => `an order’s copies lie within ${share} of the film, on average`,
  proven: 'proven: no layout is shorter',
  provenSheets: 'proven: no fewer sheets will do',
  stillLooking: 'still looking',
  looking: 'Looking for a shorter layout',
  stays: 'No layout that takes less film was found, so what lay there stays.',
  staysInOrder: 'No layout that takes less film was found. What is due soonest came to the front.',
  nothingToLay: ({ elsewhere, unchosen, unready }: Untaken, ways: Ways): string => {
    const reasons = [
      ...(elsewhere > 0 ? [`${whole(elsewhere, ways)} chosen for other runs`] : []),
      ...(unchosen > 0 ? [`${whole(unchosen, ways)} not chosen for this run`] : []),
      ...(unready > 0 ? [`${whole(unready, ways)} awaiting proof or blanks`] : []),
    ];
    return reasons.length === 0
      ? 'There is nothing to lay out: every copy lies on the film already, pinned or placed.'
      : `There is nothing for this run to lay out. Copies that wait: ${reasons.join(', ')}.`;
  },
  chosenElsewhere: (name: string) =>
    `Every copy of ${name} that waits is chosen for another run. “Choose copies” there gives it back.`,
  planRefused: 'A layout failed its check and was not used. What lay on the film is still there.',
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
  filmKeys: (step: string) =>
    `N selects the next copy, arrows move it by ${step}, R turns it, P pins it, Delete takes it off. Full stop and comma turn it by 15°. Question mark shows every key. The same copies are in the table below.`,
  ordersOnFilm: 'Orders for this film',
  soonestFirst: 'rush first, then soonest due',
  keysHint: '? shows every key',
  wait: (count: number, ways: Ways) => `${whole(count, ways)} wait for a place`,
  putBack: 'Put one on the film',
  putBackNamed: (name: string) => `Put one ${name} on the film`,
  noRoom: 'There is no room left for it on this film. Take something off, or choose a longer roll.',
  printFirst: 'Print first',
  printFirstNamed: (name: string) => `Print ${name} first`,
  broughtFirst: (name: string, placed: number, ways: Ways) =>
    `${name} is a rush order now: ${copies(placed, ways)} lie as near to the front as they go.`,
  noRoomForRush: (name: string, waiting: number, ways: Ways) =>
    `${copies(waiting, ways)} of ${name} found no room on this film. They wait for this run.`,
  moreOrders: 'more',
  rushPriced: (name: string) => `The price of ${name} now bears the surcharge for a rush.`,
  duesWorking: 'Working out when each order is done …',
  lateBy: (time: string) => `${time} late`,
  late: (orders: string) => `Late: ${orders}.`,
  rushDone: (order: string, at: Moment) => `${order} (rush) done by ${when(at)}`,
  allInTime: 'No order on this film is late.',
  inTimeBut: (orders: number, ways: Ways) =>
    `What lies on this film is in time; ${counted(orders, 'order has', 'orders have', ways)} copies that are not on it.`,
  allPlaced: (count: number, ways: Ways) => `all ${whole(count, ways)} placed`,
  table: 'Copies as a table',
  tableHint:
    'Everything the film can do works here too. Positions are measured from the film’s near edge and from its front.',
  copy: 'Copy',
  size: 'Size',
  across: 'From edge',
  along: 'Along',
  turned: 'Turned by',
  angleProblems: {
    empty: 'Type degrees, such as 30.',
    unreadable: 'These are no degrees. Type a number, such as 30 or 22.5.',
  },
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
  firstFilm: { mm: 'Roll, 330 mm', in: 'Roll, 13 in' },
  tooWideFilm: (width: string, takes: string, machine: string) =>
    `This film is ${width} wide, and ${machine === '' ? 'what it is cured on' : `“${machine}”`} takes ${takes} at most. Cure it in parts, or choose narrower film.`,
  tooLargeSpan: (span: number, length: string, ways: Ways) =>
    `Span ${whole(span + 1, ways)} (${length}) is larger than what it is cured on. Allow shorter spans, or cure it in parts.`,
  capOnFlat: (code: string, name: string) =>
    `${code} ${name} goes on caps, which no flat platen takes. Say in “Equipment” if there is a platen for caps.`,
  tooLargeTransfer: (code: string, name: string) =>
    `${code} ${name} is larger than the press. It has to be pressed in two goes, or made smaller.`,
  costOpens: (cost: string) => `${cost}: what the run costs`,
  fromShelf: (
    drawn: readonly { readonly name: string; readonly count: number }[],
    ways: Pick<Ways, 'locale'>,
  ) =>
    `From the shelf, cured already: ${drawn.map(({ name, count }) => `${counted(count, 'copy', 'copies', ways)} of ${name}`).join(', ')}. They need no film; undo puts them back.`,
};
