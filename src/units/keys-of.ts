/** The keys of a table that has no others than its type names. */
export const keysOf = <Key extends string>(table: Readonly<Record<Key, unknown>>): Key[] =>
  Object.keys(table) as Key[];
