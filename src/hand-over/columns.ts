type Fields = Readonly<Record<string, unknown>>;

/** No record has a field of this name: what it holds are the columns of a list. */
const COLUMNS = '=';

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The fields that all objects of a list have, in one order; `null` if they differ, or if there are too few to gain by it. */
function fieldsOf(list: readonly unknown[]): string[] | null {
  const [first] = list;
  if (list.length < 2 || !isFields(first)) return null;
  const names = Object.keys(first);
  const isAlike = (item: unknown) =>
    isFields(item) && Object.keys(item).length === names.length && names.every((name) => name in item);
  return names.length > 0 && list.every(isAlike) ? names : null;
}

/** Plain data with its lists of like objects written by columns: what is alike lies side by side, and deflates to little. */
export function toColumns(value: unknown): unknown {
  if (Array.isArray(value)) {
    const names = fieldsOf(value);
    if (!names) return value.map(toColumns);
    const columns = names.map((name) => [name, toColumns(value.map((item: Fields) => item[name]))]);
    return { [COLUMNS]: Object.fromEntries(columns) };
  }
  if (!isFields(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, own]) => [name, toColumns(own)]));
}

/**
 * The data that {@link toColumns} was given.
 * @throws RangeError if columns are of different lengths
 */
export function fromColumns(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(fromColumns);
  if (!isFields(value)) return value;
  const columns = value[COLUMNS];
  if (!isFields(columns))
    return Object.fromEntries(Object.entries(value).map(([name, own]) => [name, fromColumns(own)]));
  const lists = Object.entries(columns).map(([name, column]): [string, unknown[]] => {
    const list = fromColumns(column);
    if (!Array.isArray(list)) throw new RangeError('a column is no list');
    return [name, list];
  });
  const count = lists[0]?.[1].length ?? 0;
  if (lists.some(([, list]) => list.length !== count)) throw new RangeError('columns differ in length');
  return Array.from({ length: count }, (_, row) =>
    Object.fromEntries(lists.map(([name, list]) => [name, list[row]])),
  );
}
