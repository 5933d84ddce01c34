import { type Cut, runSpans } from '../../cutting';
import { line, type Mark, PT, text } from './marks';
import { CUT_LABEL } from './plan';
import { downPage, type FilmScene, filmRight } from './scene';
import { spread } from './spread';
import { CAP } from './text';

const LARGE = 13 * PT;
const MEDIUM = 8 * PT;
const SMALL = 6.5 * PT;

/** Baselines below the middle of the large figure: the same by the other ruler, then the distance from the start. */
const BELOW = { tape: 4.8, start: 8.1, startTape: 10.7 };

/**
 * Left of the film, at each knife line, its distance from the cut before, large, and from the run's
 * start, small.
 */
export function cutLabels(scene: FilmScene, cuts: readonly Cut[]): Mark[] {
  const { sheet, words, page } = scene;
  const shown = cuts.filter((cut) => cut.line > page.repeatedTo && cut.line <= page.to);
  if (shown.length === 0) return [];
  const right = sheet.filmLeft - 4.6;
  const half = (LARGE * CAP) / 2;
  const begins = spread(
    shown.map((cut) => ({ at: downPage(scene, cut.line) - half, height: CUT_LABEL })),
    sheet.filmTop,
    sheet.filmBottom + CUT_LABEL - half,
  );
  const bold = { weight: 700, anchor: 'end' } as const;
  const small = { size: SMALL, anchor: 'end' } as const;
  return [
    text(right, sheet.filmTop - 4.8, words.fromPrevious, { ...bold, size: 7.5 * PT }),
    ...shown.flatMap((cut, index) => {
      const at = downPage(scene, cut.line);
      const middle = (begins[index] ?? 0) + half;
      return [
        text(right, middle + half, words.distance(cut.fromPrevious), { ...bold, size: LARGE }),
        text(right, middle + BELOW.tape, words.otherRuler(cut.fromPrevious), {
          ...bold,
          size: MEDIUM,
        }),
        text(right, middle + BELOW.start, words.fromStart(cut.fromStart), small),
        text(right, middle + BELOW.startTape, words.otherRuler(cut.fromStart), small),
        ...(Math.abs(middle - at) > 0.5
          ? [line(right + 0.6, middle, sheet.filmLeft - 3, at, { thick: 0.2 })]
          : []),
      ];
    }),
  ];
}

/** Left of the film, at the head of each sheet, which one it is and its size. */
export function sheetLabels(scene: FilmScene): Mark[] {
  const { run, page, sheet, words, measure } = scene;
  const { film } = run;
  if (film.kind === 'roll') return [];
  const all = runSpans(run);
  const right = sheet.filmLeft - 2.5;
  const size = words.sheetSize(film.width, film.length);
  const fitting = (content: string, largest: number, weight: 400 | 700) =>
    Math.min(largest, (right - sheet.left) / measure(content, 1, weight));
  return all.flatMap(({ from, to }, index): Mark[] => {
    if (to <= page.repeatedTo || from >= page.to) return [];
    const top = downPage(scene, Math.max(from, page.from));
    const name = words.sheet(index + 1, all.length);
    const large = fitting(name, MEDIUM * 1.4, 700);
    const base = top + large * CAP;
    return [
      text(right, base, name, { size: large, weight: 700, anchor: 'end' }),
      text(right, base + 3.2, size, { size: fitting(size, MEDIUM, 400), anchor: 'end' }),
    ];
  });
}

/** Right of the film a bracket along each span, and its number. */
export function spanBrackets(scene: FilmScene): Mark[] {
  const { run, page, words, measure, after } = scene;
  if (run.film.kind === 'sheets') return [];
  const x = filmRight(scene) + 4;
  const ends = after?.strip?.from ?? page.to;
  return runSpans(run).flatMap((span, index) => {
    const top = downPage(scene, Math.max(span.from, page.repeatedTo)) + 0.8;
    const bottom = downPage(scene, Math.min(span.to, ends)) - 0.8;
    if (bottom - top < SMALL) return [];
    const name = [words.span(index + 1), words.count(index + 1)].find(
      (each) => measure(each, MEDIUM, 700) < bottom - top,
    );
    const style = { thick: 0.25, tone: 'quiet' } as const;
    const middle = (top + bottom) / 2;
    return [
      line(x, top, x, bottom, style),
      line(x - 1, top, x, top, style),
      line(x - 1, bottom, x, bottom, style),
      ...(name === undefined
        ? []
        : [
            text(x + 1.2 + MEDIUM * CAP, middle, name, {
              size: MEDIUM,
              weight: 700,
              anchor: 'middle',
              upright: true,
            }),
          ]),
    ];
  });
}
