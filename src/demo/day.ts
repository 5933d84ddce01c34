import { addOrder, addTransfer, type BookDraft, type EditContext } from '../editing';
import type { Book, Id } from '../model';
import { type Fabric, fromUnit, type LocalDate, type Micrometres, toMm } from '../units';
import { boardOf, type DrawingName } from './drawings/boards';

interface DemoTransfer {
  /** What it is called stands in the words, under this name. */
  readonly name: string;
  readonly drawing: DrawingName;
  /** Printed width as a shop of either unit orders it, another for each of an order; the height follows from the drawing. */
  readonly width: Readonly<Record<ShopUnit, number>>;
  readonly count: number;
  readonly fixed?: true;
  /** What it goes on, if that is not what the rest of its order does. */
  readonly fabric?: Fabric;
}

interface DemoOrder {
  /** Its code; what it is called stands in the words, under it. */
  readonly code: string;
  /** Days from today. */
  readonly dueIn: number;
  /** What most of it goes on. */
  readonly fabric: Fabric;
  readonly transfers: readonly DemoTransfer[];
}

const orders = [
  {
    code: 'HR',
    dueIn: 0,
    fabric: 'cotton',
    transfers: [
      { name: 'crestChest', drawing: 'crossedOars', width: { mm: 90, in: 3.5 }, count: 9 },
      { name: 'rowBack', drawing: 'rowingEight', width: { mm: 250, in: 11 }, count: 4 },
      { name: 'sleeveLine', drawing: 'rowingSleeve', width: { mm: 120, in: 5.25 }, count: 6 },
      { name: 'neckTagM', drawing: 'rowingTag', width: { mm: 60, in: 2.5 }, count: 6 },
    ],
  },
  {
    code: 'CO',
    dueIn: 0,
    fabric: 'blend',
    transfers: [
      { name: 'badgeApron', drawing: 'bakery', width: { mm: 140, in: 5.5 }, count: 4 },
      { name: 'bakedBack', drawing: 'loafLine', width: { mm: 240, in: 9.25 }, count: 3 },
      { name: 'sleeveLine', drawing: 'bakerySleeve', width: { mm: 110, in: 4.375 }, count: 4 },
    ],
  },
  {
    code: 'ML',
    dueIn: 1,
    fabric: 'cotton',
    transfers: [
      { name: 'cupTote', drawing: 'coffeeCup', width: { mm: 190, in: 7.5 }, count: 4, fixed: true },
      { name: 'cupChest', drawing: 'oneMoreCup', width: { mm: 95, in: 3.75 }, count: 5 },
    ],
  },
  {
    code: 'SF',
    dueIn: 2,
    fabric: 'cotton',
    transfers: [
      { name: 'starFront', drawing: 'fairStar', width: { mm: 215, in: 8.5 }, count: 4 },
      { name: 'starChest', drawing: 'fairStar', width: { mm: 80, in: 3.25 }, count: 6 },
      { name: 'buntingBack', drawing: 'bunting', width: { mm: 275, in: 10.875 }, count: 3, fixed: true },
      { name: 'sleeveLine', drawing: 'fairSleeve', width: { mm: 115, in: 4.375 }, count: 4 },
      { name: 'crewBack', drawing: 'crewName', width: { mm: 200, in: 7.5 }, count: 3 },
    ],
  },
  {
    code: 'NC',
    dueIn: 2,
    fabric: 'cotton',
    transfers: [
      { name: 'wheelCap', drawing: 'wheel', width: { mm: 55, in: 2.25 }, count: 8 },
      { name: 'hillFront', drawing: 'hillClimb', width: { mm: 260, in: 10 }, count: 3 },
      { name: 'neckTagL', drawing: 'cyclingTag', width: { mm: 60, in: 2.5 }, count: 4 },
    ],
  },
  {
    code: 'OS',
    dueIn: 3,
    fabric: 'polyester',
    transfers: [
      { name: 'otterChest', drawing: 'otter', width: { mm: 85, in: 3.25 }, count: 6 },
      { name: 'coachBack', drawing: 'otterName', width: { mm: 230, in: 8.75 }, count: 1, fabric: 'cotton' },
      { name: 'number7', drawing: 'number7', width: { mm: 110, in: 4.25 }, count: 1 },
      { name: 'number12', drawing: 'number12', width: { mm: 175, in: 7 }, count: 1 },
      { name: 'number23', drawing: 'number23', width: { mm: 170, in: 6.5 }, count: 1 },
    ],
  },
  {
    code: 'GT',
    dueIn: 5,
    fabric: 'cotton',
    transfers: [
      { name: 'seedlingChest', drawing: 'seedling', width: { mm: 75, in: 3 }, count: 5 },
      { name: 'plotSleeve', drawing: 'plotLine', width: { mm: 105, in: 3.5 }, count: 3 },
    ],
  },
  {
    code: 'WC',
    dueIn: 6,
    fabric: 'cotton',
    transfers: [
      { name: 'handsFront', drawing: 'handPrints', width: { mm: 205, in: 8.25 }, count: 4 },
      { name: 'neckTagXS', drawing: 'classTag', width: { mm: 50, in: 1.875 }, count: 4 },
    ],
  },
  {
    code: 'JG',
    dueIn: 8,
    fabric: 'cotton',
    transfers: [
      { name: 'trumpetFront', drawing: 'trumpet', width: { mm: 250, in: 10 }, count: 3 },
      { name: 'jazzSleeve', drawing: 'jazzSleeve', width: { mm: 100, in: 3.5 }, count: 3 },
    ],
  },
] as const satisfies readonly DemoOrder[];

type Day = (typeof orders)[number];

/** What the orders and transfers of the demo day are called. */
export interface DemoWords {
  readonly orders: Readonly<Record<Day['code'], string>>;
  readonly transfers: Readonly<Record<Day['transfers'][number]['name'], string>>;
}

type ShopUnit = DemoShop['unit'];

/** What a shop measures sizes to: tenths of a millimetre, sixteenths of an inch. */
const parts: Readonly<Record<ShopUnit, number>> = { mm: 10, in: 16 };

/** The printed size of a transfer in the shop's unit, as its tape has it. */
function sizeOf({ width, drawing }: DemoTransfer, unit: ShopUnit): Record<'width' | 'height', Micrometres> {
  const board = boardOf[drawing];
  const height = (width[unit] * board.height) / board.width;
  return {
    width: fromUnit(width[unit], unit),
    height: fromUnit(Math.round(parts[unit] * height) / parts[unit], unit),
  };
}

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
  for (const { code, dueIn, fabric, transfers } of orders) {
    const order = addOrder(draft, { name: words.orders[code], code, due: dayFrom(dueIn) }, context);
    for (const each of transfers) {
      const { width, height } = sizeOf(each, unit);
      const fields = {
        name: words.transfers[each.name],
        width,
        height,
        typed: { width: typed(width), height: typed(height) },
        turn: 'fixed' in each ? ('fixed' as const) : ('quarter' as const),
        fabric: 'fabric' in each ? each.fabric : fabric,
      };
      addTransfer(draft, order, fields, each.count, context);
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
      (['mm', 'in'] as const).some((unit) => transfer.width === fromUnit(width[unit], unit)),
    );
    if (!known || transfer.artwork !== null) return [];
    return [{ transfer: transfer.id, drawing: known.drawing, widthMm: toMm(transfer.width) }];
  });
}
