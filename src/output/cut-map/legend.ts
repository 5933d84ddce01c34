import type { Tally } from '../../cutting';
import type { Micrometres } from '../../units';
import { type Box, box, line, type Mark, PT, text } from './marks';
import { CAP, type Measure, shortened, wrapped } from './text';
import type { CutMapWords } from './words';

const HEAD = 7.5 * PT;
const BODY = 10 * PT;
const NOTE = 8.5 * PT;
const PITCH = { least: 4.5, most: 7 };
const CODE = 12;
/** How far an order's transfers stand in from its code. */
const INDENT = 3;
const PICTURE = 9;
/** A name needs as much beside a picture. */
const NAME = 14;
const FIGURES = 11;

/** What heads an order's transfers: its code, its name, and the due day that stands behind it. */
interface OrderLine {
  readonly kind: 'order';
  readonly code: string;
  readonly name: string;
  readonly due: string;
}

/** A transfer, and how many of it are counted on this page. */
interface TransferLine {
  readonly kind: 'transfer';
  readonly tally: Tally;
  readonly here: number;
}

export type LegendLine = OrderLine | TransferLine;

/** The transfers counted, each order's under its name. */
export const legendLines = (
  transfers: readonly Omit<TransferLine, 'kind'>[],
  told: (order: Tally['order']) => Pick<OrderLine, 'name' | 'due'>,
): LegendLine[] =>
  transfers.flatMap(({ tally, here }, index): LegendLine[] => [
    ...(transfers[index - 1]?.tally.order.id === tally.order.id
      ? []
      : [{ kind: 'order', code: tally.order.code, ...told(tally.order) } as const]),
    { kind: 'transfer', tally, here },
  ]);

/** A span whose end is on this page. */
interface SpanRow {
  readonly number: number;
  readonly copies: number;
  /** Of a span; `null` for a sheet. */
  readonly length: Micrometres | null;
  readonly orders: readonly { readonly code: string; readonly count: number }[];
}

export interface LegendContent {
  readonly lines: readonly LegendLine[];
  /** Of all copies, here and in all. */
  readonly copies: { readonly here: number; readonly all: number };
  readonly totals: readonly string[];
  readonly spans: readonly SpanRow[];
  /** Is there no other page, so that the counts here are the counts in all? */
  readonly single: boolean;
  readonly warning: string | null;
}

export interface Type {
  readonly words: CutMapWords;
  /** Artwork that a picture is at hand of. */
  readonly pictures: ReadonlySet<string>;
  readonly measure: Measure;
}

const baseline = (top: number, pitch: number, size: number) => top + (pitch + size * CAP) / 2;

/** One line of the legend: an order, or one of its transfers with its size, its copies' numbers and the counts at the right. */
export const legendLine = (at: Box, line: LegendLine, single: boolean, type: Type): Mark[] =>
  line.kind === 'order' ? orderLine(at, line, type) : transferLine(at, line, single, type);

function orderLine({ x, y, width, height }: Box, { code, name, due }: OrderLine, { measure }: Type): Mark[] {
  const size = Math.min(BODY, height * 0.62);
  const base = baseline(y, height, size);
  const bold = { size, weight: 700 } as const;
  // A long name gives way to the day.
  const room = width - CODE - measure(due, size, 700);
  return [
    text(x, base, shortened(code, CODE - 1, size, 700, measure), bold),
    text(x + CODE, base, `${shortened(name, room, size, 700, measure)}${due}`, bold),
    line(x, y + height, x + width, y + height, { thick: 0.15, tone: 'faint' }),
  ];
}

function transferLine(
  { x, y, width, height }: Box,
  { tally, here }: TransferLine,
  single: boolean,
  { words, measure, pictures }: Type,
): Mark[] {
  const size = Math.min(BODY, height * 0.62);
  const base = baseline(y, height, size);
  const right = x + width;
  const figures = (single ? 1 : 2) * FIGURES;
  const pictured = pictures.size > 0 && width - INDENT - PICTURE - figures >= NAME;
  const indent = INDENT + (pictured ? PICTURE : 0);
  const name = shortened(tally.name, width - indent - figures, size, 400, measure);
  const printed = words.size(tally.size.width, tally.size.height);
  const beside = { x: x + indent + measure(name, size, 400) + 2, to: right - figures };
  // The size comes first where only one of both fits: it tells transfers of one name apart.
  const told = [`${printed}, ${words.numbers(stretchesOf(tally.numbers))}`, printed].find(
    (each) => beside.x + measure(each, HEAD, 400) < beside.to,
  );
  return [
    ...(pictured
      ? pictureOf(tally, { x: x + INDENT, y: y + 0.4, width: PICTURE - 1.5, height: height - 0.8 }, pictures)
      : []),
    text(x + indent, base, name, { size }),
    ...(told === undefined ? [] : [text(beside.x, base, told, { size: HEAD, tone: 'quiet' })]),
    ...(single ? [] : [text(right - FIGURES, base, words.count(here), { size, weight: 700, anchor: 'end' })]),
    text(right, base, words.count(tally.numbers.length), {
      size,
      weight: single ? 700 : 400,
      anchor: 'end',
    }),
    line(x, y + height, right, y + height, { thick: 0.15, tone: 'faint' }),
  ];
}

/** Whole numbers as stretches without a gap, going up. */
function stretchesOf(numbers: readonly number[]): (readonly [from: number, to: number])[] {
  const stretches: [number, number][] = [];
  for (const number of numbers.toSorted((a, b) => a - b)) {
    const last = stretches.at(-1);
    if (last && number <= last[1] + 1) last[1] = number;
    else stretches.push([number, number]);
  }
  return stretches;
}

/** The artwork's picture in a box, in its own proportions. */
function pictureOf({ artwork, size }: Tally, room: Box, pictures: ReadonlySet<string>): Mark[] {
  if (artwork === null || !pictures.has(artwork)) return [];
  const scale = Math.min(room.width / size.width, room.height / size.height);
  const [width, height] = [size.width * scale, size.height * scale];
  const x = room.x + (room.width - width) / 2;
  const y = room.y + (room.height - height) / 2;
  return [{ kind: 'picture', x, y, width, height, artwork }];
}

/** What heads the counts. */
function legendHead(x: number, y: number, width: number, single: boolean, { words }: Type): Mark[] {
  const right = x + width;
  const style = { size: HEAD, anchor: 'end', tone: 'quiet' } as const;
  return single
    ? [text(right, y, words.allCopies, style)]
    : [text(right - FIGURES, y, words.onThisPage, style), text(right, y, words.inAll, style)];
}

/** Boxes to tick, in one column or two; under each what the pile must hold of each order. */
function spanBoxes(x: number, y: number, width: number, spans: readonly SpanRow[], { words, measure }: Type) {
  const columns = spans.length > 8 ? 2 : 1;
  const pitch = columns === 1 ? 7 : 5.6;
  const side = columns === 1 ? 4 : 3.4;
  const size = columns === 1 ? BODY : HEAD;
  const pile = HEAD * 1.3;
  const room = width / columns - side - 3;
  const perColumn = Math.ceil(spans.length / columns);
  const heights = Array.from({ length: columns }, () => 0);
  const marks = spans.flatMap(({ number, copies, length, orders }, index): Mark[] => {
    const column = Math.floor(index / perColumn);
    const left = x + column * (width / columns);
    const top = y + (heights[column] ?? 0);
    const lines = wrapped(words.pile(orders), room, HEAD, 400, measure);
    heights[column] = (heights[column] ?? 0) + pitch + lines.length * pile;
    const told = shortened(
      length === null ? words.sheetDone(number, copies) : words.spanDone(number, copies, length),
      room,
      size,
      400,
      measure,
    );
    return [
      box({ x: left, y: top + (pitch - side) / 2, width: side, height: side }, { thick: 0.4 }),
      text(left + side + 2, baseline(top, pitch, size), told, { size }),
      ...lines.map((each, line) =>
        text(left + side + 2, baseline(top + pitch - 1.2 + line * pile, pile, HEAD), each, { size: HEAD }),
      ),
    ];
  });
  return { marks, height: Math.max(0, ...heights) };
}

/** A box with a bold sentence and what follows from it. */
function note(x: number, y: number, width: number, lead: string, rest: string, measure: Measure) {
  const inner = width - 6;
  const pitch = NOTE * 1.35;
  const bold = wrapped(lead, inner, NOTE, 700, measure);
  const plain = wrapped(rest, inner, NOTE, 400, measure);
  const height = (bold.length + plain.length) * pitch + 5;
  const marks: Mark[] = [
    box({ x, y, width, height }, { thick: 0.4 }),
    ...[...bold, ...plain].map((content, index) =>
      text(x + 3, y + 2.5 + baseline(index * pitch, pitch, NOTE), content, {
        size: NOTE,
        weight: index < bold.length ? 700 : 400,
      }),
    ),
  ];
  return { marks, height };
}

/**
 * The column beside the film: what is counted here, totals, spans to tick, the caution.
 * @returns the marks, and how many transfers there was no room for
 */
export function legend(
  { x, y, width, height }: Box,
  content: LegendContent,
  type: Type,
  more: (left: number) => string,
): { readonly marks: readonly Mark[]; readonly left: number; readonly bottom: number } {
  const { words, measure } = type;
  const { lines, spans, totals, single, copies } = content;
  const told = totals.flatMap((each) => wrapped(each, width, NOTE, 400, measure));
  const pitch = NOTE * 1.5;
  const warning =
    content.warning === null ? null : note(x, 0, width, content.warning, '', measure).height + 4;
  const boxes = spanBoxes(x, 0, width, spans, type).height;
  const caution = note(x, 0, width, words.caution.lead, words.caution.rest, measure).height;
  const below = told.length * pitch + boxes + caution + (warning ?? 0) + PITCH.most + 12;
  const room = height - below;
  const fitting = lines.length * PITCH.least <= room ? lines.length : Math.floor(room / PITCH.least) - 1;
  const first = lines.slice(0, Math.max(0, fitting));
  // An order is not named as the last line, with all of its transfers elsewhere.
  const shown = first.at(-1)?.kind === 'order' ? first.slice(0, -1) : first;
  const left = lines.slice(shown.length).filter(({ kind }) => kind === 'transfer').length;
  const rowHeight = Math.min(PITCH.most, room / (shown.length + (left > 0 ? 1 : 0)));
  const marks: Mark[] = legendHead(x, y, width, single, type);
  let top = y + 1.5;
  for (const each of shown) {
    marks.push(...legendLine({ x, y: top, width, height: rowHeight }, each, single, type));
    top += rowHeight;
  }
  if (left > 0) {
    marks.push(text(x, baseline(top, rowHeight, NOTE), more(left), { size: NOTE, weight: 700 }));
    top += rowHeight;
  }
  const base = baseline(top, PITCH.most, BODY);
  const bold = { size: BODY, weight: 700 } as const;
  marks.push(text(x, base, words.allCopies, bold));
  if (!single)
    marks.push(text(x + width - FIGURES, base, words.count(copies.here), { ...bold, anchor: 'end' }));
  marks.push(text(x + width, base, words.count(copies.all), { ...bold, anchor: 'end' }));
  top += PITCH.most + 1;
  for (const each of told) {
    marks.push(text(x, baseline(top, pitch, NOTE), each, { size: NOTE }));
    top += pitch;
  }
  top += 3;
  marks.push(...spanBoxes(x, top, width, spans, type).marks);
  top += boxes + 3;
  if (content.warning !== null) {
    marks.push(...note(x, top, width, content.warning, '', measure).marks);
    top += warning ?? 0;
  }
  marks.push(...note(x, top, width, words.caution.lead, words.caution.rest, measure).marks);
  return { marks, left, bottom: top + caution };
}
