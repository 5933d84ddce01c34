import type { LaidCopy, LaidRun } from '../../src/layout';
import { measureRun } from '../../src/layout/laid';
import { draftRun, emptyBook, firstOf, type Id, type Roll, runView, type Sheets } from '../../src/model';
import { asMinor, fromMm, QUARTER, UPRIGHT } from '../../src/units';
import { NOW } from '../editing/book';

const film: Roll = {
  kind: 'roll',
  curl: fromMm(0),
  jobBlank: fromMm(0),
  jobs: 'run',
  cutBlank: fromMm(0),
  unreached: fromMm(0),
  noPrint: [],
  archived: false,
  id: 'film' as Id<'film'>,
  name: 'Roll',
  printer: firstOf('printer'),
  width: fromMm(330),
  margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
  lengthLeft: fromMm(100_000),
  price: { amount: asMinor(840), per: fromMm(1000) },
  gap: fromMm(5),
  cutting: 'free',
  together: { kind: 'any' },
  peel: 'hot',
  spanMax: fromMm(480),
  changed: NOW,
};

interface Box {
  readonly code: string;
  readonly number: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly length: number;
  readonly turned?: boolean;
  /** As it lies, micrometres from its corner; its box, where none is told. */
  readonly outline?: LaidCopy['outline'];
}

/** A run of boxes, in millimetres; each size of an order is a transfer of its own. */
export function runOf(boxes: readonly Box[], more: Partial<Roll> = {}): LaidRun {
  const copies = boxes.map(
    ({ code, number, x, y, width, length, turned = false, outline = null }): LaidCopy => {
      const name = turned ? `${length} x ${width}` : `${width} x ${length}`;
      return {
        id: `${code}-${number}` as Id<'copy'>,
        order: { id: code as Id<'order'>, code, tint: 0 },
        number,
        transfer: {
          id: `${code} ${name}` as Id<'transfer'>,
          name,
          width: fromMm(turned ? length : width),
          height: fromMm(turned ? width : length),
          turn: 'quarter',
          artwork: null,
          shade: null,
        },
        x: fromMm(x),
        y: fromMm(y),
        width: fromMm(width),
        length: fromMm(length),
        angle: turned ? QUARTER : UPRIGHT,
        origin: { x: turned ? fromMm(width) : 0, y: 0 },
        ink: null,
        byOutline: outline !== null,
        outline,
        pinned: false,
        fixed: false,
      };
    },
  );
  const own = { ...film, ...more };
  const run = draftRun({ id: 'run' as Id<'run'>, name: 'Run 1', film: own.id, takes: 'all', changed: NOW });
  const progress = { printedTo: fromMm(0), spoiled: [] };
  return {
    view: runView(emptyBook, run),
    id: run.id,
    name: run.name,
    state: 'draft',
    film: own,
    copies,
    ...progress,
    ...measureRun(copies, own, progress),
  };
}

/** Copies that lie as an F: its stem along the film, its arms across it, both from the stem towards x = W. */
export const letterF = (): LaidRun =>
  runOf([
    { code: 'F', number: 1, x: 60, y: 20, width: 40, length: 300 },
    { code: 'F', number: 2, x: 110, y: 20, width: 150, length: 50 },
    { code: 'F', number: 3, x: 110, y: 140, width: 90, length: 50 },
  ]);

/** Rows of copies along some metres of film. */
export const longRun = (rows: number, spanMax: number | null = 480): LaidRun =>
  runOf(
    Array.from({ length: rows * 3 }, (_, index) => ({
      code: ['HB', 'OF', 'CC'][index % 3] ?? 'HB',
      number: Math.floor(index / 3) + 1,
      x: 5 + (index % 3) * 105,
      y: 10 + Math.floor(index / 3) * 95,
      width: 100,
      length: 90,
    })),
    { spanMax: spanMax === null ? null : fromMm(spanMax) },
  );

/** A run that comes out longer than planned, with an image that makes up for some of the feed. */
export const fed = (run: LaidRun, stretch: number, imageFeed = 1): LaidRun => ({
  ...run,
  view: { ...run.view, stretch, imageFeed },
});

const sheets: Sheets = {
  kind: 'sheets',
  id: film.id,
  name: 'Sheets',
  printer: firstOf('printer'),
  width: fromMm(210),
  length: fromMm(297),
  margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(5), tail: fromMm(5) },
  sheetsLeft: 100,
  price: asMinor(90),
  gap: fromMm(5),
  cutting: 'free',
  together: { kind: 'any' },
  peel: 'hot',
  curl: fromMm(0),
  archived: false,
  changed: NOW,
};

/** The same boxes on sheets of A4 (ISO 216), one below the other along the film. */
export function onSheets(boxes: readonly Box[]): LaidRun {
  const run = runOf(boxes);
  const progress = { printedTo: run.printedTo, spoiled: run.spoiled };
  return { ...run, film: sheets, ...measureRun(run.copies, sheets, progress) };
}
