import * as z from 'zod/mini';
import { FABRICS, TURNINGS } from '../units';
import { peels, stationSchema } from './bench';
import { ratesSchema } from './closing';
import {
  count,
  currency,
  id,
  instant,
  length,
  lengthOf,
  localDate,
  localTime,
  money,
  number,
  picture,
  shade,
  share,
  size,
  text,
  whole,
  within,
} from './fields';
import { garmentPlaces } from './garment-place';
import { alternativeSchema, costsSchema, orderPricingSchema, pricingSchema } from './prices';
import { ranges } from './ranges';

/** Orders at work are told apart by tints, of which there are this many; the code of every copy is the other sign. */
export const TINTS = 1000;

/** What garments are made of, as far as heat is concerned; `null` while nobody has told, which is asked before a run is locked. */
const fabric = z.nullable(z.enum(FABRICS));

/** A width as it is printed and as the user typed it. */
const printedWidth = z.object({ width: size, typed: text });

/** What a customer wants. */
export const orderSchema = z.object({
  id: id<'order'>(),
  /** Two or three letters printed on every copy; unique in the book. */
  code: z.string().check(z.minLength(1), z.maxLength(4)),
  name: text,
  contact: text,
  notes: text,
  due: z.nullable(localDate),
  /** `HH:MM` on the due date; `null` for any time of that day. */
  dueTime: z.nullable(localTime),
  rush: z.boolean(),
  /** What the order still waits for before it may be printed. */
  awaits: z.object({ proof: z.boolean(), blanks: z.boolean() }),
  handover: z.enum(['collect', 'ship']),
  /** Pressed garments, or transfers that the customer presses. */
  wants: z.enum(['garments', 'transfers']),
  /** The customer brings the garments. */
  supplied: z.boolean(),
  pricing: orderPricingSchema,
  /** How far the order is beyond the press. */
  progress: z.enum(['open', 'packed', 'collected']),
  archived: z.boolean(),
  tint: z.int().check(z.minimum(0), z.maximum(TINTS - 1)),
  /** What the next copy is numbered; a number is not given twice, even when its copy is gone. */
  nextNumber: number,
  changed: instant,
});

/** What a check of artwork can find, and a shop can call meant. */
const findingCodes = [
  'coarse',
  'stretched',
  'coarse-image',
  'font',
  'see-through',
  'thin-strokes',
  'white-lost',
  'thin-white',
  'specks',
  'screen-dots',
  'screen-holes',
  'strays',
  'openings',
  'ground',
  'checkerboard',
  'fringe',
  'black-on-black',
  'profile',
  'gamma',
  'animated',
  'deep',
  'outside',
] as const;

/** A finding that is meant so: in which artwork, and how far. */
const meantSchema = z.object({
  finding: z.enum(findingCodes),
  artwork: id<'artwork'>(),
  /** Figures that grow as it gets worse. */
  amounts: z.array(z.number()),
});

/** One design at one printed size. How many are wanted is how many copies there are. */
export const transferSchema = z.object({
  id: id<'transfer'>(),
  order: id<'order'>(),
  name: text,
  width: size,
  height: size,
  /** The size as the user typed it. */
  typed: z.object({ width: text, height: text }),
  turn: z.enum(TURNINGS),
  artwork: z.nullable(id<'artwork'>()),
  /** One of a finding at most. */
  meant: z.array(meantSchema),
  /** The garment's colour, `#rrggbb`, to look at the artwork on. */
  shade: z.nullable(shade),
  /** The garment of a named or numbered transfer. */
  garment: z.nullable(id<'garment'>()),
  /** What it goes on, where no line of garments calls for it and tells. */
  fabric,
  /** Where the grid of an order made it; `null` for one that was listed by hand. */
  grid: z.nullable(z.object({ placement: id<'placement'>(), width: size })),
  changed: instant,
});

/** Garments of one style, colour and size. */
export const garmentSchema = z.object({
  id: id<'garment'>(),
  order: id<'order'>(),
  style: text,
  colour: text,
  shade: z.nullable(shade),
  /** As the trade writes it: `S`, `XL`, `YM`, `4T`. */
  size: text,
  fabric,
  count,
  /** What one costs the shop; `null` for what its style costs. */
  price: z.nullable(money),
  changed: instant,
});

/** A place on every garment of an order that gets a design, at a printed width for each group of sizes. */
export const placementSchema = z.object({
  id: id<'placement'>(),
  order: id<'order'>(),
  /** `front`, `left chest`, or the shop's own word. */
  place: text,
  /** What that word means for the garment. */
  on: z.enum(garmentPlaces),
  design: text,
  /** Height over width of the design. */
  ratio: within(ranges.shape),
  artwork: z.nullable(id<'artwork'>()),
  widths: z.object({ adult: printedWidth, youth: printedWidth, toddler: printedWidth }),
  /** Of sizes that are printed at another width than their group, by `sizeKey`. */
  sizes: z.record(text, printedWidth),
  changed: instant,
});

/**
 * How an image is mended. `knock-out`: a colour is made transparent, from the edge inwards or wherever it is. `take-off`: what lies
 * by itself is cleared, far from all else or anywhere. `thicken`: strokes are made no thinner than a width.
 * `defringe`: a colour that edges were mixed with is unmixed from them. `threshold`: what is see-through is made solid or cleared.
 * `screen`: it is broken into dots.
 */
const mendSchema = z.discriminatedUnion('kind', [
  z.object({
    kind: z.literal('knock-out'),
    colour: shade,
    /** Channels may differ from the colour by so much. */
    tolerance: z.int().check(z.minimum(0), z.maximum(255)),
    reach: z.enum(['from-edge', 'everywhere']),
  }),
  z.object({
    kind: z.literal('take-off'),
    /** Across, as it is printed. */
    largest: size,
    reach: z.enum(['strays', 'everywhere']),
  }),
  z.object({ kind: z.literal('thicken'), to: size }),
  z.object({ kind: z.literal('defringe'), ground: shade }),
  z.object({
    kind: z.literal('threshold'),
    /** Solid from this share of opacity on. */
    from: z.number().check(z.positive(), z.maximum(1)),
  }),
  z.object({
    kind: z.literal('screen'),
    /** Dots an inch along their rows. */
    lines: z.number().check(z.minimum(5), z.maximum(150)),
    /** Across the smallest dot, and the smallest hole, as it is printed. */
    least: size,
  }),
]);

const pixels = whole(ranges.pixels);
const offset = whole({ least: 0, most: ranges.pixels.most });

/** Steps on each axis from one side of the trimmed box to the other, in which outlines are told. */
export const OUTLINE_STEPS = 20_000;

/**
 * Lines around all that prints of an image: corners, across and down in turn, in steps of the trimmed box, clockwise as the image is looked
 * at; and around its holes, the other way. They touch all four of its sides, and no ink lies outside of them or in a hole.
 */
export const outlineSchema = z.array(z.array(whole({ least: 0, most: OUTLINE_STEPS })).check(z.minLength(6)));

/** What is known of an image file; its bytes lie in the artwork store under the same id. */
export const artworkSchema = z.object({
  /** SHA-256 of the file's bytes, in hexadecimal. */
  id: id<'artwork'>(),
  fileName: text,
  kind: z.enum(['png', 'jpeg', 'webp', 'svg', 'pdf']),
  pixels: z.object({ width: pixels, height: pixels }),
  /** Pixels a metre, each axis; `null` if the file does not say. */
  density: z.nullable(z.object({ x: within(ranges.density), y: within(ranges.density) })),
  /** The box of pixels with an alpha of at least 8 in 255; `null` if the image is blank. */
  trim: z.nullable(z.object({ x: offset, y: offset, width: pixels, height: pixels })),
  /** The image this one was made from, and how; `null` for one that was dropped. */
  madeFrom: z.nullable(z.object({ artwork: id<'artwork'>(), by: mendSchema })),
  /** `null` while it is not looked at, or where it has none that copies could be laid out by. */
  outline: z.nullable(outlineSchema),
  /** Which way of finding outlines it was looked at by, counted up with each better one; 0 while it is not looked at. */
  outlinedBy: whole(ranges.count),
  changed: instant,
});

/** How film may be cut apart: see {@link filmSchema}. */
export const cuttings = ['free', 'outlines', 'in-holes', 'straight', 'staged'] as const;

const filmFields = {
  id: id<'film'>(),
  name: text,
  /** The printer that it is in, or goes into. */
  printer: id<'printer'>(),
  width: lengthOf(ranges.filmWidth),
  margins: z.object({ left: length, right: length, lead: length, tail: length }),
  /** Least distance between two copies; even, so that half a gap is whole. */
  gap: length,
  /**
   * Cut apart with scissors along any line, copies laid out as boxes; with scissors or a contour cutter, laid out by their outlines,
   * those that have room in others' holes lying there too where the shop cuts them out; or on a trimmer that cuts from edge to edge only: in any order, or first across the
   * film, then along it, then across again.
   */
  cutting: z.enum(cuttings),
  /**
   * Whether the copies of one order lie anywhere, near each other for some share of film more, or in a stretch of their own; or all that
   * is due at one time in a stretch of its own, what is due soonest first.
   */
  together: z.discriminatedUnion('kind', [
    z.object({ kind: z.literal('any') }),
    z.object({ kind: z.literal('near'), share }),
    z.object({ kind: z.literal('apart') }),
    z.object({ kind: z.literal('by-due') }),
  ]),
  peel: z.enum(peels),
  /** Blank at the front beside the lead, where a cut end curls away from the platen. */
  curl: length,
  archived: z.boolean(),
  changed: instant,
};

/** A roll of film and how it may be used. */
const rollSchema = z.object({
  ...filmFields,
  kind: z.literal('roll'),
  lengthLeft: lengthOf(ranges.filmLeft),
  price: z.object({ amount: money, per: size }),
  spanMax: z.nullable(size),
  /** Film the printer feeds blank for each job. */
  jobBlank: length,
  /** What is a job: the run, or each of its spans. */
  jobs: z.enum(['run', 'span']),
  /** Film from the print head to the knife, lost at each cut unless the printer feeds it back. */
  cutBlank: length,
  /** The end of the roll that the printer cannot reach. */
  unreached: length,
  /** Stretches that may not be used, from the roll's present leading edge: scuffs, splices. */
  noPrint: z.array(z.object({ from: length, to: length })),
});

/** A stack of cut sheets. */
const sheetsSchema = z.object({
  ...filmFields,
  kind: z.literal('sheets'),
  length: lengthOf(ranges.sheetLength),
  sheetsLeft: whole(ranges.sheets),
  /** For one sheet. */
  price: money,
});

export const filmSchema = z.discriminatedUnion('kind', [rollSchema, sheetsSchema]);

const patch = z.object({
  op: z.enum(['add', 'remove', 'replace']),
  path: z.array(z.union([text, z.number()])),
  value: z.optional(z.unknown()),
});

/** A step that can be taken back, or one that was and can be made again; in the order of their numbers. */
export const stepSchema = z.object({
  id: id<'step'>(),
  number: whole(ranges.step),
  redo: z.array(patch),
  undo: z.array(patch),
  undone: z.boolean(),
  changed: instant,
});

/** Languages the app speaks; ISO 639-1. */
export const languages = ['en', 'es'] as const;

export type Language = (typeof languages)[number];

/** How this shop reads and writes figures. */
export const settingsSchema = z.object({
  language: z.enum(languages),
  unit: z.enum(['mm', 'in']),
  currency,
  dateOrder: z.nullable(z.enum(['day-first', 'month-first'])),
  paper: z.enum(['a4', 'letter']),
  /** The cut map as the film comes out of the printer, ink up, or as seen on screen. */
  mapView: z.enum(['ink-up', 'on-screen']),
  /** How the map lies on its paper: its figures set large, a page for each span, pictures in its legend. */
  mapPaper: z.object({
    landscape: z.boolean(),
    large: z.boolean(),
    perSpan: z.boolean(),
    pictures: z.boolean(),
  }),
  /** From which widths on this shop trusts its film, and what the white is taken in by on each side. */
  limits: z.object({ stroke: length, opening: length, choke: length, white: length }),
  /** How print-ready images are written. */
  printImage: z.object({
    form: z.enum(['png', 'pdf', 'tiff']),
    /** Pixels an inch. */
    ppi: z.int().check(z.minimum(150), z.maximum(720)),
    /** Marks where knife lines are, at the film's edges. */
    ticks: z.boolean(),
    /** Each copy's number in the gap beside it. */
    numbers: z.boolean(),
    /** The order's and the transfer's name before it, where there is room. */
    names: z.boolean(),
    /** Registration corners for a contour cutter, which its file holds too. */
    corners: z.boolean(),
    /** Made shorter, or longer, along the film by what the printer feeds long, or short, so that prints come out true. */
    feedCorrected: z.boolean(),
    /** With the choked white as a plane of its own. */
    white: z.boolean(),
    /** What that plane is called where it is a spot colour or a channel. */
    whiteName: text,
  }),
  /** How the lines for a contour cutter are written, and how the film lies under it: see {@link settingsSchema.mapView}. */
  cutFile: z.object({ form: z.enum(['svg', 'dxf']), view: z.enum(['ink-up', 'on-screen']) }),
  station: stationSchema,
  /** Runs in the order in which they shall be printed; of those that are not listed the planner chooses. */
  runOrder: z.array(id<'run'>()),
  /** What lies on the shelf is used before more is printed. */
  shelfFirst: z.boolean(),
  rates: ratesSchema,
  costs: costsSchema,
  pricing: pricingSchema,
  /** Prices of transfers and decoration that the shop could buy instead. */
  alternatives: z.array(alternativeSchema),
  /** Who a quote comes from. */
  letterhead: z.object({ name: text, address: text }),
  /** The shop's mark beside its name; `null`: its initials. */
  mark: z.nullable(picture),
  /** When a backup was last saved. */
  lastBackup: z.nullable(instant),
  /** Headings that mean nothing by themselves, in lower case, and the column that the shop has said each is in any table. */
  columns: z.record(text, text),
  /** What the shop has said of headings in tables of the same headings, by all of these. */
  tables: z.record(text, z.record(text, text)),
  changed: instant,
});

export type Order = z.infer<typeof orderSchema>;
export type Transfer = z.infer<typeof transferSchema>;
export type Meant = z.infer<typeof meantSchema>;
export type Garment = z.infer<typeof garmentSchema>;
export type PrintedWidth = z.infer<typeof printedWidth>;
export type Placement = z.infer<typeof placementSchema>;
export type Artwork = z.infer<typeof artworkSchema>;
export type ArtworkOutline = z.infer<typeof outlineSchema>;
export type Mend = z.infer<typeof mendSchema>;
export type Film = z.infer<typeof filmSchema>;
export type Roll = z.infer<typeof rollSchema>;
export type Sheets = z.infer<typeof sheetsSchema>;
export type StoredStep = z.infer<typeof stepSchema>;
export type Settings = z.infer<typeof settingsSchema>;
