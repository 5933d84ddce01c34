import { onceFor } from './once-for';

type Records<Entry> = Readonly<Record<string, Entry>>;

/**
 * Cuts records down to some of their fields, for what is worked out from these alone. The same object as the last time as long as these
 * fields are the same, whatever else of the records was changed, so that what was worked out can be remembered by it.
 * @returns for records that are replaced, never changed
 */
export function onlyFields<Entry extends object, Field extends keyof Entry>(
  fields: readonly Field[],
): (records: Records<Entry>) => Records<Pick<Entry, Field>> {
  type Part = Pick<Entry, Field>;
  let last: { readonly of: Records<Entry>; readonly parts: Records<Part> } = { of: {}, parts: {} };
  const partOf = (entry: Entry, before: Part | undefined): Part =>
    before && fields.every((field) => Object.is(entry[field], before[field]))
      ? before
      : (Object.fromEntries(fields.map((field) => [field, entry[field]])) as Part);
  return onceFor((records) => {
    const { of, parts } = last;
    const found: Record<string, Part> = {};
    const ids = Object.keys(records);
    const known = Object.keys(parts);
    let isSame = ids.length === known.length;
    ids.forEach((id, at) => {
      const entry = records[id] as Entry;
      const before = parts[id];
      const part = before && of[id] === entry ? before : partOf(entry, before);
      found[id] = part;
      isSame &&= part === before && id === known[at];
    });
    last = { of: records, parts: isSame ? parts : found };
    return last.parts;
  });
}
