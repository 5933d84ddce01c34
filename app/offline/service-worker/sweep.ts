import { entryOf } from '../build';

/**
 * Whether every page is of this build, so that what was kept for older ones is in no use any more. A page that holds no lock is of a
 * build that knows of none, or has not begun yet. Pages and holders of locks are known by different ids, so they are counted.
 * @param pages how many pages there are
 * @param held the locks that are held
 * @param isOurs whether this build has a file of that address
 */
export function isAllOurs(
  pages: number,
  held: readonly LockInfo[],
  isOurs: (entry: string) => boolean,
): boolean {
  const holders = new Set<string | undefined>();
  for (const { name, clientId } of held) {
    const entry = entryOf(name);
    if (entry !== null && isOurs(entry)) holders.add(clientId);
  }
  return holders.size >= pages;
}
