import { layRun } from '../layout';
import { type Book, isPrinted, printerOf, printerOfRun, type Run } from '../model';
import { isAtPrinter, ticked } from '../pressing';
import { groupBy, type Micrometres, um } from '../units';

/** What is known of what printers have printed. */
export interface Printed {
  /** Film that went through a printer after an instant; through any, where none is told. */
  readonly filmSince: (at: string, printer: string | null) => Micrometres;
  /** The instants at which a printer is known to have been at a run, in no order. */
  readonly runsOn: (printer: string) => readonly string[];
}

/** One run, as far as its printer has come. */
interface PrintedRun {
  readonly printer: string;
  readonly at: readonly string[];
  /** When all of it was printed, and how long it was; `null` while it is not. */
  readonly whole: { readonly at: string; readonly length: number } | null;
}

/** When all of a run was printed; `null` for one that is not, or not any more. */
const wholeAt = (run: Run): string | null =>
  isPrinted(run) ? (run.history.findLast(({ state }) => state === 'printed')?.at ?? run.changed) : null;

/** When a locked run was at its printer by its ticks: none of before it came to be locked, or to be locked again. */
function tickedAt({ state, history }: Run, done: ReadonlyMap<string, string>): string[] {
  const since = history.at(-1)?.at ?? '';
  if (state !== 'locked') return [];
  return [...done].flatMap(([subject, at]) => (isAtPrinter(subject) && at > since ? [at] : []));
}

/** The runs that printers of this shop have printed, or are at; another device prints what it hands over. */
function runsOf(book: Book): PrintedRun[] {
  const ticks = groupBy(Object.values(book.tick), ({ run }) => run);
  const own = Object.values(book.run).filter(({ received }) => received === null);
  return own.map((run) => {
    const whole = wholeAt(run);
    return {
      printer: printerOfRun(book, run)?.id ?? '',
      at: [
        ...(run.printed?.as ?? []).map(({ at }) => at),
        ...(whole === null ? tickedAt(run, ticked(ticks.get(run.id) ?? [])) : [whole]),
      ],
      whole:
        whole === null
          ? null
          : { at: whole, length: book.closing[run.id]?.actual.film ?? layRun(book, run)?.lengthUsed ?? 0 },
    };
  });
}

/** Runs of which nothing is kept but how they were closed. */
function closedAlone(book: Book): PrintedRun[] {
  const station = book.settings.shop?.station;
  return Object.entries(book.closing).flatMap(([id, { at, film, actual }]) =>
    book.run[id] || !station
      ? []
      : [
          {
            printer: printerOf(station, book.film[film.id]).id,
            at: [at],
            whole: { at, length: actual.film },
          },
        ],
  );
}

/** Finds what the printers of a shop have printed: of a closed run what was used counts, of one that is not closed what lies on it. */
export function printedBy(book: Book): Printed {
  const runs = [...runsOf(book), ...closedAlone(book)];
  const byPrinter = groupBy(runs, ({ printer }) => printer);
  return {
    filmSince: (since, printer) =>
      um(
        (printer === null ? runs : (byPrinter.get(printer) ?? [])).reduce(
          (sum, { whole }) => (whole && whole.at > since ? sum + whole.length : sum),
          0,
        ),
      ),
    runsOn: (printer) => (byPrinter.get(printer) ?? []).flatMap(({ at }) => at),
  };
}
