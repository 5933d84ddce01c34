import { copiesByStretch, nameRoom, type Stretch, stretches } from '../../cutting';
import type { LaidCopy, LaidRun } from '../../layout';
import { fromMm, type Micrometres, toMm } from '../../units';
import { carriesName } from './copy-label';
import type { Sheet } from './sheet';
import type { Measure } from './text';
import type { CutMapWords } from './words';

/** A stretch of film on its page, and the copies that are counted there. */
export interface FilmPage extends Stretch {
  readonly copies: readonly LaidCopy[];
}

/** How a run is drawn: to what scale, and which stretch of it on which page. */
export interface FilmDrawing {
  /** Millimetres of film to a millimetre of paper. */
  readonly scale: number;
  readonly pages: readonly FilmPage[];
  /** Room right of the film for the names of copies too small to carry one. */
  readonly beside: number;
}

/** Right of the film: brackets that number the spans. */
export const BRACKETS = 9;
/** The legend is never narrower; where all is enlarged, the film needs the room more. */
const LEGEND = { normal: 58, enlarged: 36 };
const BESIDE = 22;
/** The film is never drawn narrower, where the paper is to blame. */
const NARROWEST = 54;
/** A label at a knife line is this high: no page takes more cuts than it has room to label. */
export const CUT_LABEL = 13.4;
/** Film that two pages share. */
const STRIP = 7;
/** A larger scale, and more pages, are worth it only if more copies than this could not carry their names. */
const FEW = 10;

/** The sheet that film is drawn on, and whether each span has one of its own. */
export interface DrawingSpace {
  readonly sheet: Sheet;
  readonly perSpan: boolean;
}

const step = (scale: number) => Math.ceil(scale * 10 - 1e-9) / 10;

function stretchesAt(run: LaidRun, { sheet, perSpan }: DrawingSpace, scale: number): Stretch[] {
  const height = sheet.filmBottom - sheet.filmTop;
  return stretches(run, {
    most: fromMm(height * scale),
    strip: fromMm(STRIP * scale),
    cuts: perSpan ? 1 : Math.floor(height / CUT_LABEL),
  });
}

const tooSmall = (run: LaidRun, scale: number, words: CutMapWords, measure: Measure): number =>
  run.copies.filter((copy) => {
    const { width, length } = nameRoom(copy);
    return !carriesName(copy, { width: width / 1000 / scale, height: length / 1000 / scale }, words, measure);
  }).length;

/** The scales between which the film leaves room for distances and legend, the largest drawing first. */
function scales(width: Micrometres, sheet: Sheet, beside: number): number[] {
  const room =
    sheet.right - sheet.filmLeft - BRACKETS - beside - (sheet.zoom > 1 ? LEGEND.enlarged : LEGEND.normal);
  const most = Math.max(1, step(toMm(width) / room));
  const least = Math.max(most, step(toMm(width) / Math.min(NARROWEST, room)));
  return Array.from({ length: Math.round((least - most) * 10) + 1 }, (_, index) => step(most + index / 10));
}

/** The fewest pages at which all but a few copies can carry their names, drawn as large as that many allow. */
export function planFilm(
  run: LaidRun,
  room: DrawingSpace,
  words: CutMapWords,
  measure: Measure,
): FilmDrawing {
  const { sheet } = room;
  const planWith = (beside: number): FilmDrawing => {
    const choice = scales(run.film.width, sheet, beside);
    const smallest =
      choice.findLast((scale) => tooSmall(run, scale, words, measure) <= FEW) ?? choice[0] ?? 1;
    const fewest = stretchesAt(run, room, smallest).length;
    const scale = choice.find((each) => stretchesAt(run, room, each).length <= fewest) ?? smallest;
    const parts = stretchesAt(run, room, scale);
    const copies = copiesByStretch(run.copies, parts);
    return { scale, beside, pages: parts.map((part, index) => ({ ...part, copies: copies[index] ?? [] })) };
  };
  const plain = planWith(0);
  const named = tooSmall(run, plain.scale, words, measure) === 0;
  return named || sheet.zoom > 1 ? plain : planWith(BESIDE);
}
