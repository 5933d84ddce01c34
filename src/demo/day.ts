import { addOrder, addTransfer, type BookDraft, type EditContext } from '../editing';
import type { Book, Id } from '../model';
import { fromMm, fromUnit, type LocalDate, toInches } from '../units';
import { type DrawingName, drawings } from './drawings';

interface DemoTransfer {
  readonly name: string;
  readonly drawing: DrawingName;
  /** Printed width in millimetres; the height follows from the drawing. */
  readonly width: number;
  readonly count: number;
  readonly fixed?: true;
}

interface DemoOrder {
  readonly name: string;
  readonly code: string;
  /** Days from today. */
  readonly dueIn: number;
  readonly transfers: readonly DemoTransfer[];
}

const orders: readonly DemoOrder[] = [
  {
    name: 'Harbour Rowing',
    code: 'HR',
    dueIn: 0,
    transfers: [
      { name: 'Crest, left chest', drawing: 'crossedOars', width: 89, count: 9 },
      { name: 'Row the Bay, back', drawing: 'rowingEight', width: 250, count: 4 },
      { name: 'Sleeve line', drawing: 'rowingSleeve', width: 120, count: 6 },
      { name: 'Neck tag M', drawing: 'rowingTag', width: 57, count: 6 },
    ],
  },
  {
    name: 'Corner Oven bakery',
    code: 'CO',
    dueIn: 0,
    transfers: [
      { name: 'Round badge, apron', drawing: 'bakery', width: 140, count: 4 },
      { name: 'Baked at four, back', drawing: 'loafLine', width: 240, count: 3 },
      { name: 'Sleeve line', drawing: 'bakerySleeve', width: 110, count: 4 },
    ],
  },
  {
    name: 'Mill Lane cafe',
    code: 'ML',
    dueIn: 1,
    transfers: [
      { name: 'Cup, tote bag', drawing: 'coffeeCup', width: 190, count: 4, fixed: true },
      { name: 'One more cup, chest', drawing: 'oneMoreCup', width: 95, count: 5 },
    ],
  },
  {
    name: 'Summer street fair',
    code: 'SF',
    dueIn: 2,
    transfers: [
      { name: 'Star, front', drawing: 'fairStar', width: 216, count: 4 },
      { name: 'Star, left chest', drawing: 'fairStar', width: 80, count: 6 },
      { name: 'Bunting, back', drawing: 'bunting', width: 279, count: 3, fixed: true },
      { name: 'Sleeve line', drawing: 'fairSleeve', width: 115, count: 4 },
      { name: 'Crew, back', drawing: 'crewName', width: 200, count: 3 },
    ],
  },
  {
    name: 'Northgate cycling',
    code: 'NC',
    dueIn: 2,
    transfers: [
      { name: 'Wheel, cap', drawing: 'wheel', width: 58, count: 8 },
      { name: 'Hill climb, front', drawing: 'hillClimb', width: 260, count: 3 },
      { name: 'Neck tag L', drawing: 'cyclingTag', width: 57, count: 4 },
    ],
  },
  {
    name: 'Otters swim team',
    code: 'OS',
    dueIn: 3,
    transfers: [
      { name: 'Otter, left chest', drawing: 'otter', width: 84, count: 6 },
      { name: 'Coach Finn, back', drawing: 'otterName', width: 230, count: 1 },
      { name: 'Number 7', drawing: 'number7', width: 110, count: 1 },
      { name: 'Number 12', drawing: 'number12', width: 175, count: 1 },
      { name: 'Number 23', drawing: 'number23', width: 175, count: 1 },
    ],
  },
  {
    name: 'Green Thumb allotments',
    code: 'GT',
    dueIn: 5,
    transfers: [
      { name: 'Seedling, chest', drawing: 'seedling', width: 76, count: 5 },
      { name: 'Plot line, sleeve', drawing: 'plotLine', width: 105, count: 3 },
    ],
  },
  {
    name: 'Willow class 4',
    code: 'WC',
    dueIn: 6,
    transfers: [
      { name: 'Hand prints, youth front', drawing: 'handPrints', width: 203, count: 4 },
      { name: 'Neck tag XS', drawing: 'classTag', width: 48, count: 4 },
    ],
  },
  {
    name: 'Jazz on the green',
    code: 'JG',
    dueIn: 8,
    transfers: [
      { name: 'Trumpet, front', drawing: 'trumpet', width: 254, count: 3 },
      { name: 'Six till late, sleeve', drawing: 'jazzSleeve', width: 100, count: 3 },
    ],
  },
];

/** A size as this shop would have typed it: to 0.1 mm or 0.01 in. */
function sizeIn(unit: 'mm' | 'in', mm: number) {
  const amount = unit === 'mm' ? Math.round(10 * mm) / 10 : Math.round(100 * toInches(fromMm(mm))) / 100;
  return { length: fromUnit(amount, unit), typed: `${amount} ${unit}` };
}

/** Adds the demo day: invented orders of clubs, cafes and fairs, due from today on. */
export function addDemoDay(
  draft: BookDraft,
  { dayFrom, unit }: { dayFrom: (days: number) => LocalDate; unit: 'mm' | 'in' },
  context: EditContext,
): void {
  for (const { name, code, dueIn, transfers } of orders) {
    const order = addOrder(draft, { name, code, due: dayFrom(dueIn) }, context);
    for (const { name: title, drawing, width, count, fixed } of transfers) {
      const board = drawings[drawing];
      const across = sizeIn(unit, width);
      const down = sizeIn(unit, (width * board.height) / board.width);
      const fields = {
        name: title,
        width: across.length,
        height: down.length,
        typed: { width: across.typed, height: down.typed },
        turn: fixed ? ('fixed' as const) : ('quarter' as const),
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
    const known = day?.transfers.find(({ name }) => name === transfer.name);
    if (!known || transfer.artwork !== null) return [];
    return [{ transfer: transfer.id, drawing: known.drawing, widthMm: known.width }];
  });
}
