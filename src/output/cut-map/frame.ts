import { type MapView, measured, runSpans } from '../../cutting';
import type { LaidRun } from '../../layout';
import { line, type Mark, PT, text } from './marks';
import type { Sheet } from './sheet';
import { type Measure, shortened, wrapped } from './text';
import type { CutMapWords, FilmFacts } from './words';

const TITLE = 20 * PT;
const VIEW = 17 * PT;
const FACTS = 9.5 * PT;
const FOOT = 7.5 * PT;

export type RuleUnit = 'mm' | 'in';

/** How long the rule is in millimetres, into how many parts it is divided, and each how many of them is longer. */
const RULES: Record<RuleUnit, { readonly length: number; readonly parts: number; readonly long: number }> = {
  mm: { length: 100, parts: 10, long: 5 },
  in: { length: 4 * 25.4, parts: 16, long: 4 },
};

/** What every sheet says, whatever it shows. */
export interface Frame {
  readonly run: LaidRun;
  readonly view: MapView;
  readonly mirrored: boolean;
  readonly date: Date;
  readonly sheet: Sheet;
  readonly words: CutMapWords;
  readonly unit: RuleUnit;
  readonly measure: Measure;
  readonly page: { readonly number: number; readonly of: number; readonly scale: number | null };
}

/** What a run lies on, as it is when it is printed. */
export function filmFacts(run: LaidRun): FilmFacts {
  const { film, lengthUsed } = run;
  const { kind, width } = film;
  return kind === 'roll'
    ? { kind, width, length: measured(run, lengthUsed) }
    : { kind, width, length: film.length, count: runSpans(run).length };
}

/** Title and facts at the left; at the right the view, as large, page and scale. */
export function head({ run, view, mirrored, date, sheet, words, measure, page }: Frame): Mark[] {
  const { left, right } = sheet;
  const { name, note } = words.view(view, mirrored);
  const second = [
    note,
    words.page(page.number, page.of),
    ...(page.scale === null ? [] : [words.scale(page.scale)]),
  ].join(' · ');
  const facts = words.facts({
    film: filmFacts(run),
    copies: run.copies.length,
    date,
  });
  const beside = (content: string, size: number, weight: 400 | 700) =>
    right - left - measure(content, size, weight) - 6;
  return [
    text(left, 18, shortened(words.title(run.name), beside(name, VIEW, 700), TITLE, 700, measure), {
      size: TITLE,
      weight: 700,
    }),
    text(right, 18, name, { size: VIEW, weight: 700, anchor: 'end' }),
    text(left, 24.2, shortened(facts, beside(second, FACTS, 400), FACTS, 400, measure), { size: FACTS }),
    text(right, 24.2, second, { size: FACTS, anchor: 'end' }),
  ];
}

/** A rule to check the print with, 100 mm or 4 in, and what comes before anything on this sheet. */
export function foot({ sheet, words, measure, unit }: Frame): Mark[] {
  const { left, right, height, zoom } = sheet;
  const rule = RULES[unit];
  const length = rule.length / zoom;
  const begin = right - length;
  const base = height - 16.5;
  const ticks = Array.from({ length: rule.parts + 1 }, (_, tick) => {
    const x = begin + (tick * length) / rule.parts;
    return line(x, base, x, base - (tick % rule.long === 0 ? 3 : 1.8), { thick: 0.25 });
  });
  const closing = wrapped(words.closing, right - left, FOOT, 400, measure);
  return [
    text(begin + 1.2, base - 4, words.rule, { size: FOOT }),
    line(begin, base, right, base, { thick: 0.35 }),
    ...ticks,
    line(left, height - 13.5, right, height - 13.5, { thick: 0.2, tone: 'faint' }),
    ...closing.map((content, index) => text(left, height - 9.8 + index * 3.1, content, { size: FOOT })),
  ];
}
