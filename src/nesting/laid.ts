/** Where a copy lies in a bin: the corner of its grown box, across in micrometres, along in rows. */
export interface Laid {
  /** Index into all shapes of the stock. */
  readonly shape: number;
  readonly x: number;
  readonly row: number;
}
