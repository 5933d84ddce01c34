/** The least and the most of a figure, both of them allowed. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

const upTo = (most: number): Range => ({ least: 0, most });
const oneTo = (most: number): Range => ({ least: 1, most });

/**
 * What figures a shop can have: the one table that stored records are held against. What may be typed lies within, so that nothing
 * that was entered is refused when it is read again. Beyond lie damage and forgery, which would have a room draw for ever.
 */
export const ranges = {
  /** In micrometres, as all lengths: 10 km, the longest that may be typed. */
  length: upTo(10_000_000_000),
  size: oneTo(10_000_000_000),
  /** 5 m: no textile printer takes wider film (common practice, no source). */
  filmWidth: oneTo(5_000_000),
  across: upTo(5_000_000),
  sheetLength: oneTo(5_000_000),
  /** Ten rolls of the longest that may be typed, bought one after another. */
  filmLeft: upTo(100_000_000_000),
  sheets: upTo(10_000_000),
  /** In minor units; half of what a number holds exactly. */
  money: upTo(4_000_000_000_000_000),
  rate: oneTo(Number.MAX_SAFE_INTEGER),
  /** A thousand times the most that may be typed, since amounts are added up: microlitres, milligrams. */
  amount: upTo(10_000_000_000_000),
  /** Of all copies and garments of a run together: some three hundred years. */
  seconds: upTo(10_000_000_000),
  /** Tenths of a degree, less than a whole turn. */
  angle: upTo(3_599),
  /** Tenths of a degree Celsius: from the coldest there is to hotter than any oven. */
  temperature: { least: -2_731, most: 10_000 },
  /** Degrees Celsius of a room; what a gauge cannot show is not asked to be likely. */
  air: { least: -273.15, most: 1_000 },
  count: upTo(10_000_000),
  number: oneTo(10_000_000),
  /** As many as their names have figures for. */
  step: oneTo(999_999_999),
  watts: upTo(100_000),
  days: upTo(999),
  pixels: oneTo(1_000_000_000),
  /** A part of the whole. */
  share: upTo(1),
  /** A share that may be more than the whole: a markup of 150%. */
  ratio: upTo(100),
  /** Square millimetres: the longest film that is known, at its widest. */
  area: upTo(500_000_000_000_000),
  /** Measured length over the length printed: no printer that prints feeds worse. */
  feed: { least: 0.9, most: 1.1 },
  /** One feed over another. */
  stretch: { least: 0.8, most: 1.25 },
  /** Height over width. */
  shape: { least: 1e-7, most: 1e7 },
  /** Pixels a metre. */
  density: { least: Number.MIN_VALUE, most: 1e12 },
  /** Characters: more than anyone types in a field. */
  text: upTo(1_000_000),
  id: oneTo(500),
  /** Characters of base64: a PNG of 90 kB, many times what a mark of a few hundred pixels takes. */
  mark: oneTo(120_000),
} as const satisfies Record<string, Range>;
