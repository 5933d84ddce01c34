import { copiesWithin, runSpans } from '../../cutting';
import { type LaidCopy, type LaidRun, sheetAt, sheetStart } from '../../layout';
import { isPrinted } from '../../model';
import { type Micrometres, um } from '../../units';

/** What of a run is written. */
export type Scope =
  | { readonly kind: 'run' }
  | { readonly kind: 'spans' }
  /** One span, or one sheet, counted from 1. */
  | { readonly kind: 'span'; readonly number: number }
  | { readonly kind: 'chosen'; readonly copies: ReadonlySet<string> };

/** What one image shows: it names the file. */
export type Part =
  | { readonly kind: 'run' | 'chosen' }
  | { readonly kind: 'span' | 'sheet'; readonly number: number };

/** A stretch of film across its whole width, with the copies that one image shows of it. */
export interface Frame {
  readonly part: Part;
  readonly from: Micrometres;
  readonly to: Micrometres;
  readonly copies: readonly LaidCopy[];
}

/** Film that is printed already is not printed again, unless the whole run is done and is looked at once more. */
const startOf = (run: LaidRun): Micrometres => (isPrinted(run) ? um(0) : run.printedTo);

/** The spans, or sheets, that are still to be printed, in the order in which they come out. */
export function framesBySpan(run: LaidRun): Frame[] {
  const start = startOf(run);
  const kind = run.film.kind === 'sheets' ? 'sheet' : 'span';
  return runSpans(run).flatMap(({ from, to }, index): Frame[] => {
    const copies = copiesWithin(run.copies, { from, to }).filter(({ y }) => y >= start);
    if (copies.length === 0) return [];
    return [{ part: { kind, number: index + 1 }, from: um(Math.max(from, start)), to, copies }];
  });
}

/** Copies as a job of their own: where they lie across the film, with the film's blank ends before and behind them. */
function chosenOnRoll({ film }: LaidRun, copies: readonly LaidCopy[]): Frame {
  const from = Math.min(...copies.map(({ y }) => y)) - film.margins.lead;
  const to = Math.max(...copies.map(({ y, length }) => y + length)) + film.margins.tail;
  return { part: { kind: 'chosen' }, from: um(Math.max(0, from)), to: um(to), copies };
}

/** The images that a scope takes: of sheets one each, of a roll one, or one a span. Without copies there are none. */
export function framesOf(run: LaidRun, scope: Scope): Frame[] {
  const bySpan = framesBySpan(run);
  switch (scope.kind) {
    case 'spans':
      return bySpan;
    case 'span':
      return bySpan.filter(({ part }) => 'number' in part && part.number === scope.number);
    case 'chosen': {
      const copies = run.copies.filter(({ id }) => scope.copies.has(id));
      if (copies.length === 0) return [];
      if (run.film.kind === 'roll') return [chosenOnRoll(run, copies)];
      const sheets = [...new Set(copies.map(({ y }) => sheetAt(run.film, y)))];
      return sheets.map((sheet) => ({
        part: { kind: 'sheet', number: sheet + 1 },
        from: sheetStart(run.film, sheet),
        to: sheetStart(run.film, sheet + 1),
        copies: copies.filter(({ y }) => sheetAt(run.film, y) === sheet),
      }));
    }
    case 'run': {
      if (run.film.kind === 'sheets') return bySpan;
      const from = startOf(run);
      const copies = run.copies.filter(({ y }) => y >= from);
      return copies.length === 0 ? [] : [{ part: { kind: 'run' }, from, to: run.lengthUsed, copies }];
    }
  }
}
