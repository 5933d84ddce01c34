/** A canvas that is wider is blank. */
export const WIDEST = 65_535;

/** Pixels a tab can hold beside everything else. */
export const MOST_PIXELS = 150_000_000;
