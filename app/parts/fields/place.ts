/** Where in a record a value lies, that it may not have; both ways are pure. */
export interface Place<Whole, Part> {
  /** The value; `undefined` where the record has no such place. */
  readonly get: (whole: Whole) => Part | undefined;
  /** The record with another value in this place; as it was where it has none. */
  readonly put: (whole: Whole, part: Part) => Whole;
  /** A place within this one. */
  readonly to: <Key extends keyof Part>(key: Key) => Place<Whole, Part[Key]>;
  /** This place in records where the value is so. */
  readonly when: (is: (part: Part) => boolean) => Place<Whole, Part>;
  /** This place in records where the value is of a kind. */
  readonly only: <Kind extends Part>(is: (part: Part) => part is Kind) => Place<Whole, Kind>;
}

/** A place by its two ways. */
export const place = <Whole, Part>(
  get: (whole: Whole) => Part | undefined,
  put: (whole: Whole, part: Part) => Whole,
): Place<Whole, Part> => ({
  get,
  put,
  to: <Key extends keyof Part>(key: Key) =>
    place<Whole, Part[Key]>(
      (whole) => {
        const part = get(whole);
        return part === undefined || part === null ? undefined : part[key];
      },
      (whole, value) => {
        const part = get(whole);
        return part === undefined || part === null ? whole : put(whole, { ...part, [key]: value });
      },
    ),
  when: (is) =>
    place<Whole, Part>((whole) => {
      const part = get(whole);
      return part !== undefined && is(part) ? part : undefined;
    }, put),
  only: <Kind extends Part>(is: (part: Part) => part is Kind) =>
    place<Whole, Kind>((whole) => {
      const part = get(whole);
      return part !== undefined && is(part) ? part : undefined;
    }, put),
});

/** The whole record, where every place in it begins. */
export const placesIn = <Whole>(): Place<Whole, Whole> =>
  place(
    (whole) => whole,
    (_, whole) => whole,
  );
