import { checked } from '../../src/editing';
import { artworkInUse, type Book, emptyBook } from '../../src/model';
import {
  browserGround,
  databases,
  lastOpened,
  noEpoch,
  openRepository,
  openSharedBook,
  openSnapshots,
  rememberOpened,
  type SharedBook,
  type SnapshotStore,
  type Source,
  type StorageProblem,
} from '../../src/storage';
import { wordsNow } from '../words';
import { openArtworkOf } from './artwork';
import { followChecks } from './checks';
import { drawDemo } from './demo';
import { firstBookOf } from './first-book';
import { followLanguage, speakOf } from './language';
import { followPage } from './page-life';
import { layOut, stopPlanning } from './planning';
import { editContext, sayTakenOff, useShop } from './shop';
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
  await openSource((await lastOpened()) ?? 'demo');
}

/** Closes the open book and opens another. */
export async function openSource(source: Source): Promise<void> {
  stopPlanning();
  await session?.close();
  useView.setState({ run: null });
  select();
  useShop.setState({
    phase: { kind: 'opening' },
    source,
    book: emptyBook,
    saving: { kind: 'saving' },
    follows: false,
    setAside: [],
  });
  await rememberOpened(source);
  session = openSession(source);
}

/** Tries again after storage has failed. */
export function retrySaving(): void {
  const { phase, source } = useShop.getState();
  if (phase.kind === 'failed') void openSource(source);
  else session?.retry();
}

export const takeOver = (): void => session?.takeOver();

/** The snapshots of the book that is open. */
export const snapshotsNow = (): SnapshotStore | null => session?.snapshots ?? null;

function openSession(source: Source): Session {
  const names = databases[source];
  const epoch = noEpoch();
  const repository = openRepository(names.book, epoch);
  const artwork = openArtworkOf(names.artwork, epoch);
  const snapshots = openSnapshots(names.snapshots, epoch);

  /** Takes the day's snapshot, and lets go of images that neither the book nor a snapshot names. */
  const keepHouse = async (book: Book): Promise<void> => {
    const now = new Date().toISOString();
    const [latest] = await snapshots.list();
    const isNewDay = latest?.at.slice(0, 10) !== now.slice(0, 10);
    if (isNewDay && Object.keys(book.order).length > 0) await snapshots.take(book, 'day', now);
    const used = artworkInUse(book);
    for (const id of await snapshots.artwork()) used.add(id);
    await artwork.sweep(used);
  };

  /** Where nothing can be kept at all, the day can still be worked on in memory. */
  const fail = (problem: StorageProblem): void => {
    if (problem.code !== 'unavailable') useShop.setState({ phase: { kind: 'failed', problem } });
    else {
      useShop.setState({
        phase: { kind: 'open' },
        book: firstBookOf(source),
        saving: { kind: 'failed', problem },
        follows: false,
      });
      if (source === 'demo') void layOut('pinned');
    }
  };

  /** What is to be said, or done, once the book that was found may be written. */
  let onceOpen: () => void = () => undefined;

  const shared = openSharedBook(
    { name: names.book, tab: crypto.randomUUID(), now: Date.now },
    { repository, epoch },
    browserGround(names.book),
    {
      async prepare(found) {
        if (found.kind === 'read') await speakOf(found.book);
      },
      begin(found) {
        if (found.kind === 'empty') {
          onceOpen = () => {
            if (source === 'demo') void layOut('pinned');
          };
          return { stored: emptyBook, book: firstBookOf(source) };
        }
        const { book, takenOff } = checked(found.book, editContext());
        onceOpen = () => {
          useShop.setState({ setAside: found.setAside });
          sayTakenOff(takenOff);
        };
        return { stored: found.book, book };
      },
      onWrite(book) {
        useShop.setState({ phase: { kind: 'open' }, book, follows: false });
        onceOpen();
        void keepHouse(book).catch(() => undefined);
        if (source === 'demo') void drawDemo();
      },
      onFollow(lacks) {
        useShop.setState({ follows: true });
        stopPlanning();
        if (lacks) notify('care', wordsNow().storage.overtaken);
      },
      onRead(found) {
        if (found.kind === 'empty') return;
        const { book, setAside } = found;
        useShop.setState({
          phase: { kind: 'open' },
          book,
          setAside,
          saving: { kind: 'saved', at: Date.now() },
        });
      },
      onNewer: () => useShop.setState({ phase: { kind: 'newer' }, follows: false }),
      onFailed: fail,
      onSaving: (saving) => useShop.setState({ saving }),
    },
  );
  const stopChecks = followChecks();
  const stopLanguage = followLanguage();
  const unwatch = useShop.subscribe((now, before) => {
    if (now.book !== before.book && now.phase.kind === 'open') shared.put(now.book);
  });
  const stopPage = followPage(shared);

  return {
    retry: shared.retry,
    takeOver: shared.takeOver,
    snapshots,
    async close() {
      stopPage();
      await shared.close();
      unwatch();
      stopChecks();
      stopLanguage();
      repository.close();
      snapshots.close();
    },
  };
}
