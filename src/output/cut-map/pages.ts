import {
  type Cut,
  copiesWithin,
  isMirrored,
  knifeCuts,
  type MapView,
  measured,
  runSpans,
  tallyByOrder,
  tallyByTransfer,
} from '../../cutting';
import type { LaidCopy, LaidRun } from '../../layout';
import type { Span } from '../../packing';
import { um } from '../../units';
import { besideFilm } from './beside';
import { filmMarks } from './film';
import { type Frame, filmFacts, foot, head, type RuleUnit } from './frame';
import { cutLabels, sheetLabels, spanBrackets } from './gutters';
import { type LegendContent, type LegendLine, legend, legendLines } from './legend';
import { garmentsBelow, listPages } from './list-pages';
import { enlarged, type Mark, type Page, PT, text } from './marks';
import { textBoxes } from './obstacles';
import { BRACKETS, type FilmDrawing, planFilm } from './plan';
import { type FilmScene, filmRight } from './scene';
import { type Form, type Sheet, sheetOf } from './sheet';
import { type Measure, remembered, wrapped } from './text';
import type { CutMapWords } from './words';

export interface CutMapOptions {
  readonly form: Form & { readonly perSpan: boolean };
  readonly view: MapView;
  /** How the printer lays an image down, and whether the run's image is mirrored for it. */
  readonly printer: {
    readonly inkUp: 'mirrored' | 'plain';
    readonly imageMirrored: boolean;
  };
  /** What each order on the run is called. */
  readonly nameOf: (order: string) => string;
  /** Artwork that a picture is at hand of, for the legend. */
  readonly pictures: ReadonlySet<string>;
  /** Garments of the orders on the run, a line each. */
  readonly garments: readonly string[];
  readonly words: CutMapWords;
  /** Of the shop's ruler, which the rule on every page is checked with. */
  readonly unit: RuleUnit;
  /** Printed on every page. */
  readonly date: Date;
  /** By the metrics of the font that draws the map. */
  readonly measure: Measure;
}

/** What every page is made from. */
interface Making extends CutMapOptions {
  readonly run: LaidRun;
  readonly sheet: Sheet;
  readonly plan: FilmDrawing;
  readonly cuts: readonly Cut[];
  readonly mirrored: boolean;
}

/**
 * The cut map of a run: sheets with the film to scale and the distances of its knife lines, and a list
 * behind them if there are more transfers, or smaller copies, than the film's pages can name.
 */
export function cutMapPages(run: LaidRun, options: CutMapOptions): Page[] {
  const { form, view, printer } = options;
  const mirrored = isMirrored(view, printer.inkUp, printer.imageMirrored);
  const sheet = sheetOf(form);
  const measure = remembered(options.measure);
  const plan = planFilm(run, { sheet, perSpan: form.perSpan }, options.words, measure);
  const making: Making = {
    ...options,
    measure,
    run,
    sheet,
    plan,
    mirrored,
    cuts: knifeCuts(run),
  };
  const drawn =
    run.copies.length === 0 ? [emptyPage(making)] : plan.pages.map((_, index) => filmPage(making, index));
  const unlisted = drawn.some(({ left }) => left > 0);
  const lists = listPages(
    unlisted ? linesOf(making, run.copies) : [],
    drawn.flatMap(({ small }) => small),
    drawn.some(({ hasGarments }) => hasGarments) ? [] : options.garments,
    sheet,
    making,
    making,
  );
  const bodies = [...drawn.map(({ marks }) => marks), ...lists];
  return bodies.map((marks, index) => {
    const scale = index < drawn.length && run.copies.length > 0 ? plan.scale / sheet.zoom : null;
    const page = { number: index + 1, of: bodies.length, scale };
    const frame: Frame = { ...making, page };
    return {
      ...page,
      width: sheet.width * sheet.zoom,
      height: sheet.height * sheet.zoom,
      marks: [...head(frame), ...marks, ...foot(frame)].map((mark) => enlarged(mark, sheet.zoom)),
    };
  });
}

/** What lies between head and foot, and what it had no room for. */
interface Body {
  readonly marks: readonly Mark[];
  /** Transfers of the legend. */
  readonly left: number;
  /** Copies without a name. */
  readonly small: readonly LaidCopy[];
  /** Whether the garments of the run are on it. */
  readonly hasGarments: boolean;
}

function emptyPage({ words, sheet, measure }: Making): Body {
  const size = 13 * PT;
  const lines = wrapped(words.nothing, sheet.right - sheet.left, size, 400, measure);
  const marks = lines.map((content, index) =>
    text(sheet.left, sheet.filmTop + (index + 1) * size * 1.4, content, { size }),
  );
  return { marks, left: 0, small: [], hasGarments: false };
}

function filmPage(making: Making, index: number): Body {
  const { plan, sheet, cuts, words, measure } = making;
  const scene = sceneOf(making, index);
  const film = [
    ...filmMarks(scene, cuts),
    ...cutLabels(scene, cuts),
    ...sheetLabels(scene),
    ...spanBrackets(scene),
  ];
  const small = besideFilm(scene, plan.beside, textBoxes(film, measure));
  const x = filmRight(scene) + BRACKETS + plan.beside + 4;
  const column = {
    x,
    y: sheet.filmTop - 1,
    width: sheet.right - x,
    height: sheet.filmBottom + 6 - sheet.filmTop,
  };
  const { marks, left, bottom } = legend(column, legendContent(making, scene), making, (count) =>
    words.moreOnPage(count, plan.pages.length + 1),
  );
  const isLast = index === plan.pages.length - 1 && making.garments.length > 0;
  const below = { x, top: bottom + 4, bottom: sheet.filmBottom, width: column.width };
  const garments = isLast ? garmentsBelow(making.garments, below, making) : null;
  return {
    marks: [...film, ...small.marks, ...marks, ...(garments ?? [])],
    left,
    small: small.left,
    hasGarments: garments !== null,
  };
}

function sceneOf({ run, mirrored, words, measure, sheet, plan }: Making, index: number): FilmScene {
  const page = plan.pages[index];
  if (!page) throw new RangeError(`no page ${index}`);
  const [before, after] = [plan.pages[index - 1], plan.pages[index + 1]];
  const letter = (number: number) => String.fromCharCode(65 + (number % 26));
  return {
    run,
    mirrored,
    words,
    measure,
    sheet,
    scale: plan.scale,
    page,
    before: before
      ? {
          page: index,
          strip:
            before.end === 'strip'
              ? { from: page.from, to: page.repeatedTo, letter: letter(index - 1) }
              : null,
        }
      : null,
    after: after
      ? {
          page: index + 2,
          strip: page.end === 'strip' ? { from: after.from, to: page.to, letter: letter(index) } : null,
        }
      : null,
  };
}

function legendContent(making: Making, { page }: FilmScene): LegendContent {
  const { run, words, plan } = making;
  const spans = runSpans(run);
  return {
    lines: linesOf(making, page.copies),
    copies: { here: page.copies.length, all: run.copies.length },
    totals: [words.totals(filmFacts(run), spans.length), ...words.feed(run.view.stretch, run.view.imageFeed)],
    spans: spans.flatMap((span, index) =>
      span.to > page.repeatedTo && span.to <= page.to ? [spanRow(run, span, index + 1)] : [],
    ),
    single: plan.pages.length === 1,
    warning: run.spans === null ? words.noKnifeLines : null,
  };
}

/** Copies counted by order and transfer, beside how many of each lie on the run. */
function linesOf({ run, words, nameOf }: Making, copies: readonly LaidCopy[]): LegendLine[] {
  const here = new Map(tallyByTransfer(copies).map(({ transfer, numbers }) => [transfer, numbers.length]));
  const counted = tallyByTransfer(run.copies).flatMap((tally) => {
    const count = here.get(tally.transfer);
    return count === undefined ? [] : [{ tally, here: count }];
  });
  return legendLines(counted, ({ id }) => ({
    name: nameOf(id),
    due: words.due(run.view.order[id]?.due ?? null),
  }));
}

function spanRow(run: LaidRun, span: Span, number: number) {
  const copies = copiesWithin(run.copies, span);
  const length = run.film.kind === 'sheets' ? null : measured(run, um(span.to - span.from));
  const orders = tallyByOrder(copies).map(({ order: { code }, count }) => ({ code, count }));
  return { number, copies: copies.length, length, orders };
}
