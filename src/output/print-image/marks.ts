import { runSpans, spanCorners } from '../../cutting';
import type { LaidCopy, LaidRun } from '../../layout';
import { fromMm, type Micrometres, um } from '../../units';
import type { Frame } from './frames';

/** Marks that may be printed beside the copies, where they are cut off. */
export interface MarkChoice {
  /** At both edges of the film, where a knife line is. */
  readonly ticks: boolean;
  /** Each copy's number in the gap beside it. */
  readonly numbers: boolean;
  /** The names of order and transfer with it, where there is room, else its code and number: what each order is called, if so. */
  readonly names: ((order: string) => string) | null;
  /** Registration corners for a contour cutter, at the corners of each span or sheet. */
  readonly corners: boolean;
}

/** A mark on the film: black, or a text that reads with the run's start at the top. */
export interface FilmMark {
  readonly text: string | null;
  readonly x: Micrometres;
  readonly y: Micrometres;
  readonly width: Micrometres;
  readonly length: Micrometres;
}

/** Smaller marks hold no powder that would tell them from a speck (common practice, no source). */
const HEIGHT = fromMm(4);
const TICK = { width: fromMm(6), length: fromMm(0.6) };
/** Between a mark and a copy, for the knife or the scissors. */
const CLEAR = fromMm(0.5);
/** A bold figure's width over its height. */
const FIGURE = 0.85;

type Area = Omit<FilmMark, 'text'>;

const apart = (a: Area, b: Area): boolean =>
  a.x >= b.x + b.width + CLEAR ||
  b.x >= a.x + a.width + CLEAR ||
  a.y >= b.y + b.length + CLEAR ||
  b.y >= a.y + a.length + CLEAR;

/** Where film is cut across, or a sheet ends: nothing that is to be read lies across it. */
const spanEnds = (run: LaidRun): Micrometres[] => runSpans(run).map(({ to }) => to);

/** Knife lines within a frame, its end among them, as bars at both printable edges. */
function ticksOf(run: LaidRun, { from, to }: Frame): FilmMark[] {
  const { film } = run;
  const ends = film.kind === 'sheets' ? [] : spanEnds(run);
  return ends
    .filter((at) => at > from && at <= to)
    .flatMap((at) => {
      const y = um(Math.min(at - TICK.length / 2, to - TICK.length));
      const bar = { text: null, y, ...TICK };
      return [
        { ...bar, x: film.margins.left },
        { ...bar, x: um(film.width - film.margins.right - TICK.width) },
      ];
    });
}

/** The registration corners of all spans within a frame; copies printed as a job of their own have none. */
const cornersOf = (run: LaidRun, { part, from, to }: Frame): FilmMark[] =>
  part.kind === 'chosen'
    ? []
    : runSpans(run)
        .flatMap((span) => spanCorners(run, span).flatMap(({ bars }) => bars))
        .filter(({ y, length }) => y >= from && y + length <= to)
        .map((bar) => ({ text: null, ...bar }));

/** What a copy may be called beside it, the longest first. */
function namesOf({ order, transfer, number }: LaidCopy, names: MarkChoice['names']): string[] {
  const code = `${order.code} ${number}`;
  const name = `${transfer.name} ${number}`;
  return names ? [`${names(order.id)}, ${name}`, name, code] : [code];
}

/** The marks of a frame that have room, none nearer than half a millimetre to a copy or to another. */
export function marksOf(
  run: LaidRun,
  frame: Frame,
  choice: MarkChoice,
): { readonly marks: readonly FilmMark[]; readonly unnumbered: number } {
  const { film } = run;
  const { left, right } = film.margins;
  // Where the cut file has them.
  const marks: FilmMark[] = choice.corners ? cornersOf(run, frame) : [];
  const isFree = (area: Area): boolean =>
    area.x >= left &&
    area.x + area.width <= film.width - right &&
    area.y >= frame.from &&
    area.y + area.length <= frame.to &&
    frame.copies.every((copy) => apart(area, copy)) &&
    marks.every((mark) => apart(area, mark));
  const lines = spanEnds(run);
  const isWhole = ({ y, length }: Area): boolean =>
    lines.every((at) => y >= at + CLEAR || y + length + CLEAR <= at);
  if (choice.ticks) for (const tick of ticksOf(run, frame)) if (isFree(tick)) marks.push(tick);
  if (!choice.numbers && !choice.names) return { marks, unnumbered: 0 };
  /** The longest of a copy's names that has room beside it. */
  const labelOf = (copy: LaidCopy): FilmMark | null => {
    for (const text of namesOf(copy, choice.names)) {
      const found = placeFor(copy, text);
      if (found) return found;
    }
    return null;
  };
  const placeFor = (copy: LaidCopy, text: string): FilmMark | null => {
    const size = { width: um(HEIGHT * FIGURE * [...text].length), length: HEIGHT };
    const behind = um(copy.y + copy.length + CLEAR);
    const before = um(copy.y - CLEAR - HEIGHT);
    const last = um(copy.x + copy.width - size.width);
    const places = [
      ...[behind, before].flatMap((y) => [copy.x, last].map((x) => ({ x, y }))),
      { x: um(copy.x + copy.width + CLEAR), y: copy.y },
      { x: um(copy.x - CLEAR - size.width), y: copy.y },
    ];
    const place = places.find((at) => isFree({ ...at, ...size }) && isWhole({ ...at, ...size }));
    return place ? { text, ...place, ...size } : null;
  };
  let unnumbered = 0;
  for (const copy of frame.copies) {
    const label = labelOf(copy);
    if (label) marks.push(label);
    else unnumbered += 1;
  }
  return { marks, unnumbered };
}
