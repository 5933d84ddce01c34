import * as z from 'zod/mini';
import { asId, feed, type Id, id, length, seconds, size, text } from './fields';
import { type Week, weekSchema } from './hours';

/**
 * How a run on a roll reaches the printer: each span as a job of its own, the whole run as one job that waits at each cut, or as one
 * that goes through to its end.
 */
export const sendings = ['by-span', 'whole-pausing', 'whole-through'] as const;

/** The most machines of a kind, and people. */
export const MOST_MACHINES = 20;

/** What the shop calls it; empty where it is told by its number among its kind. */
const name = text;

const area = z.object({ width: size, length: size });

/** A printer, and what a test strip that was printed on it has told. */
export const printerSchema = z.object({
  id: id<'printer'>(),
  name,
  /** Film printed in an hour. */
  perHour: length,
  warmUp: seconds,
  /** Nozzle check, with someone to look at it. */
  check: seconds,
  /** `null` until the shop has said. */
  sends: z.nullable(z.enum(sendings)),
  /** Whether it draws film back to its head after a cut; `null` until the shop has said. */
  feedsBack: z.nullable(z.boolean()),
  /** The end of the image that comes out first. */
  firstEnd: z.enum(['lead', 'tail']),
  /** How the film shows, ink up: mirrored, as is usual, or as on the screen. */
  inkUp: z.enum(['mirrored', 'plain']),
  /** Measured length over the length printed: distances along the film are multiplied by it. */
  feed,
  /** Images are written mirrored from side to side, since its own software does not do it. */
  mirrored: z.boolean(),
});

export const pressSchema = z.object({
  id: id<'press'>(),
  name,
  platen: area,
  /** A curved platen for caps is there as well: no flat one takes them. */
  caps: z.boolean(),
  warmUp: seconds,
  /** For each degree Celsius, up and down. */
  rise: seconds,
  fall: seconds,
});

/** An oven, or a line that powders and cures, by what it takes. */
export const ovenSchema = z.object({
  id: id<'oven'>(),
  name,
  /** Of the oven, or as wide as the line takes. */
  bed: area,
});

/** Someone who works here. */
export const personSchema = z.object({
  id: id<'person'>(),
  /** Name or initials. */
  name,
  /** When they are there, by weekday; `null` whenever the shop is open. */
  hours: z.nullable(weekSchema),
});

export type Sending = (typeof sendings)[number];
export type Printer = z.infer<typeof printerSchema>;
export type Press = z.infer<typeof pressSchema>;
export type Oven = z.infer<typeof ovenSchema>;
export type Person = z.infer<typeof personSchema>;

/** The machine of its kind that a shop begins with; a book of one printer has all its film in it. */
export const firstOf = <Kind extends string>(kind: Kind): Id<Kind> => asId(`${kind}-1`);

/** The printers with one of them as it is to be. */
export const withPrinter = (
  [first, ...others]: readonly [Printer, ...Printer[]],
  own: Printer,
): [Printer, ...Printer[]] => {
  const changed = (printer: Printer) => (printer.id === own.id ? own : printer);
  return [changed(first), ...others.map(changed)];
};

/** Weekdays, from Monday as 0, on which the shop is open at some time and nobody is there then. */
export const daysAlone = (week: Week, people: readonly Pick<Person, 'hours'>[]): number[] =>
  week.flatMap((open, day) => {
    const isThere = people.some(
      ({ hours }) =>
        hours === null ||
        hours[day]?.some(({ from, to }) => open.some((shop) => from < shop.to && shop.from < to)),
    );
    return open.length === 0 || isThere ? [] : [day];
  });

/**
 * The printer that a film is in.
 * @param kept as a run was locked with it: it stands in where the shop has it no more
 */
export const printerOf = (
  { printers }: { readonly printers: readonly [Printer, ...Printer[]] },
  film: { readonly printer: Printer['id'] } | undefined,
  kept: Printer | null = null,
): Printer => printers.find(({ id: own }) => own === film?.printer) ?? kept ?? printers[0];
