import { useEffect, useRef, useState } from 'react';
import { benchEdits } from '../../src/editing';
import type { Run } from '../../src/model';
import { download } from '../files/download';
import { safeName } from '../files/file-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import {
  type HandedCodes,
  type HandOverKind,
  handedBack,
  handOverCodes,
  handOverFile,
} from '../store/hand-over';
import { act, useShop } from '../store/shop';
import { clearNotices, notify, openDialog } from '../store/view';
import { useAllWords } from '../words';
import { Codes } from './Codes';

/** What is handed over at the moment: codes on the screen, the news that they would be too many, or a file that was saved. */
type Shown =
  | ({ readonly kind: 'codes' } & HandedCodes)
  | { readonly kind: 'too-many' }
  | { readonly kind: 'file' };

/**
 * A run, or what was ticked on one that was received, as a file or as codes. What is new since the last time is shown at once: one press
 * after each job. It goes again until someone says that it was taken in.
 */
export function Give({ run }: { run: Run }) {
  const { handOver: words } = useAllWords();
  const isReceived = run.received !== null;
  const [kind, setKind] = useState<HandOverKind>(isReceived ? 'ticks' : 'run');
  const [shown, setShown] = useState<Shown | null>(null);
  const [given, setGiven] = useState<readonly string[]>([]);
  const [working, setWorking] = useState(false);
  const book = useShop((shop) => shop.book);
  const ids = kind === 'run' ? [] : handedBack(book, run, kind);
  const nothing = kind !== 'run' && ids.length === 0;
  const during = (work: () => Promise<void>) => {
    setWorking(true);
    void work()
      .catch(() => notify('error', words.failed))
      .finally(() => setWorking(false));
  };
  const save = () =>
    during(async () => {
      setGiven(ids);
      const file = await handOverFile(run.id, kind);
      if (!file) return;
      download(file, safeName(words.fileName(run.name, kind === 'run' ? 'run' : 'ticks')));
      setShown({ kind: 'file' });
    });
  const show = () =>
    during(async () => {
      setGiven(ids);
      const handed = await handOverCodes(run.id, kind);
      clearNotices();
      setShown(handed ? { kind: 'codes', ...handed } : { kind: 'too-many' });
    });
  const begun = useRef(false);
  useEffect(() => {
    if (begun.current || !isReceived || nothing) return;
    begun.current = true;
    show();
  });
  const takenIn = () => {
    act(benchEdits.noteHandedBack(run.id, given));
    notify('plain', words.handedBackNote);
    openDialog(null);
  };
  const isGiven = isReceived && kind !== 'run' && (shown?.kind === 'codes' || shown?.kind === 'file');
  return (
    <section className="hand-over-part" aria-labelledby="give-title">
      <h3 id="give-title">{isReceived ? words.back(run.name) : words.give(run.name)}</h3>
      <p className="quiet">{kind === 'run' ? words.giveHint : words.backHint}</p>
      {isReceived && (
        <Choice
          label={words.what}
          value={kind}
          options={(['ticks', 'all-ticks', 'run'] as const).map((value) => ({
            value,
            label: words.whats[value],
          }))}
          onChange={(value) => {
            setKind(value);
            setShown(null);
          }}
        />
      )}
      {nothing && <p className="care">{words.nothingTicked}</p>}
      <div className="actions">
        <Button
          weight={isGiven ? 'normal' : 'primary'}
          isPending={working}
          isDisabled={nothing}
          onPress={show}
        >
          {words.asCodes}
        </Button>
        <Button isPending={working} isDisabled={nothing} onPress={save}>
          {words.asFile}
        </Button>
      </div>
      {shown === null && <p className="quiet small">{`${words.asCodesHint} ${words.asFileHint}`}</p>}
      {shown?.kind === 'too-many' && (
        <p className="care" role="alert">
          {words.tooMany}
        </p>
      )}
      {shown?.kind === 'codes' && shown.carried === 'boxes' && (
        <p className="care small" role="alert">
          {words.boxesAlone}
        </p>
      )}
      {shown?.kind === 'codes' && <Codes key={shown.codes[0]} codes={shown.codes} />}
      {isGiven && (
        <div className="actions">
          <Button writes weight="primary" onPress={takenIn}>
            {words.takenInThere}
          </Button>
        </div>
      )}
    </section>
  );
}
