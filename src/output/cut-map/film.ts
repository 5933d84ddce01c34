import { type Cut, runSpans } from '../../cutting';
import type { LaidCopy } from '../../layout';
import type { Span } from '../../packing';
import type { Micrometres } from '../../units';
import { copyLabel } from './copy-label';
import { nameBox, outlineMarks } from './copy-outline';
import { box, line, type Mark, PT, text } from './marks';
import { downPage, type FilmScene, filmRight, type Neighbour, pageBox } from './scene';
import { CAP } from './text';

const NOTE = 7.5 * PT;
/** How far knife lines and strip marks stand out of the film. */
const OVERHANG = 3;
/** Between the lines of a hatch, in millimetres. */
const HATCH = 4;

/** The film's edges, the copies on it and the knife lines across it. */
export function filmMarks(scene: FilmScene, cuts: readonly Cut[]): Mark[] {
  const { run, page } = scene;
  const shown = run.copies.filter(({ y, length }) => y < page.to && y + length > page.from);
  return [
    ...edges(scene),
    ...run.spoiled.flatMap((stretch) => spoiledMarks(scene, stretch)),
    ...shown.flatMap((copy) => copyMarks(scene, copy)),
    ...cuts
      .filter((cut) => cut.line >= page.from && cut.line <= page.to)
      .map((cut) => knifeLine(scene, cut.line)),
    ...sheetEnds(scene),
    ...stripMarks(scene, scene.before),
    ...stripMarks(scene, scene.after),
    ...notes(scene),
  ];
}

/** A copy is drawn in ink, and named, where it is counted; faintly on other pages that show some of it. */
function copyMarks(scene: FilmScene, copy: LaidCopy): Mark[] {
  const { page, words, measure } = scene;
  const counted = page.copies.includes(copy);
  const seen = pageBox(scene, copy);
  const { x, y, width, height } = seen;
  const label = counted ? copyLabel(copy, nameBox(scene, copy), words, measure) : [];
  const style = counted ? { thick: 0.3 } : ({ thick: 0.2, tone: 'quiet' } as const);
  if (copy.outline) return [...outlineMarks(scene, copy, copy.outline, style), ...label];
  const [begins, ends] = [copy.y >= page.from, copy.y + copy.length <= page.to];
  if (begins && ends) return [box(seen, { ...style, copy: copy.id }), ...label];
  // The end of the page cuts it: no line there.
  return [
    line(x, y, x, y + height, style),
    line(x + width, y, x + width, y + height, style),
    ...(begins ? [line(x, y, x + width, y, style)] : []),
    ...(ends ? [line(x, y + height, x + width, y + height, style)] : []),
    ...label,
  ];
}

/** Film that was spoiled, hatched beside the word for it: nothing is cut out of it. */
function spoiledMarks(scene: FilmScene, { from, to }: Span): Mark[] {
  const { sheet, page, words, measure } = scene;
  const [top, bottom] = [downPage(scene, Math.max(from, page.from)), downPage(scene, Math.min(to, page.to))];
  if (bottom <= top) return [];
  const [left, right] = [sheet.filmLeft, filmRight(scene)];
  const size = Math.min(NOTE, (bottom - top) * 0.8);
  const start = left + 3 + measure(words.spoiled, size, 700);
  const height = bottom - top;
  const style = { thick: 0.2, tone: 'quiet' } as const;
  const across = Array.from(
    { length: Math.ceil((right - start + height) / HATCH) },
    (_, at) => start + at * HATCH,
  );
  return [
    line(left, top, right, top, style),
    line(left, bottom, right, bottom, style),
    text(left + 1.5, (top + bottom + size * CAP) / 2, words.spoiled, { size, weight: 700 }),
    // From the lower edge up to the right, as far as the box goes.
    ...across.flatMap((x) => {
      const [low, high] = [Math.max(0, x - right), Math.min(height, x - start)];
      return high > low ? [line(x - low, bottom - low, x - high, bottom - high, style)] : [];
    }),
  ];
}

function edges(scene: FilmScene): Mark[] {
  const { sheet, page } = scene;
  const [left, right] = [sheet.filmLeft, filmRight(scene)];
  const [top, bottom] = [sheet.filmTop, downPage(scene, page.to)];
  const past = scene.page.end === 'run' && scene.run.film.kind === 'roll' ? bottom + OVERHANG : bottom;
  const side = (x: number) => line(x, top, x, past, { thick: 0.5 });
  return [
    side(left),
    side(right),
    ...(beginsFilm(scene) ? [line(left, top, right, top, { thick: 0.5 })] : []),
  ];
}

/** Does film begin at the head of this page: the run's, or a sheet? */
const beginsFilm = ({ before, run }: FilmScene): boolean =>
  before === null || (run.film.kind === 'sheets' && before.strip === null);

/** Where sheets end: nothing is cut there. */
function sheetEnds(scene: FilmScene): Mark[] {
  const { run, page, sheet } = scene;
  if (run.film.kind === 'roll') return [];
  return runSpans(run)
    .filter(({ to }) => to > page.from && to <= page.to)
    .map(({ to }) => {
      const y = downPage(scene, to);
      return line(sheet.filmLeft, y, filmRight(scene), y, { thick: 0.5 });
    });
}

const knifeLine = (scene: FilmScene, at: Micrometres): Mark => {
  const y = downPage(scene, at);
  const style = { thick: 0.7, dash: [2.4, 1.4] } as const;
  return line(scene.sheet.filmLeft - OVERHANG, y, filmRight(scene) + OVERHANG, y, style);
};

/** Film that this page and a neighbour both show: bars along both sides, a dotted line at each end, a letter. */
function stripMarks(scene: FilmScene, neighbour: Neighbour | null): Mark[] {
  const strip = neighbour?.strip;
  if (!strip) return [];
  const [left, right] = [scene.sheet.filmLeft, filmRight(scene)];
  const [top, bottom] = [downPage(scene, strip.from), downPage(scene, strip.to)];
  const bar = (x: number) => line(x, top, x, bottom, { thick: 1 });
  const end = (y: number) => line(left - OVERHANG, y, right + OVERHANG, y, { thick: 0.25, dash: [0.4, 0.8] });
  const size = 11 * PT;
  const middle = (top + bottom) / 2 + (size * CAP) / 2;
  return [
    bar(left - 1.6),
    bar(right + 1.6),
    end(top),
    end(bottom),
    text(right + 3.4, middle, strip.letter, { size, weight: 700 }),
  ];
}

/** Above the film its leading edge, or the page before; below it where it goes on. */
function notes(scene: FilmScene): Mark[] {
  const { sheet, words, before, after, page } = scene;
  const middle = (sheet.filmLeft + filmRight(scene)) / 2;
  const note = (y: number, content: string) => text(middle, y, content, { size: NOTE, anchor: 'middle' });
  const top = sheet.filmTop;
  const isSheets = scene.run.film.kind === 'sheets';
  const last = isSheets ? null : words.cutOff;
  const goesOn = ({ page: next, strip }: Neighbour) =>
    isSheets && !strip ? words.nextSheet(next) : words.continuesOn(next, strip?.letter ?? null);
  const ending = after ? goesOn(after) : last;
  const below = downPage(scene, page.to) + OVERHANG + 2.6;
  return [
    ...(before && !beginsFilm(scene)
      ? [note(top - 2, words.continuedFrom(before.page, before.strip?.letter ?? null))]
      : [
          note(top - 4.8, words.leadingEdge),
          line(middle - 5, top - 1.2, middle, top - 3.4, { thick: 0.4 }),
          line(middle, top - 3.4, middle + 5, top - 1.2, { thick: 0.4 }),
        ]),
    ...(ending === null ? [] : [note(below, ending)]),
  ];
}
