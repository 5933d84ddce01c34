import { cutOrder } from '../cutting';
import type { LaidCopy, LaidRun } from '../layout';
import { isCutStraight } from '../model';
import { fromMm, um } from '../units';
import { degrees, type WorkSource } from './builder';
import type { TooLarge } from './jobs';
import { apartKey, cutKey, printKey } from './keys';
import { bedOf, loadsOf } from './loads';
import { cureRecipe } from './recipes';

/** Two pieces of film on a bed lie so far apart (common practice, no source). */
const APART = fromMm(10);
/** Wet film should not wait for more than one other span. */
const MOST_IN_LOAD = 2;

/** What is ticked while each span is cut apart: its copies, or for straight cuts the cuts. */
export const cutPartsOf = (laid: LaidRun, bySpan: readonly (readonly LaidCopy[])[]): string[][] =>
  !isCutStraight(laid.film)
    ? bySpan.map((copies) => copies.map(({ id }) => cutKey.copy(id)))
    : cutOrder(laid).map(({ span, steps }) => {
        const copies = steps.flatMap((step) => (step.kind === 'copy' ? [cutKey.copy(step.copy.id)] : []));
        // Where straight cuts cannot part it, copies are taken out of strips: the last copy ends it.
        return copies.length > 0
          ? copies
          : steps.flatMap((step) => (step.kind === 'cut' ? [cutKey.cut(span, step.number)] : []));
      });

/** Film up to the powder, in the order in which it comes out: the last task of each span, and its cutting apart if that comes first. */
export function filmWork(
  source: WorkSource,
  ready: number,
): { powdered: number[]; cutEarly: (number | null)[] } {
  const { view, station, spans, bySpan, film, build, use } = source;
  const { handling, printer } = station;
  const powdered: number[] = [];
  const cutEarly: (number | null)[] = [];
  let before = ready;
  spans.forEach((span, index) => {
    const own = { spans: [index], copies: (bySpan[index] ?? []).map(({ id }) => id) };
    const count = own.copies.length;
    const time = Math.max(1, Math.round((3600 * (span.to - span.from)) / printer.perHour));
    const print = build.add(
      { key: printKey(index), kind: 'print', ...own },
      { duration: time, uses: [use('printer', 0, time)], after: [before] },
    );
    before = print;
    if (station.curer === 'line') {
      const cure = cureRecipe(view, 'line').values.seconds;
      powdered.push(
        build.add(
          { key: `line/${index}`, kind: 'line', ...own },
          { duration: cure, uses: [], after: [print] },
        ),
      );
      cutEarly.push(null);
      return;
    }
    const chain = [print];
    if (film.kind === 'roll') {
      before = build.add(
        { key: `cut-off/${index}`, kind: 'cut-off', ...own },
        {
          duration: handling.cutOff,
          uses: [use('printer', 0, handling.cutOff), use('hands', 0, handling.cutOff)],
          after: [print],
        },
      );
      chain.push(before);
    }
    // Film that bears nothing, such as what was spoiled, is cut off and thrown away.
    if (count === 0) {
      powdered.push(before);
      cutEarly.push(null);
      return;
    }
    const early = station.cutApart === 'before-powder';
    const apart = early
      ? build.add(
          { key: apartKey(index), kind: 'apart', parts: source.cutParts[index] ?? [], ...own },
          {
            duration: count * handling.cutApart,
            uses: [use('hands', 0, count * handling.cutApart)],
            after: [before],
          },
        )
      : null;
    if (apart !== null) chain.push(apart);
    cutEarly.push(apart);
    const powder = build.add(
      { key: `powder/${index}`, kind: 'powder', ...own },
      { duration: handling.powder, uses: [use('hands', 0, handling.powder)], after: [apart ?? before] },
    );
    chain.push(powder);
    powdered.push(powder);
    build.chains.push({ tasks: chain, limit: station.wetLimit });
  });
  return { powdered, cutEarly };
}

/** Cures, each of the spans that lie together on the bed: the cure of each span, and the spans that are larger than the bed. */
export function cureWork(
  source: WorkSource,
  powdered: readonly number[],
): { cured: readonly number[]; tooLarge: TooLarge[] } {
  const { view, station, spans, bySpan, film, build, use } = source;
  if (station.curer === 'line') return { cured: powdered, tooLarge: [] };
  const { handling } = station;
  const sizes = spans.map(({ from, to }) => ({ width: film.width, length: um(to - from) }));
  const bed = bedOf(station);
  const bearing = spans.flatMap((_, index) => ((bySpan[index] ?? []).length > 0 ? [index] : []));
  const found = loadsOf(
    bearing.flatMap((index) => sizes[index] ?? []),
    bed,
    { apart: APART, most: MOST_IN_LOAD },
  );
  const spansOf = (pieces: readonly number[]) => pieces.flatMap((piece) => bearing[piece] ?? []);
  const tooLarge = spansOf(found.tooLarge);
  const cured = [...powdered];
  const recipe = cureRecipe(view, station.curer).values;
  const beds = [...found.loads.map(spansOf), ...tooLarge.map((index) => [index])].sort(
    (a, b) => (a[0] ?? 0) - (b[0] ?? 0),
  );
  for (const load of beds) {
    // What is larger than the bed is cured in as many goes as it takes.
    const goes = Math.max(
      ...load.map((index) =>
        tooLarge.includes(index) ? Math.ceil((sizes[index]?.length ?? 0) / bed.length) : 1,
      ),
    );
    const each = recipe.seconds + 2 * handling.load;
    const duration = goes * each;
    const cure = build.add(
      {
        key: `cure/${load[0]}`,
        kind: 'cure',
        spans: load,
        copies: load.flatMap((index) => (bySpan[index] ?? []).map(({ id }) => id)),
      },
      {
        duration,
        uses: [
          station.curer === 'press'
            ? use('press', 0, duration, degrees(recipe.temperature))
            : use('oven', 0, duration),
          use('hands', 0, handling.load),
          use('hands', duration - handling.load, duration),
        ],
        after: load.map((index) => powdered[index] ?? null),
      },
    );
    for (const index of load) cured[index] = cure;
  }
  return {
    cured,
    tooLarge: tooLarge.map((span) => ({
      kind: 'span',
      run: build.run,
      span,
      length: sizes[span]?.length ?? um(0),
    })),
  };
}

/** Copies taken out of each cured span: the last task of it. */
export function apartWork(
  source: WorkSource,
  cured: readonly number[],
  cutEarly: readonly (number | null)[],
): readonly number[] {
  const { station, bySpan, film, build, use } = source;
  const { handling } = station;
  return cured.map((cure, index) => {
    const copies = bySpan[index] ?? [];
    const isEarly = cutEarly[index] !== null && cutEarly[index] !== undefined;
    if (copies.length === 0 || isEarly) return cure;
    // A line cures before anything is cut.
    const first = station.curer === 'line' && film.kind === 'roll' ? handling.cutOff : 0;
    const duration = first + copies.length * handling.cutApart;
    return build.add(
      {
        key: apartKey(index),
        kind: 'apart',
        spans: [index],
        copies: copies.map(({ id }) => id),
        parts: source.cutParts[index] ?? [],
      },
      { duration, uses: [use('hands', 0, duration)], after: [cure], pauses: true },
    );
  });
}
