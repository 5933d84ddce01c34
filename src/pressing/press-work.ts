import { uprightSize } from '../cutting';
import type { PressValues, Station } from '../model';
import { byHand, degrees, type WorkSource } from './builder';
import type { PlatenClosing } from './closings';
import { unitsThat } from './crews';
import { fitsOn } from './loads';
import { pressesFor } from './press-takes';
import { pressRecipe } from './recipes';
import { pressSeconds } from './starting';

/** Hands are needed at the printer every few minutes: no lot at the press is longer, unless a single garment is. */
const LOT = 240;
/** Film that is peeled after a wait of this or more is left lying, and the next garment pressed meanwhile. */
const LEAVE = 20;

/** A list in parts of so many. */
const inParts = <Item>(items: readonly Item[], size: number): Item[][] =>
  Array.from({ length: Math.ceil(items.length / size) }, (_, part) =>
    items.slice(part * size, (part + 1) * size),
  );

/** Closings that are alike: the same transfers on the same fabric, out of the same spans, all of them pre-pressed or none. */
interface Alike {
  readonly name: string;
  readonly fabric: PlatenClosing['fabric'];
  readonly spans: readonly number[];
  readonly isFirst: boolean;
  /** The presses that take them; `null` where any does, or none. */
  readonly units: readonly number[] | null;
  readonly closings: PlatenClosing[];
}

/** The presses that take all of a closing, by their numbers. */
function unitsFor({ view, station }: WorkSource, { copies, takes }: PlatenClosing): Alike['units'] {
  const { presses } = station;
  const able = copies.map((copy) => new Set(pressesFor(view, presses, copy)));
  return unitsThat(presses, (press) => fitsOn(takes, press.platen) && able.every((set) => set.has(press)));
}

function alike(source: WorkSource, closings: readonly PlatenClosing[]): Alike[] {
  const spanOf = new Map(
    source.bySpan.flatMap((copies, span) => copies.map(({ id }) => [id as string, span] as const)),
  );
  const groups = new Map<string, Alike>();
  for (const closing of closings) {
    const { copies, isFirst, fabric } = closing;
    const spans = [...new Set(copies.map(({ id }) => spanOf.get(id) ?? 0))].sort((a, b) => a - b);
    const name = `${copies.map(({ transfer }) => transfer.id).join('+')}/${spans.join('+')}`;
    const units = unitsFor(source, closing);
    const key = `${name} ${isFirst} ${fabric} ${units?.join() ?? ''}`;
    const group = groups.get(key);
    if (group) group.closings.push(closing);
    else groups.set(key, { name, fabric, spans, isFirst, units, closings: [closing] });
  }
  // What can be pressed first comes first.
  const last = ({ spans }: Alike) => spans.at(-1) ?? 0;
  return [...groups.values()].sort((a, b) => last(a) - last(b));
}

/** How long one closing takes of hands and press: all of it, or what is before the wait and what is behind it. */
function closingTimes(
  station: Station,
  values: PressValues,
  { copies: [first, ...others] }: PlatenClosing,
  isFirst: boolean,
): { cycle: number; second: number | null } {
  const { handling } = station;
  const place = handling.place * (1 + others.length);
  const seconds = Math.max(
    ...[first, ...others].map((copy) => pressSeconds(values, uprightSize(copy), station)),
  );
  const closed = handling.dress + (isFirst ? values.prePress : 0) + place + seconds;
  if (values.wait < LEAVE)
    return { cycle: byHand(station, closed + values.wait + place + values.secondPress), second: null };
  const more = handling.place * others.length;
  return {
    cycle: byHand(station, closed),
    second: byHand(
      station,
      more + (values.secondPress > 0 ? handling.dress + values.secondPress : handling.place),
    ),
  };
}

/**
 * Copies onto the garments: the last tasks of each order.
 * @param apart the last task of each span before
 * @param all what is pressed, closing by closing
 */
export function pressWork(
  source: WorkSource,
  apart: readonly number[],
  all: readonly PlatenClosing[],
): ReadonlyMap<string, readonly number[]> {
  const { view, station, bySpan, film, isPressed, build, use } = source;
  const endsOf = new Map<string, number[]>();
  const note = (order: string, task: number) => {
    const tasks = endsOf.get(order);
    if (tasks) tasks.push(task);
    else endsOf.set(order, [task]);
  };
  bySpan.forEach((copies, index) => {
    for (const copy of copies) if (!isPressed(copy)) note(copy.order.id, apart[index] ?? 0);
  });
  const parts = new Map<string, number>();
  for (const { name, fabric, spans, isFirst, units, closings } of alike(source, all)) {
    const [some] = closings;
    if (!some) continue;
    const [{ order }] = some.copies;
    const { values } = pressRecipe(view, film.peel, fabric);
    const setting = degrees(values.temperature);
    const { cycle, second } = closingTimes(station, values, some, isFirst);
    for (const lot of inParts(closings, Math.max(1, Math.floor(LOT / cycle)))) {
      const part = parts.get(name) ?? 0;
      parts.set(name, part + 1);
      const own = {
        spans,
        order,
        transfers: some.copies.map(({ transfer }) => transfer),
        copies: lot.flatMap(({ copies }) => copies.map(({ id }) => id)),
        fabric,
      };
      const duration = lot.length * cycle;
      let last = build.add(
        { key: `press/${name}/${part}`, kind: 'press', ...own },
        {
          duration,
          uses: [use('hands', 0, duration), use('press', 0, duration, { setting, units })],
          after: spans.map((span) => apart[span] ?? null),
        },
      );
      if (second !== null) {
        const time = lot.length * second;
        last = build.add(
          { key: `again/${name}/${part}`, kind: 'again', ...own },
          {
            duration: time,
            uses: [
              use('hands', 0, time),
              ...(values.secondPress > 0 ? [use('press', 0, time, { setting, units })] : []),
            ],
            after: [last],
            lag: values.wait,
          },
        );
      }
      note(order.id, last);
    }
  }
  return endsOf;
}
