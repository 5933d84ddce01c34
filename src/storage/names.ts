import { createStore, get, set } from 'idb-keyval';

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
const choiceStore = () => createStore('rollwright-choice', 'choice');

/** Which book was open last; `null` on the first visit, or where nothing is kept. */
export async function lastOpened(): Promise<Source | null> {
  const choice = await get<unknown>(CHOICE, choiceStore()).catch(() => null);
  return choice === 'shop' || choice === 'demo' ? choice : null;
}

export const rememberOpened = (source: Source): Promise<void> =>
  set(CHOICE, source, choiceStore()).catch(() => undefined);
