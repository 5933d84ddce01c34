import { checked } from '../../src/editing';
import { artworkInUse, type Book, emptyBook } from '../../src/model';
import {
  becomeWriter,
  createSaver,
  databases,
  lastOpened,
  openRepository,
  openSnapshots,
  rememberOpened,
  type Saver,
  type SnapshotStore,
  type Source,
  type StorageProblem,
} from '../../src/storage';
import { openArtworkOf } from './artwork';
import { followChecks } from './checks';
import { drawDemo } from './demo';
import { firstBookOf } from './first-book';
import { followLanguage, speakOf } from './language';
import { layOut, stopPlanning } from './planning';
import { editContext, sayTakenOff, useShop } from './shop';
import { select, useView } from './view';

/** The book that is open, from its storage to its place among the tabs. */
interface Session {
  retry(): void;
  /** Makes this the tab that writes. */
  takeOver(): void;
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
  const repository = openRepository(names.book);
  const artwork = openArtworkOf(names.artwork);
  const snapshots = openSnapshots(names.snapshots);
  let saver: Saver | null = null;
  let closed = false;

  const write = (stored: Book, book: Book): void => {
    saver = createSaver(repository, stored, {
      onState: (saving) => {
        if (!closed) useShop.setState({ saving });
        if (saving.kind === 'saved') writer.announce();
      },
      now: Date.now,
    });
    useShop.setState({ phase: { kind: 'open' }, book, follows: false });
    saver.put(book);
    void keepHouse(book).catch(() => undefined);
    if (source === 'demo') void drawDemo();
  };

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

  const openWritable = async (): Promise<void> => {
    const reading = await repository.load();
    if (closed) return;
    if (reading.kind === 'read') {
      await speakOf(reading.book);
      if (closed) return;
      useShop.setState({ setAside: reading.setAside });
      const { book, takenOff } = checked(reading.book, editContext());
      write(reading.book, book);
      sayTakenOff(takenOff);
    } else if (reading.kind === 'empty') {
      write(emptyBook, firstBookOf(source));
      if (source === 'demo') void layOut('pinned');
    } else if (reading.kind === 'newer') useShop.setState({ phase: { kind: 'newer' } });
    else fail(reading.problem);
  };

  /** Where nothing can be kept at all, the day can still be worked on in memory. */
  const fail = (problem: StorageProblem): void => {
    if (problem.code !== 'unavailable') useShop.setState({ phase: { kind: 'failed', problem } });
    else {
      useShop.setState({
        phase: { kind: 'open' },
        book: firstBookOf(source),
        saving: { kind: 'failed', problem },
      });
      if (source === 'demo') void layOut('pinned');
    }
  };

  /** Shows what the writing tab has stored. */
  const follow = async (): Promise<void> => {
    const reading = await repository.load();
    if (closed || saver) return;
    if (reading.kind === 'read') {
      const { book, setAside } = reading;
      await speakOf(book);
      if (closed || saver) return;
      useShop.setState({
        phase: { kind: 'open' },
        book,
        setAside,
        follows: true,
        saving: { kind: 'saved', at: Date.now() },
      });
    } else if (reading.kind === 'newer') useShop.setState({ phase: { kind: 'newer' } });
    else if (reading.kind === 'failed') fail(reading.problem);
  };

  const writer = becomeWriter(names.book, navigator.locks, {
    onWrite: () => void openWritable(),
    onFollow: () => void follow(),
    onChanged: () => {
      if (!saver) void follow();
    },
    async onHandOver() {
      await saver?.flush();
      saver = null;
      stopPlanning();
    },
  });
  const stopChecks = followChecks();
  const stopLanguage = followLanguage();
  const unwatch = useShop.subscribe((now, before) => {
    if (now.book !== before.book && now.phase.kind === 'open') saver?.put(now.book);
  });

  return {
    retry: () => saver?.retry(),
    takeOver: () => writer.takeOver(),
    snapshots,
    async close() {
      await saver?.flush();
      closed = true;
      unwatch();
      stopChecks();
      stopLanguage();
      writer.close();
      repository.close();
      snapshots.close();
    },
  };
}
