import { useEffect, useState } from 'react';
import { FileTrigger } from 'react-aria-components';
import { settingsOf } from '../../src/model';
import type { StoredSnapshot } from '../../src/storage';
import { Button } from '../parts/Button';
import { FileButton } from '../parts/FileButton';
import { saveBackup } from '../store/backup';
import { snapshotsNow } from '../store/boot';
import { bringBack, type FoundBook, findBackup, findSnapshot, lacksSomething } from '../store/bring-back';
import { sayFailed } from '../store/failures';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { today } from '../store/today';
import { notify, openDialog } from '../store/view';
import { CloseButton } from '../windows/CloseButton';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import { FolderBackups } from './FolderBackups';
import { LeftOut } from './LeftOut';

/** How safe the shop's work is: backups, snapshots, and whether the browser may clear it. */
export function KeepDialog() {
  const { keep: words } = useAllWords();
  return (
    <Window title={words.title}>
      <Backups />
      <FolderBackups />
      <Snapshots />
      <Durable />
      <div className="actions">
        <CloseButton />
      </div>
    </Window>
  );
}

function Backups() {
  const { keep: words, bringBack: asks } = useAllWords();
  const ways = useWays();
  const last = useShop(({ book }) => settingsOf(book)?.lastBackup ?? null);
  const [working, setWorking] = useState(false);
  /** A backup that can be brought back in part. */
  const [found, setFound] = useState<FoundBook | null>(null);
  const during = (what: 'backup' | 'restore', work: () => Promise<void>) => {
    setWorking(true);
    void work()
      .catch((error) => sayFailed(what, error))
      .finally(() => setWorking(false));
  };
  const bring = async (whole: FoundBook) => {
    setFound(null);
    const brought = await bringBack(whole);
    if (!brought.ok) return notify('error', words.problems({ code: brought.problem }));
    notify('plain', words.restored(Object.keys(whole.book.order).length, ways));
    if (!whole.isVerified) notify('care', words.unverified);
  };
  const restore = (file: File) =>
    during('restore', async () => {
      setFound(null);
      const read = await findBackup(file);
      if (!read.ok) return notify('error', words.problems(read.problem));
      if (lacksSomething(read.value)) setFound(read.value);
      else await bring(read.value);
    });
  const save = () =>
    during('backup', async () => {
      const saved = await saveBackup(words.fileName(today()));
      if (saved.ok && saved.value.length > 0) notify('care', words.leftOut(saved.value));
      if (!saved.ok && saved.problem === 'differs') notify('error', words.differs);
    });
  return (
    <section className="spaced">
      <h3>{words.backups}</h3>
      <p className="quiet">{last === null ? words.never : words.last(dayAndTime(last, ways))}</p>
      <div className="actions">
        <Button isPending={working} onPress={save}>
          {words.save}
        </Button>
        <FileTrigger
          acceptedFileTypes={['application/zip', '.zip']}
          onSelect={(files) => files?.[0] && restore(files[0])}
        >
          <FileButton writes isPending={working}>
            {words.restore}
          </FileButton>
        </FileTrigger>
      </div>
      <p className="quiet small">{words.restoreHint}</p>
      {found && (
        <div role="alert" className="spaced lacking">
          <LeftOut found={found} />
          <div className="actions">
            <Button onPress={() => setFound(null)}>{asks.leave}</Button>
            <Button writes isPending={working} onPress={() => during('restore', () => bring(found))}>
              {asks.rest}
            </Button>
          </div>
        </div>
      )}
    </section>
  );
}

function Snapshots() {
  const { keep: words, bringBack: inside } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const [list, setList] = useState<readonly StoredSnapshot[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: bringing one back adds another
  useEffect(() => {
    void snapshotsNow()
      ?.list()
      .then(setList)
      .catch(() => setList([]));
  }, [book]);
  const look = (at: string) => openDialog({ kind: 'snapshot', at });
  const bring = async (at: string) => {
    const read = await findSnapshot(at);
    if (read.ok && lacksSomething(read.value)) return look(at);
    const brought = read.ok ? await bringBack(read.value) : read;
    if (brought.ok) notify('plain', words.broughtBack);
    else notify('error', words.snapshotProblems[brought.problem](dayAndTime(at, ways)));
  };
  return (
    <section className="spaced">
      <h3>{words.snapshots}</h3>
      {list.length === 0 && <p className="quiet">{words.noSnapshots}</p>}
      <ul className="snapshots">
        {list.map(({ at, holds }) => (
          <li key={at}>
            <span>{dayAndTime(at, ways)}</span>
            <span className="quiet small">
              {holds ? words.snapshot(holds.why, holds.orders, holds.copies, ways) : words.unreadableSnapshot}
            </span>
            <Button
              weight="plain"
              aria-label={inside.lookInsideNamed(dayAndTime(at, ways))}
              isDisabled={holds === null}
              onPress={() => look(at)}
            >
              {inside.lookInside}
            </Button>
            <Button
              writes
              weight="plain"
              aria-label={words.bringBackNamed(dayAndTime(at, ways))}
              isDisabled={holds === null}
              onPress={() => void bring(at)}
            >
              {words.bringBack}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Browsers may clear what a site has stored when the disk is full, unless asked not to. */
function Durable() {
  const { keep: words } = useAllWords();
  const [durable, setDurable] = useState<boolean | null>(null);
  useEffect(() => {
    void navigator.storage?.persisted?.().then(setDurable);
  }, []);
  const ask = () =>
    void navigator.storage?.persist?.().then((granted) => {
      setDurable(granted);
      if (!granted) notify('care', words.notDurable);
    });
  return (
    <section className="spaced">
      <h3>{words.durable}</h3>
      {durable ? (
        <p>{words.isDurable}</p>
      ) : (
        <>
          <p className="quiet">{words.mayBeCleared}</p>
          <Button onPress={ask}>{words.ask}</Button>
        </>
      )}
    </section>
  );
}
