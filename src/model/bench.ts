import * as z from 'zod/mini';
import { FABRICS, type Temperature } from '../units';
import { count, figure, id, instant, length, seconds, share, size, text } from './fields';
import { hoursSchema } from './hours';
import { MOST_MACHINES, ovenSchema, personSchema, pressSchema, printerSchema } from './machines';
import { ranges } from './ranges';

/** Records of what happens between printer and bag: recipes, the shop's equipment, what was ticked, spoiled and shelved. */

const temperature = figure<Temperature>(ranges.temperature);

/** How a film wants to be peeled; its maker's data sheet says so. */
export const peels = ['hot', 'warm', 'cold'] as const;

export const pressures = ['light', 'medium', 'firm'] as const;

/** What lies between platen and transfer. */
export const covers = ['none', 'paper', 'silicone', 'fabric'] as const;

/** Where powder is cured: under a press that hovers over it, in an oven with a door, or on a line that also powders. */
export const curers = ['press', 'oven', 'line'] as const;

/** Whose values a recipe has: common practice to start with, those of a maker's data sheet, or the shop's own. */
export const origins = ['common-practice', 'data-sheet', 'own'] as const;

const pressValues = z.object({
  temperature,
  pressure: z.enum(pressures),
  /** Under the closed press, for small transfers and for large ones. */
  seconds: z.object({ small: seconds, large: seconds }),
  /** After opening, before the film is peeled. */
  wait: seconds,
  /** The garment alone, to drive moisture out and lay it flat; 0 for none. */
  prePress: seconds,
  /** After peeling; 0 for none. */
  secondPress: seconds,
  cover: z.enum(covers),
});

const cureValues = z.object({
  temperature,
  seconds,
  /** From a hovering platen to the film; 0 in an oven. */
  clear: length,
});

const recipeFields = {
  id: id<'recipe'>(),
  origin: z.enum(origins),
  notes: text,
  changed: instant,
};

/**
 * A recipe that the shop has set; what it has not set is as it was to start with. The id tells what it is for:
 * `press/hot/cotton`, `cure/oven`.
 */
export const recipeSchema = z.discriminatedUnion('kind', [
  z.object({
    ...recipeFields,
    kind: z.literal('press'),
    peel: z.enum(peels),
    fabric: z.enum(FABRICS),
    values: pressValues,
    /** What it was before, and until when; the latest last. */
    history: z.array(z.object({ until: instant, values: pressValues, origin: z.enum(origins) })),
  }),
  z.object({
    ...recipeFields,
    kind: z.literal('cure'),
    by: z.enum(curers),
    values: cureValues,
    history: z.array(z.object({ until: instant, values: cureValues, origin: z.enum(origins) })),
  }),
]);

/** What the shop works with beyond the film, and how long its hands take. */
export const stationSchema = z.object({
  temperature: z.enum(['C', 'F']),
  /** Copies are cut apart before powder and cure, or after. */
  cutApart: z.enum(['before-powder', 'after-cure']),
  printers: z.tuple([printerSchema], printerSchema),
  presses: z.array(pressSchema).check(z.maxLength(MOST_MACHINES)),
  /** A transfer is pressed as a large one when its longer side is at least so long. */
  large: size,
  /** Places on one side of a garment are pressed in one closing, where they lie on the platen together. */
  oneClosing: z.boolean(),
  curer: z.enum(curers),
  /** What cures film where no press does. */
  ovens: z.array(ovenSchema).check(z.minLength(1), z.maxLength(MOST_MACHINES)),
  people: z.array(personSchema).check(z.minLength(1), z.maxLength(MOST_MACHINES)),
  /** The longest from the first ink of a span to its powder. */
  wetLimit: seconds,
  /** The longest that powdered film may wait for its cure. */
  powderLimit: seconds,
  /** Trays, or other level places, on which powdered spans of a run wait for the cure. */
  trays: z.int().check(z.minimum(1), z.maximum(100)),
  /**
   * How long hands take: for a cut across, to powder a span, to load or unload a cure, and for each copy or garment. `loose`: for each
   * copy more that is powdered, laid under the cure or taken from it by itself, where copies are cut apart before. `cutMetre`: for each
   * metre of line along which copies are cut out, by outline or box; straight cuts take a blade across at once.
   */
  handling: z.object({
    cutOff: seconds,
    powder: seconds,
    load: seconds,
    loose: seconds,
    cutApart: seconds,
    cutMetre: seconds,
    dress: seconds,
    place: seconds,
    pack: seconds,
  }),
  /** What rest and hitches add to all that is done by hand, as a share. */
  allowance: share,
  /** When the shop is open; an order that has no time of its own is due when its day closes. */
  hours: hoursSchema,
});

/** Something ticked off on a run, or taken back; only ever added, so that what two devices have ticked can be put together. */
export const tickSchema = z.object({
  id: id<'tick'>(),
  run: id<'run'>(),
  /** `print/0`, `copy/…`, `press/…`: see the jobs of a run. */
  subject: text,
  done: z.boolean(),
  at: instant,
  /** Initials of who ticked it; empty where nobody said. */
  by: text,
  /** The machine that it was done on; `null` where there is one of its kind, or nobody said. */
  machine: z.nullable(text),
  changed: instant,
});

/** Stages at which a copy or a garment can be spoiled. */
export const stages = ['print', 'powder', 'cure', 'cut', 'press'] as const;

/** A copy, and perhaps the garment under it, that came to nothing; only ever added. */
export const spoilageSchema = z.object({
  id: id<'spoilage'>(),
  run: id<'run'>(),
  copy: id<'copy'>(),
  stage: z.enum(stages),
  /** The garment is spoiled as well: a blank has to be bought. */
  garment: z.boolean(),
  reason: text,
  changed: instant,
});

/**
 * Ticks and spoilages that another device handed over and that could not be put to their run when they came: it was closed, laid
 * out anew or not there. They wait until someone takes them in or lets them go.
 */
export const asideSchema = z.object({
  id: id<'aside'>(),
  run: id<'run'>(),
  /** The run's name where they were made. */
  name: text,
  /** When the run that they were made on had been locked; one that was locked anew is another. */
  locked: instant,
  /** When they were handed over. */
  made: instant,
  ticks: z.array(tickSchema),
  spoilages: z.array(spoilageSchema),
  changed: instant,
});

/** Cured transfers that are not pressed yet, kept flat and dry. */
export const shelfSchema = z.object({
  id: id<'shelf'>(),
  name: text,
  /** The order they were made for. */
  code: text,
  width: size,
  height: size,
  artwork: z.nullable(id<'artwork'>()),
  count,
  /** When they were cured. */
  cured: instant,
  changed: instant,
});

export type Peel = (typeof peels)[number];
export type Curer = (typeof curers)[number];
export type Origin = (typeof origins)[number];
export type Stage = (typeof stages)[number];
export type PressValues = z.infer<typeof pressValues>;
export type CureValues = z.infer<typeof cureValues>;
export type Recipe = z.infer<typeof recipeSchema>;
export type Station = z.infer<typeof stationSchema>;
export type Tick = z.infer<typeof tickSchema>;
export type Spoilage = z.infer<typeof spoilageSchema>;
export type Aside = z.infer<typeof asideSchema>;
export type ShelfItem = z.infer<typeof shelfSchema>;
