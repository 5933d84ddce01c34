/** A record that is only ever added. */
interface Added {
  readonly id: string;
  readonly changed: string;
}

/** What a record says, whenever it was written here. */
const said = <Item extends Added>({ changed, ...rest }: Item): string => JSON.stringify(rest);

/**
 * Puts together what two devices have added. Ids are random, so that two records of one id are one record; were they not, the
 * same one of them is kept on every device.
 * @returns all of both, by id
 */
export function merged<Item extends Added>(own: readonly Item[], others: readonly Item[]): Item[] {
  const all = new Map(own.map((item) => [item.id, item]));
  for (const item of others) {
    const known = all.get(item.id);
    if (!known || said(item) > said(known)) all.set(item.id, item);
  }
  return [...all.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
}
