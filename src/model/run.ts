import * as z from 'zod/mini';
import { type Micrometres, um } from '../units';
import { recipeSchema, stationSchema } from './bench';
import { placedSchema } from './copy';
import { count, feed, id, instant, length, size, text, within } from './fields';
import { printerSchema } from './machines';
import { ranges } from './ranges';
import {
  filmSchema,
  garmentSchema,
  orderSchema,
  outlineSchema,
  placementSchema,
  transferSchema,
} from './records';
import { basisSchema } from './use';

/** What a run embeds of copies on its film, so that later edits cannot change it: all that it takes to draw, print and cut them. */
const snapshotSchema = z.object({
  at: instant,
  film: filmSchema,
  /** The printer that it went to; `null` where it was locked before a shop had several. */
  printer: z.nullable(printerSchema),
  orders: z.array(orderSchema),
  transfers: z.array(transferSchema),
  /**
   * Each with the line of garments that it goes on, `null` where none calls for it, and whether it is printed again for one that was
   * spoiled.
   */
  copies: z.array(z.extend(placedSchema, { onto: z.nullable(id<'garment'>()), reprint: z.boolean() })),
  /** Each with how many of its garments this is the first to take from the store: others were taken for prints that came before. */
  garments: z.array(z.extend(garmentSchema, { takes: count })),
  placements: z.array(placementSchema),
  /** By the transfers' ids, where copies were laid out by them. */
  outlines: z.record(text, outlineSchema),
});

/** The states of a run that is sent to print, in order. */
const lockedStates = ['locked', 'printed', 'cured', 'pressed', 'closed'] as const;

/** From a draft to the end, in order; `locked` is sent to print. */
export const runStates = ['draft', ...lockedStates] as const;

const fields = {
  id: id<'run'>(),
  name: text,
  film: id<'film'>(),
  /** Every state it came to and when, going back included. */
  history: z.array(z.object({ state: z.enum(runStates), at: instant })),
  /** Which waiting copies it lays out: all of them, or those chosen for it. */
  takes: z.enum(['all', 'chosen']),
  /** What its copies keep the gap by, wherever they were laid: their boxes or their outlines. */
  laidBy: z.enum(['boxes', 'outlines']),
  /**
   * How far a run that stopped on the way is on the film already, and what was printed there, as it was each time: what begins before
   * is done, and nothing new is laid there. `null` while nothing is printed, or all of it at once.
   */
  printed: z.nullable(z.object({ to: size, as: z.array(snapshotSchema) })),
  /** Film of this run that was spoiled. */
  spoiled: z.array(z.object({ from: length, to: length, copies: z.array(id<'copy'>()), at: instant })),
  /** What the print-ready image of all that was locked was made shorter by along the film when it was last written; `null` while none is. */
  imageFeed: z.nullable(feed),
  changed: instant,
};

/** Follows the book, but for what of it is printed. */
const draftSchema = z.object({ ...fields, state: z.literal('draft'), received: z.null() });

/** Sent to print, or further. */
const lockedSchema = z.object({
  ...fields,
  state: z.enum(lockedStates),
  /** What lies behind what was printed before; of most runs, all of it. */
  snapshot: snapshotSchema,
  /**
   * Handed over by another device, to be cut and pressed here: how that device does it. What it is of lies in the snapshot alone;
   * the book here has none of it. `null` for a run of this book.
   */
  received: z.nullable(
    z.object({
      /** When it was handed over. */
      made: instant,
      recipes: z.array(recipeSchema),
      station: stationSchema,
      /** Measured length over planned length there: see `RunView`. */
      stretch: within(ranges.stretch),
      /** Ticks and spoilages that the other device has, by their ids. */
      known: z.array(text),
    }),
  ),
  /** What its cost rests on; `null` where it was locked before costs were kept. */
  basis: z.nullable(basisSchema),
});

/** One layout on one film. */
export const runSchema = z.discriminatedUnion('state', [draftSchema, lockedSchema]);

export type Snapshot = z.infer<typeof snapshotSchema>;
export type DraftRun = z.infer<typeof draftSchema>;
export type LockedRun = z.infer<typeof lockedSchema>;
export type Run = z.infer<typeof runSchema>;

/** How far a run has come on its film: nothing new lies where film is printed or spoiled. */
export interface Progress extends Pick<Run, 'spoiled'> {
  readonly printedTo: Micrometres;
}

export const progressOf = ({ printed, spoiled }: Pick<Run, 'printed' | 'spoiled'>): Progress => ({
  printedTo: printed?.to ?? um(0),
  spoiled,
});

/** All that a run embeds, what was printed first before the rest. */
export const embeddedIn = (run: Run): Snapshot[] => [
  ...(run.printed?.as ?? []),
  ...(run.state === 'draft' ? [] : [run.snapshot]),
];

/** A run that nothing is laid on yet. */
export const draftRun = ({
  id,
  name,
  film,
  takes,
  changed,
}: Pick<Run, 'id' | 'name' | 'film' | 'takes' | 'changed'>): DraftRun => ({
  id,
  name,
  film,
  takes,
  changed,
  state: 'draft',
  history: [],
  laidBy: 'boxes',
  printed: null,
  spoiled: [],
  imageFeed: null,
  received: null,
});
