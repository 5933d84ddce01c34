import { create } from 'zustand';
import type { NewArtwork } from '../../src/editing';
import type { Blank, Stage, Transfer } from '../../src/model';

/** What a refusal or a success says, until it is read or replaced. */
export interface Notice {
  readonly id: number;
  readonly tone: 'plain' | 'care' | 'error';
  readonly text: string;
  /** A part of the app is missing: the page is to be loaded again. */
  readonly reload: boolean;
}

export type Room = 'orders' | 'quote' | 'film' | 'cut' | 'cut-map' | 'press' | 'cards' | 'stock' | 'log';

/** A design that is wanted at several sizes, with or without an image. */
export interface Design {
  readonly name: string;
  readonly artwork: NewArtwork | null;
  /** The size to begin with: as its file says, or as a transfer has it. */
  readonly size: Pick<Transfer, 'width' | 'height'>;
  /** The garment's colour it is looked at on. */
  readonly shade: Transfer['shade'];
}

/** What is saved as a table. */
export type Saved = 'log' | 'ledger' | 'upkeep';

/** A window that lies over the room. */
export type Dialog =
  | { readonly kind: 'paste'; readonly text: string }
  | { readonly kind: 'film' | 'run' | 'printed' | 'spoiled' | 'print-image' | 'cut-file' }
  | { readonly kind: 'order' | 'grid' | 'names' | 'archive'; readonly order: string }
  | { readonly kind: 'transfer' | 'artwork'; readonly transfer: string }
  | { readonly kind: 'fabrics' | 'close-run'; readonly run: string }
  | { readonly kind: 'cost-sheet' | 'compare' | 'make-or-buy'; readonly run: string }
  | { readonly kind: 'compare-order'; readonly order: string }
  | { readonly kind: 'price'; readonly order: string }
  /** Where it came to nothing, and the copy in hand. */
  | { readonly kind: 'spoil'; readonly copy: string | null; readonly stage: Stage }
  /** Set up from another window, which it goes back to. */
  | { readonly kind: 'costs' | 'prices'; readonly back: Dialog | null }
  | { readonly kind: 'csv'; readonly what: Saved }
  /** By the instant at which it was taken. */
  | { readonly kind: 'snapshot'; readonly at: string }
  | { readonly kind: 'stock-item'; readonly item: string }
  | { readonly kind: 'stock-add'; readonly garment: Pick<Blank, 'style' | 'colour' | 'size'> | null }
  /** Image files, and the order that they were given to, if they were to one. */
  | { readonly kind: 'match-artwork'; readonly files: readonly File[]; readonly order: string | null }
  | { readonly kind: 'design'; readonly order: string; readonly design: Design }
  | {
      readonly kind:
        | 'keep'
        | 'shop'
        | 'keys'
        | 'test-strip'
        | 'station'
        | 'recipes'
        | 'hand-over'
        | 'upkeep'
        | 'calibrate';
    };

/** All of it lives until the tab closes; none of it is undone. */
interface View {
  readonly room: Room;
  /** The run that is looked at; `null` for the first open one. */
  readonly run: string | null;
  /** The quote that is shown; `null` for the one given last. */
  readonly quoted: string | null;
  /** A tap adds to the selection: what Shift does for a mouse. */
  readonly several: boolean;
  /** Every copy is drawn with its true outline, not only those selected. */
  readonly outlines: boolean;
  /** Copies on the film that acts are for. */
  readonly selected: ReadonlySet<string>;
  /** The order that was just added: it is the first of the list, to be named. */
  readonly newOrder: string | null;
  readonly dialog: Dialog | null;
  readonly notices: readonly Notice[];
}

const nothing: ReadonlySet<string> = new Set();

export const useView = create<View>(() => ({
  room: 'film',
  run: null,
  quoted: null,
  several: false,
  outlines: false,
  selected: nothing,
  newOrder: null,
  dialog: null,
  notices: [],
}));

let lastNotice = 0;

/** Says one sentence; the same sentence is not said twice at once. */
export function notify(tone: Notice['tone'], text: string, reload = false): void {
  lastNotice += 1;
  const notice = { id: lastNotice, tone, text, reload };
  useView.setState(({ notices }) => ({
    notices: [...notices.filter((other) => other.text !== text), notice].slice(-3),
  }));
}

export const dismissNotice = (id: number): void =>
  useView.setState(({ notices }) => ({ notices: notices.filter((notice) => notice.id !== id) }));

/** Takes what an act said off the screen: the act is undone, or done again. What failed is still so. */
export const clearActNotices = (): void =>
  useView.setState(({ notices }) => ({ notices: notices.filter(({ tone }) => tone === 'error') }));

/** Takes all notices off the screen: what lies under them has to be seen whole. */
export const clearNotices = (): void => useView.setState({ notices: [] });

/** Selects these copies and no others. */
export const select = (...ids: readonly string[]): void => useView.setState({ selected: new Set(ids) });

/** Adds copies to the selection; one that is in it already, alone, is taken out. */
export const selectAlso = (ids: readonly string[]): void =>
  useView.setState(({ selected }) => {
    const [only] = ids;
    if (ids.length === 1 && only !== undefined && selected.has(only)) {
      return { selected: new Set([...selected].filter((id) => id !== only)) };
    }
    return { selected: new Set([...selected, ...ids]) };
  });

export const selectSeveral = (several: boolean): void => useView.setState({ several });

export const showOutlines = (outlines: boolean): void => useView.setState({ outlines });

/** Shows an order that was just added before all others, to be named; `null` for none. */
export const showNewOrder = (newOrder: string | null): void => useView.setState({ newOrder });

/** Looks at another run. */
export const openRun = (run: string): void => useView.setState({ run, selected: nothing });

/** Opens a window, or closes the one that is open. What went well before is not said over a window. */
export const openDialog = (dialog: Dialog | null): void =>
  useView.setState(({ notices }) => ({
    dialog,
    notices: dialog ? notices.filter(({ tone }) => tone !== 'plain') : notices,
  }));

const rooms: readonly Room[] = [
  'orders',
  'quote',
  'film',
  'cut',
  'cut-map',
  'press',
  'cards',
  'stock',
  'log',
];

const roomOf = (hash: string): Room => rooms.find((room) => hash === `#/${room}`) ?? 'film';

/** The room lies in the address, so that back and a bookmark work. */
export function followAddress(): void {
  const follow = () => useView.setState({ room: roomOf(location.hash) });
  follow();
  addEventListener('hashchange', follow);
}

export const goTo = (room: Room): void => {
  location.hash = `#/${room}`;
};

/** Shows a quote. */
export function showQuote(quote: string): void {
  useView.setState({ quoted: quote, dialog: null });
  goTo('quote');
}
