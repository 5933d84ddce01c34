import { addOrder, addTransfer, type BookDraft, type EditContext } from '../editing';
import type { Book, Id } from '../model';
import { fromMm, fromUnit, type LocalDate, type Micrometres, toInches } from '../units';
import { boardOf, type DrawingName } from './drawings/boards';

interface DemoTransfer {
  /** What it is called stands in the words, under this name. */
  readonly name: string;
  readonly drawing: DrawingName;
  /** Printed width in millimetres, another for each of an order; the height follows from the drawing. */
  readonly width: number;
  readonly count: number;
  readonly fixed?: true;
}

interface DemoOrder {
  /** Its code; what it is called stands in the words, under it. */
  readonly code: string;
  /** Days from today. */
  readonly dueIn: number;
  readonly transfers: readonly DemoTransfer[];
}

const orders = [
  {
    code: 'HR',
    dueIn: 0,
    transfers: [
      { name: 'crestChest', drawing: 'crossedOars', width: 89, count: 9 },
      { name: 'rowBack', drawing: 'rowingEight', width: 250, count: 4 },
      { name: 'sleeveLine', drawing: 'rowingSleeve', width: 120, count: 6 },
      { name: 'neckTagM', drawing: 'rowingTag', width: 57, count: 6 },
    ],
  },
  {
    code: 'CO',
    dueIn: 0,
    transfers: [
      { name: 'badgeApron', drawing: 'bakery', width: 140, count: 4 },
      { name: 'bakedBack', drawing: 'loafLine', width: 240, count: 3 },
      { name: 'sleeveLine', drawing: 'bakerySleeve', width: 110, count: 4 },
    ],
  },
  {
    code: 'ML',
    dueIn: 1,
    transfers: [
      { name: 'cupTote', drawing: 'coffeeCup', width: 190, count: 4, fixed: true },
      { name: 'cupChest', drawing: 'oneMoreCup', width: 95, count: 5 },
    ],
  },
  {
    code: 'SF',
    dueIn: 2,
    transfers: [
      { name: 'starFront', drawing: 'fairStar', width: 216, count: 4 },
      { name: 'starChest', drawing: 'fairStar', width: 80, count: 6 },
      { name: 'buntingBack', drawing: 'bunting', width: 279, count: 3, fixed: true },
      { name: 'sleeveLine', drawing: 'fairSleeve', width: 115, count: 4 },
      { name: 'crewBack', drawing: 'crewName', width: 200, count: 3 },
    ],
  },
  {
    code: 'NC',
    dueIn: 2,
    transfers: [
      { name: 'wheelCap', drawing: 'wheel', width: 58, count: 8 },
      { name: 'hillFront', drawing: 'hillClimb', width: 260, count: 3 },
      { name: 'neckTagL', drawing: 'cyclingTag', width: 57, count: 4 },
    ],
  },
  {
    code: 'OS',
    dueIn: 3,
    transfers: [
      { name: 'otterChest', drawing: 'otter', width: 84, count: 6 },
      { name: 'coachBack', drawing: 'otterName', width: 230, count: 1 },
      { name: 'number7', drawing: 'number7', width: 110, count: 1 },
      { name: 'number12', drawing: 'number12', width: 175, count: 1 },
      { name: 'number23', drawing: 'number23', width: 170, count: 1 },
    ],
  },
  {
    code: 'GT',
    dueIn: 5,
    transfers: [
      { name: 'seedlingChest', drawing: 'seedling', width: 76, count: 5 },
      { name: 'plotSleeve', drawing: 'plotLine', width: 105, count: 3 },
    ],
  },
  {
    code: 'WC',
    dueIn: 6,
    transfers: [
      { name: 'handsFront', drawing: 'handPrints', width: 203, count: 4 },
      { name: 'neckTagXS', drawing: 'classTag', width: 48, count: 4 },
    ],
  },
  {
    code: 'JG',
    dueIn: 8,
    transfers: [
      { name: 'trumpetFront', drawing: 'trumpet', width: 254, count: 3 },
      { name: 'jazzSleeve', drawing: 'jazzSleeve', width: 100, count: 3 },
    ],
  },
] as const satisfies readonly DemoOrder[];

type Day = (typeof orders)[number];

/** What the orders and transfers of the demo day are called. */
export interface DemoWords {
  readonly orders: Readonly<Record<Day['code'], string>>;
  readonly transfers: Readonly<Record<Day['transfers'][number]['name'], string>>;
}

/** A size as this shop would have typed it: to 0.1 mm or 0.01 in. */
const sizeIn = (unit: 'mm' | 'in', mm: number): Micrometres =>
  fromUnit(unit === 'mm' ? Math.round(10 * mm) / 10 : Math.round(100 * toInches(fromMm(mm))) / 100, unit);

/** How the shop that shows the demo day counts, measures and speaks. */
export interface DemoShop {
  readonly dayFrom: (days: number) => LocalDate;
  readonly unit: 'mm' | 'in';
  readonly words: DemoWords;
  /** A size as a person of this shop types it. */
  readonly typed: (length: Micrometres) => string;
}

/** Adds the demo day: invented orders of clubs, cafes and fairs, due from today on. */
export function addDemoDay(
  draft: BookDraft,
  { dayFrom, unit, words, typed }: DemoShop,
  context: EditContext,
): void {
  for (const { code, dueIn, transfers } of orders) {
    const order = addOrder(draft, { name: words.orders[code], code, due: dayFrom(dueIn) }, context);
    for (const { name, drawing, width, count, ...how } of transfers) {
      const board = boardOf[drawing];
      const across = sizeIn(unit, width);
      const down = sizeIn(unit, (width * board.height) / board.width);
      const fields = {
        name: words.transfers[name],
        width: across,
        height: down,
        typed: { width: typed(across), height: typed(down) },
        turn: 'fixed' in how ? ('fixed' as const) : ('quarter' as const),
      };
      addTransfer(draft, order, fields, count, context);
    }
  }
}

/** A transfer of the demo day that still lacks its artwork. */
export interface MissingArtwork {
  readonly transfer: Id<'transfer'>;
  readonly drawing: DrawingName;
  readonly widthMm: number;
}

/** What of the demo day is still to be drawn: the first visit may have ended in the middle of it. */
export function missingArtwork(book: Book): MissingArtwork[] {
  return Object.values(book.transfer).flatMap((transfer) => {
    const day = orders.find(({ code }) => code === book.order[transfer.order]?.code);
    const known = day?.transfers.find(({ width }) =>
      (['mm', 'in'] as const).some((unit) => transfer.width === sizeIn(unit, width)),
    );
    if (!known || transfer.artwork !== null) return [];
    return [{ transfer: transfer.id, drawing: known.drawing, widthMm: known.width }];
  });
}
