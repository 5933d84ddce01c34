import { checked, reconciled } from '../../src/editing';
import { type Book, emptyBook } from '../../src/model';
import {
  browserGround,
  databases,
  lastOpened,
  noEpoch,
  openRepository,
  openSharedBook,
  openSnapshots,
  ownBook,
  rememberOpened,
  rememberOwnBook,
  type SharedBook,
  type SnapshotStore,
  type Source,
} from '../../src/storage';
import { fetchPart } from '../offline/part';
import { wordsNow } from '../words';
import { openArtworkOf } from './artwork';
import { atRest } from './at-rest';
import { followChecks } from './checks';
import { askToKeep } from './durable';
import { sayFailed } from './failures';
import { firstBookOf, firstSettingsNow } from './first-book';
import { carry, memoryWork, takeCarried } from './in-memory';
import { followHours, keepHouse } from './keep-house';
import { followLanguage, speakOf } from './language';
import { followPage } from './page-life';
import { layOut, stopPlanning } from './planning';
import { editContext, mayWrite, sayReconciled, sayTakenOff, useShop } from './shop';
import { dayOf } from './today';
import { notify, select, useView } from './view';

/** The book that is open, from its storage to its place among the tabs. */
interface Session extends Pick<SharedBook, 'retry' | 'takeOver'> {
  readonly snapshots: SnapshotStore;
  /** Ends when all is written. */
  close(): Promise<void>;
}

let session: Session | null = null;

/** Opens the book that was open last; on the first visit the demo day. */
export async function start(): Promise<void> {
  // What is opened for want of a choice is none.
  await showSource((await lastOpened()) ?? (ownBook() ? 'shop' : 'demo'));
}

/** Closes the open book and opens another. */
export async function openSource(source: Source): Promise<void> {
  await showSource(source);
  await rememberOpened(source);
}

/** Closes the open book once all is written; nothing can be entered any more. */
export async function closeBook(): Promise<void> {
  stopPlanning();
  useShop.setState({ phase: { kind: 'opening' } });
  await session?.close();
  session = null;
}

async function showSource(source: Source): Promise<void> {
  await closeBook();
  useView.setState({ run: null });
  select();
  useShop.setState({
    source,
    book: emptyBook,
    saving: { kind: 'saving' },
    inMemory: null,
    isGone: false,
    follows: false,
    setAside: [],
    fellBack: [],
  });
  session = openSession(source);
}

/** Tries again after storage has failed. */
export const retrySaving = (): void => session?.retry();

/** Goes on with an empty book where the one before is gone. */
export function startAnew(): void {
  rememberOwnBook('begun');
  useShop.setState({ isGone: false });
}

export const takeOver = (): void => session?.takeOver();

/** The snapshots of the book that is open. */
export const snapshotsNow = (): SnapshotStore | null => session?.snapshots ?? null;

function openSession(source: Source): Session {
  const names = databases[source];
  const epoch = noEpoch();
  const artwork = openArtworkOf(names.artwork, epoch);
  const snapshots = openSnapshots(names.snapshots, epoch, dayOf, firstSettingsNow);
  const repository = openRepository(names.book, epoch, firstSettingsNow, (records, version) =>
    snapshots.takeOlder(records, version, editContext().now),
  );

  const memory = memoryWork(source, repository, () => showSource(source), start);

  /** The first that is entered in the shop's own book: from now on it would be missed. */
  const beginWork = (): void => {
    if (source !== 'shop' || useShop.getState().inMemory) return;
    rememberOwnBook('begun');
    useShop.setState({ isGone: false });
    askToKeep();
  };

  /** Keeps what was entered while nothing was kept as a snapshot, beside the book that was there all the time. */
  const keepMeanwhile = async (book: Book): Promise<void> => {
    try {
      await snapshots.take(book, 'before-restoring', editContext().now);
      notify('care', wordsNow().storage.meanwhile);
    } catch {
      carry(book);
    }
  };

  /** Whether what changes now was entered, and not opened. */
  let isBegun = false;

  /** Whether this book is still the one that is open. */
  const isShown = (): boolean => useShop.getState().source === source;

  /** Draws the demo day's artwork; what that takes is fetched when the film is on the screen. */
  const drawAtRest = async (): Promise<void> => {
    await atRest();
    if (!isShown()) return;
    try {
      const { drawDemo } = await fetchPart(() => import('./demo'));
      await drawDemo();
    } catch (error) {
      sayFailed('demo', error);
    }
  };

  /** What is to be said, or done, once the book that was found may be written. */
  let onceOpen: () => Promise<void> | undefined = () => undefined;

  const shared = openSharedBook(
    { name: names.book, tab: crypto.randomUUID(), now: Date.now },
    { repository, epoch },
    browserGround(names.book),
    {
      async prepare(found) {
        if (found.kind === 'read') await speakOf(found.book);
      },
      begin(found) {
        const meanwhile = takeCarried(source);
        if (found.kind === 'empty') {
          if (source === 'shop' && ownBook()) rememberOwnBook('gone');
          onceOpen = () => {
            if (source === 'demo') void atRest().then(() => void (isShown() && layOut('pinned')));
            return undefined;
          };
          return { stored: emptyBook, book: meanwhile ?? firstBookOf(source) };
        }
        const { book: settled, takenOff } = checked(found.book, editContext());
        const { book, films } = reconciled(settled, editContext());
        onceOpen = () => {
          useShop.setState({ setAside: found.setAside, fellBack: found.fellBack });
          sayTakenOff(takenOff);
          sayReconciled(films);
          return meanwhile ? keepMeanwhile(meanwhile) : undefined;
        };
        return { stored: found.book, book };
      },
      onWrite(book) {
        isBegun = false;
        const isGone = source === 'shop' && ownBook() === 'gone';
        useShop.setState({ phase: { kind: 'open' }, book, follows: false, isGone });
        if (source === 'shop' && !isGone && Object.keys(book.order).length > 0) rememberOwnBook('begun');
        isBegun = true;
        void Promise.resolve(onceOpen())
          .then(() => keepHouse(book, snapshots, artwork))
          .catch(() => undefined);
        if (source === 'demo') void drawAtRest();
      },
      onFollow(lacks) {
        useShop.setState({ follows: true });
        stopPlanning();
        if (lacks) notify('error', wordsNow().storage.overtaken);
      },
      onRead(found) {
        if (found.kind === 'empty') return;
        const { book, setAside, fellBack } = found;
        useShop.setState({
          phase: { kind: 'open' },
          book,
          setAside,
          fellBack,
          saving: { kind: 'saved', at: Date.now() },
        });
      },
      onNotRead: (kind) => useShop.setState({ phase: { kind }, follows: false }),
      onFailed: memory.begin,
      onSaving: (saving) => useShop.setState({ saving }),
    },
  );
  const stopChecks = followChecks();
  const stopLanguage = followLanguage();
  const stopHours = followHours(snapshots);
  const unwatch = useShop.subscribe((now, before) => {
    if (now.book === before.book || now.phase.kind !== 'open') return;
    shared.put(now.book);
    if (isBegun && mayWrite()) beginWork();
  });
  const stopPage = followPage(shared);

  return {
    retry: () => (memory.isBegun() ? void memory.tryAgain() : shared.retry()),
    takeOver: shared.takeOver,
    snapshots,
    async close() {
      memory.close();
      stopPage();
      await shared.close();
      unwatch();
      stopChecks();
      stopLanguage();
      stopHours();
      repository.close();
      snapshots.close();
    },
  };
}
