import { type LengthUnit, unitNamed, withoutAccents } from '../units';

export const columnNames = ['order', 'transfer', 'width', 'height', 'count', 'due', 'turn'] as const;

export type Column = (typeof columnNames)[number];

/** Without these there is nothing to print. */
export const neededColumns = ['transfer', 'width', 'height'] as const satisfies readonly Column[];

/** What columns are called in the tables of shops, in the languages of the app and without accents (common practice, no source). */
const synonyms: Record<Column, readonly string[]> = {
  order: [
    'order',
    'order name',
    'order no',
    'order number',
    'customer',
    'client',
    'job',
    'for',
    'pedido',
    'numero de pedido',
    'no de pedido',
    'nombre del pedido',
    'cliente',
    'trabajo',
    'para',
  ],
  transfer: [
    'transfer',
    'design',
    'artwork',
    'print',
    'item',
    'name',
    'motif',
    'description',
    'diseno',
    'arte',
    'estampado',
    'articulo',
    'nombre',
    'motivo',
    'descripcion',
  ],
  width: ['width', 'w', 'wide', 'printed width', 'ancho', 'anchura', 'ancho impreso'],
  height: ['height', 'h', 'high', 'length', 'printed height', 'alto', 'altura', 'largo', 'alto impreso'],
  count: [
    'count',
    'copies',
    'qty',
    'quantity',
    'how many',
    'pieces',
    'pcs',
    'number',
    'amount',
    'cantidad',
    'cant',
    'copias',
    'unidades',
    'uds',
    'piezas',
    'pzas',
    'pzs',
    'cuantas',
    'cuantos',
  ],
  due: [
    'due',
    'due date',
    'date',
    'deadline',
    'needed by',
    'due by',
    'by',
    'entrega',
    'fecha de entrega',
    'fecha',
    'plazo',
    'para el',
  ],
  turn: [
    'may turn',
    'turn',
    'turning',
    'may be turned',
    'rotate',
    'may rotate',
    'rotation',
    'se puede girar',
    'puede girar',
    'girar',
    'giro',
    'rotar',
    'rotacion',
  ],
};

const columnByName = new Map(
  columnNames.flatMap((column) => synonyms[column].map((name) => [name, column] as const)),
);

/** Where each column lies in a row, and the unit its heading gives to bare numbers. */
export interface Columns {
  readonly at: Partial<Record<Column, number>>;
  readonly units: { readonly width: LengthUnit | null; readonly height: LengthUnit | null };
  readonly isHeading: boolean;
}

/** No name of a column is longer. */
const LONGEST_NAME = 100;

/** `Width (mm)` is a width in millimetres. */
function headingOf(cell: string): { column: Column | undefined; unit: LengthUnit | null } {
  if (cell.length > LONGEST_NAME) return { column: undefined, unit: null };
  const plain = withoutAccents(cell)
    .trim()
    .toLowerCase()
    .replace(/[_.:]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const match = /^(.*?)\s*(?:[([/,]\s*|\b(?:in|en)\s+)(\S+?)[)\]]?$/.exec(plain);
  const unit = match ? unitNamed(match[2] ?? '') : null;
  const name = unit && match ? (match[1] ?? '').trim() : plain;
  return { column: columnByName.get(name), unit };
}

/** How a heading is remembered. */
export const headingKey = (cell: string): string => cell.trim().toLowerCase().replace(/\s+/g, ' ');

/**
 * Reads a first row as headings, if three or more of its cells are known, or none has a figure in it; otherwise the
 * columns come in the order named.
 * @param mapped what the shop has said of headings, by {@link headingKey}
 */
export function columnsOf(
  firstRow: readonly string[],
  mapped: Readonly<Record<string, string>> = {},
): Columns {
  const at: Partial<Record<Column, number>> = {};
  const units: { width: LengthUnit | null; height: LengthUnit | null } = { width: null, height: null };
  let found = 0;
  for (const [index, cell] of firstRow.entries()) {
    const { column: known, unit } = headingOf(cell);
    const column = columnNames.find((name) => name === mapped[headingKey(cell)]) ?? known;
    if (!column || at[column] !== undefined) continue;
    at[column] = index;
    found += 1;
    if (column === 'width' || column === 'height') units[column] = unit;
  }
  const words = firstRow.filter((cell) => cell.trim() !== '');
  const onlyWords = words.length >= 3 && words.every((cell) => !/\d/.test(cell));
  if (found >= 3 || onlyWords) return { at, units, isHeading: true };
  return {
    at: Object.fromEntries(columnNames.map((column, index) => [column, index])),
    units: { width: null, height: null },
    isHeading: false,
  };
}
