import { createStore, get, set, type UseStore } from 'idb-keyval';
import { inTime } from './patience';
import { remember, remembered } from './remembered';

/** The databases of a book and of its artwork. The demo day has its own. */
export interface DatabaseNames {
  readonly book: string;
  readonly artwork: string;
  readonly snapshots: string;
}

export const databases = {
  shop: { book: 'rollwright', artwork: 'rollwright-artwork', snapshots: 'rollwright-snapshots' },
  demo: {
    book: 'rollwright-demo',
    artwork: 'rollwright-demo-artwork',
    snapshots: 'rollwright-demo-snapshots',
  },
} as const satisfies Record<string, DatabaseNames>;

/** Whose book is open: the shop's own, or the demo day's. */
export type Source = keyof typeof databases;

const CHOICE = 'opened';
const CHOICE_KEY = 'rollwright-opened';

/** What is asked of the choice's database; `null` if it fails, or does not answer in time. */
async function ofChoice<Value>(ask: (store: UseStore) => Promise<Value>): Promise<Value | null> {
  try {
    return await inTime(ask(createStore('rollwright-choice', 'choice')));
  } catch {
    return null;
  }
}

/** Whether a word is a choice. */
const isSource = (choice: unknown): choice is Source => choice === 'shop' || choice === 'demo';

/**
 * Which book was open last; `null` on the first visit, or where nothing is kept. It is kept twice: where it is read
 * at once, and in a database, where older versions have it alone.
 */
export async function lastOpened(): Promise<Source | null> {
  const atOnce = remembered(CHOICE_KEY);
  if (isSource(atOnce)) return atOnce;
  const choice = await ofChoice((store) => get<unknown>(CHOICE, store));
  return isSource(choice) ? choice : null;
}

export async function rememberOpened(source: Source): Promise<void> {
  remember(CHOICE_KEY, source);
  await ofChoice((store) => set(CHOICE, source, store));
}
