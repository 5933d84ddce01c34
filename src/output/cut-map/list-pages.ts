import { acrossMap, measured } from '../../cutting';
import { type LaidCopy, type LaidRun, sheetAt, sheetStart } from '../../layout';
import { um } from '../../units';
import { type LegendLine, legendLine, type Type } from './legend';
import { type Mark, PT, text } from './marks';
import type { Sheet } from './sheet';
import { shortened } from './text';

const ROW = 5.4;
const GAP = 8;
const HEAD = 11 * PT;
const BODY = 9 * PT;

type Entry =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'legend'; readonly line: LegendLine }
  | { readonly kind: 'copy'; readonly copy: LaidCopy }
  | { readonly kind: 'garment'; readonly text: string };

/**
 * The garments of a run below what stands beside its film, where there is room for all of them.
 * @returns `null` where there is not
 */
export function garmentsBelow(
  garments: readonly string[],
  column: { readonly x: number; readonly top: number; readonly bottom: number; readonly width: number },
  { words, measure }: Type,
): Mark[] | null {
  const { x, top, bottom, width } = column;
  if (top + (garments.length + 1) * ROW > bottom) return null;
  const base = (line: number) => top + (line + 1) * ROW - 1.8;
  return [
    text(x, base(0), shortened(words.garments, width, HEAD, 700, measure), { size: HEAD, weight: 700 }),
    ...garments.map((each, line) =>
      text(x, base(line + 1), shortened(each, width, BODY, 400, measure), { size: BODY }),
    ),
  ];
}

/**
 * Sheets for what the film pages had no room for: every transfer of the run, and the copies drawn too
 * small for a name with where they start, and the garments that wait for them. In two columns.
 */
export function listPages(
  transfers: readonly LegendLine[],
  small: readonly LaidCopy[],
  garments: readonly string[],
  sheet: Sheet,
  { run, mirrored }: { readonly run: LaidRun; readonly mirrored: boolean },
  type: Type,
): Mark[][] {
  const { words, measure } = type;
  const entries: Entry[] = [
    ...(transfers.length > 0 ? [{ kind: 'heading', text: words.everyTransfer } as const] : []),
    ...transfers.map((line) => ({ kind: 'legend', line }) as const),
    ...(small.length > 0 ? [{ kind: 'heading', text: words.tooSmall } as const] : []),
    ...small.map((copy) => ({ kind: 'copy', copy }) as const),
    ...(garments.length > 0 ? [{ kind: 'heading', text: words.garments } as const] : []),
    ...garments.map((each) => ({ kind: 'garment', text: each }) as const),
  ];
  const room = Math.floor((sheet.filmBottom - sheet.filmTop) / ROW);
  const count = Math.ceil(entries.length / (2 * room));
  // Columns of several sheets are alike, so that the last is not a line or two.
  const perColumn = count > 1 ? Math.ceil(entries.length / (2 * count)) : room;
  const width = (sheet.right - sheet.left - GAP) / 2;
  const pages: Mark[][] = [];
  for (const [index, entry] of entries.entries()) {
    const column = Math.floor(index / perColumn);
    const x = sheet.left + (column % 2) * (width + GAP);
    const y = sheet.filmTop + (index % perColumn) * ROW;
    const page = pages[Math.floor(column / 2)] ?? [];
    pages[Math.floor(column / 2)] = page;
    const base = y + ROW - 1.8;
    if (entry.kind === 'legend') {
      page.push(...legendLine({ x, y, width, height: ROW }, entry.line, true, type));
    } else if (entry.kind === 'garment') {
      page.push(text(x, base, shortened(entry.text, width, BODY, 400, measure), { size: BODY }));
    } else if (entry.kind === 'heading') {
      page.push(text(x, base, shortened(entry.text, width, HEAD, 700, measure), { size: HEAD, weight: 700 }));
    } else {
      const { order, number, y: start } = entry.copy;
      const on = run.film.kind === 'sheets' ? sheetAt(run.film, start) : null;
      const from = measured(run, um(on === null ? start : start - sheetStart(run.film, on)));
      const left = um(acrossMap(mirrored, run.film.width, entry.copy));
      const name = words.copy(order.code, number);
      const told = words.tooSmallCopy(name, from, left, on === null ? null : on + 1);
      page.push(text(x, base, shortened(told, width, BODY, 400, measure), { size: BODY }));
    }
  }
  return pages;
}
