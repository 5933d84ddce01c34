import { useState } from 'react';
import { handBackTicks } from '../../src/hand-over';
import type { Run } from '../../src/model';
import { download } from '../files/download';
import { safeName } from '../files/file-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { type HandedCodes, type HandOverKind, handOverCodes, handOverFile } from '../store/hand-over';
import { useShop } from '../store/shop';
import { clearNotices, notify } from '../store/view';
import { useAllWords } from '../words';
import { Codes } from './Codes';

/** What is handed over at the moment: codes on the screen, or the news that they would be too many. */
type Shown = ({ readonly kind: 'codes' } & HandedCodes) | { readonly kind: 'too-many' };

/** A run, or what was ticked on one that was received, as a file or as codes. */
export function Give({ run }: { run: Run }) {
  const { handOver: words } = useAllWords();
  const isReceived = run.received !== null;
  const [kind, setKind] = useState<HandOverKind>(isReceived ? 'ticks' : 'run');
  const [shown, setShown] = useState<Shown | null>(null);
  const [working, setWorking] = useState(false);
  const isNews = useShop(({ book }) => {
    const records = handBackTicks(book, run.id, run.changed)?.records;
    return records !== undefined && records.ticks.length + records.spoilages.length > 0;
  });
  const during = (work: () => Promise<void>) => {
    setWorking(true);
    void work()
      .catch(() => notify('error', words.failed))
      .finally(() => setWorking(false));
  };
  const save = () =>
    during(async () => {
      const file = await handOverFile(run.id, kind);
      if (file) download(file, safeName(words.fileName(run.name, kind)));
    });
  const show = () =>
    during(async () => {
      const handed = await handOverCodes(run.id, kind);
      clearNotices();
      setShown(handed ? { kind: 'codes', ...handed } : { kind: 'too-many' });
    });
  const nothing = kind === 'ticks' && !isNews;
  return (
    <section className="hand-over-part" aria-labelledby="give-title">
      <h3 id="give-title">{isReceived ? words.back(run.name) : words.give(run.name)}</h3>
      <p className="quiet">{kind === 'run' ? words.giveHint : words.backHint}</p>
      {isReceived && (
        <Choice
          label={words.what}
          value={kind}
          options={(['ticks', 'run'] as const).map((value) => ({ value, label: words.whats[value] }))}
          onChange={(value) => {
            setKind(value);
            setShown(null);
          }}
        />
      )}
      {nothing && <p className="care">{words.nothingTicked}</p>}
      <div className="actions">
        <Button weight="primary" isPending={working} isDisabled={nothing} onPress={show}>
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
    </section>
  );
}
