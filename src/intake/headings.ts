import { type LengthUnit, unitNamed, withoutAccents } from '../units';
import { LONGEST_NAME } from './heading-key';

export const columnNames = [
  'order',
  'number',
  'customer',
  'contact',
  'email',
  'transfer',
  'width',
  'height',
  'size',
  'count',
  'due',
  'turn',
  'fabric',
  'notes',
] as const;

export type Column = (typeof columnNames)[number];

/** What columns are called in the tables of shops, in the languages of the app and without accents (common practice, no source). */
const synonyms: Record<Column, readonly string[]> = {
  order: [
    'order',
    'order name',
    'job',
    'job name',
    'project',
    'for',
    'pedido',
    'nombre del pedido',
    'trabajo',
    'para',
  ],
  number: [
    'order no',
    'order number',
    'order id',
    'order ref',
    'order reference',
    'job no',
    'job number',
    'po',
    'po no',
    'po number',
    'purchase order',
    'numero de pedido',
    'no de pedido',
    'no pedido',
    'pedido no',
    'referencia del pedido',
  ],
  customer: [
    'customer',
    'customer name',
    'client',
    'client name',
    'company',
    'buyer',
    'shipping name',
    'billing name',
    'ship to',
    'ship to name',
    'recipient',
    'cliente',
    'nombre del cliente',
    'empresa',
    'comprador',
    'destinatario',
    'nombre de envio',
  ],
  contact: [
    'contact',
    'contact name',
    'contact person',
    'phone',
    'phone number',
    'telephone',
    'contacto',
    'persona de contacto',
    'telefono',
  ],
  email: [
    'email',
    'e mail',
    'mail',
    'email address',
    'e mail address',
    'customer email',
    'contact email',
    'correo',
    'correo electronico',
  ],
  transfer: [
    'transfer',
    'design',
    'artwork',
    'print',
    'item',
    'name',
    'title',
    'motif',
    'description',
    'product',
    'diseno',
    'arte',
    'estampado',
    'articulo',
    'producto',
    'nombre',
    'motivo',
    'descripcion',
  ],
  width: ['width', 'w', 'wide', 'ancho', 'anchura', 'ancho impreso'],
  height: ['height', 'h', 'high', 'length', 'alto', 'altura', 'largo', 'alto impreso'],
  size: [
    'size',
    'dimensions',
    'w x h',
    'width x height',
    'medida',
    'medidas',
    'tamano',
    'dimensiones',
    'ancho x alto',
    'medida impresa',
  ],
  count: [
    'count',
    'copies',
    'qty',
    'quantity',
    'how many',
    'pieces',
    'pcs',
    'units',
    'number',
    'amount',
    'order quantity',
    'order qty',
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
    'due on',
    'date',
    'date due',
    'date needed',
    'deadline',
    'need by',
    'needed by',
    'needed',
    'required by',
    'due by',
    'by',
    'in hands',
    'in hands date',
    'ship by',
    'ship date',
    'pickup date',
    'delivery date',
    'deliver by',
    'entrega',
    'fecha de entrega',
    'fecha de envio',
    'fecha limite',
    'fecha',
    'plazo',
    'para el',
    'enviar antes de',
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
  fabric: [
    'fabric',
    'material',
    'cloth',
    'textile',
    'fabric content',
    'fiber content',
    'fibre content',
    'composition',
    'fabric composition',
    'garment fabric',
    'garment material',
    'tejido',
    'tela',
    'composicion',
    'tejido de la prenda',
    'material de la prenda',
  ],
  notes: [
    'notes',
    'note',
    'comment',
    'comments',
    'remarks',
    'instructions',
    'special instructions',
    'order notes',
    'note to seller',
    'note from buyer',
    'customer note',
    'customer notes',
    'notas',
    'nota',
    'comentario',
    'comentarios',
    'observaciones',
    'instrucciones',
    'notas del pedido',
  ],
};

/** Names that tables also use for what is not ours, such as the date of an order: they yield to a column with a name of its own. */
const VAGUE: ReadonlySet<string> = new Set([
  'amount',
  'articulo',
  'by',
  'date',
  'descripcion',
  'description',
  'fecha',
  'for',
  'item',
  'length',
  'largo',
  'name',
  'nombre',
  'number',
  'para',
  'print',
  'product',
  'producto',
  'title',
]);

const NAMES: ReadonlySet<string> = new Set(['name', 'nombre']);

const columnByName = new Map(
  columnNames.flatMap((column) => synonyms[column].map((name) => [name, column] as const)),
);

/** What a heading may say a column is of, which means no more than the column alone: `Print width`, `Lineitem quantity`. */
const OF_WHAT =
  /^(?:line ?item|item|print|printed|finished|design|artwork|art|transfer|product) | (?:de la|de los|del|de|of the|of)(?: (?:linea|articulos?|producto|impresion|estampado|diseno|arte|transfer|line|item|print|design|artwork|product))$/;

/** The columns that say something of a transfer: a date of the artwork is no due date. */
const OF_TRANSFER: ReadonlySet<Column> = new Set([
  'transfer',
  'width',
  'height',
  'size',
  'count',
  'turn',
  'notes',
]);

function columnNamed(name: string): Column | undefined {
  const known = columnByName.get(name);
  if (known !== undefined) return known;
  const ofTransfer = columnByName.get(name.replace(OF_WHAT, ''));
  return ofTransfer !== undefined && OF_TRANSFER.has(ofTransfer) ? ofTransfer : undefined;
}

/** What a heading says by itself. */
interface HeadingTold {
  readonly column: Column | undefined;
  /** What it gives to bare numbers. */
  readonly unit: LengthUnit | null;
  /** Whether it might as well head something else. */
  readonly isVague: boolean;
  /** What it means where another column is what it names first: a `Name` beside a `Line item name` is the order’s number. */
  readonly otherwise: 'number' | null;
}

/** The column that a heading names, and the unit it gives to bare numbers: `Width (mm)` is a width in millimetres. */
export function headingOf(cell: string): HeadingTold {
  if (cell.length > LONGEST_NAME) return { column: undefined, unit: null, isVague: false, otherwise: null };
  const plain = withoutAccents(cell)
    .toLowerCase()
    .replace(/#|n\.?\s*[º°]/g, ' no ')
    .replace(/×/g, ' x ')
    .replace(/[_.:?*-]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const match = /^(.*?)\s*(?:[([/,]\s*|\b(?:in|en)\s+|\s)(\S+?)[)\]]?$/.exec(plain);
  const unit = match ? unitNamed(match[2] ?? '') : null;
  const name = unit && match ? (match[1] ?? '').trim() : plain;
  return {
    column: columnNamed(name),
    unit,
    isVague: VAGUE.has(name),
    otherwise: NAMES.has(name) ? 'number' : null,
  };
}
