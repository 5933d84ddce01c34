/**
 * What a page tells the service worker when it begins. A build is known by the address of its entry script: it is named by its content, and
 * so by that of all that it may still fetch.
 */
export interface Begun {
  readonly type: 'BEGUN';
  readonly entry: string;
}

/** What the service worker answers: whether the page is of the build that it keeps. */
export interface Told {
  readonly isCurrent: boolean;
}

const LOCK = 'page of ';

/** The lock that each page of a build shares while it lives, so that the service worker knows which builds are in use. */
export const lockOf = (entry: string): string => `${LOCK}${entry}`;

/** The build of the page that holds a lock; `null` for a lock of another kind. */
export const entryOf = (lock: string | undefined): string | null =>
  lock?.startsWith(LOCK) ? lock.slice(LOCK.length) : null;
