import { download } from '../files/download';
import { PartMissing } from '../offline/part';
import { sayFailed } from '../store/failures';
import { loadAgain } from '../store/load-again';
import { today } from '../store/today';
import { useWords } from '../words';
import { reportOf } from './report';

/**
 * Says that something cannot be shown, and what can be done. Of plain elements alone: what failed may be one of our own.
 */
export function Trouble({
  what,
  error,
  stack,
  again,
  close,
}: {
  what: 'room' | 'window' | 'app';
  error: unknown;
  stack: string;
  again: () => void;
  close?: () => void;
}) {
  const { trouble: words, failures, keep, common } = useWords();
  const isMissing = error instanceof PartMissing;
  const report = () =>
    download(new Blob([reportOf(error, stack)], { type: 'text/plain' }), words.fileName(today()));
  const backup = () =>
    void import('../store/backup')
      .then(({ saveBackup }) => saveBackup(keep.fileName(today())))
      .catch((failure) => sayFailed('backup', failure));
  return (
    <section className={`trouble ${what}-trouble`} role="alert">
      <p>{isMissing ? words.missing : words[what]}</p>
      <div className="actions">
        <button type="button" className="button primary" onClick={() => void loadAgain()}>
          {failures.reload}
        </button>
        {!isMissing && (
          <button type="button" className="button normal" onClick={again}>
            {failures.again}
          </button>
        )}
        <button type="button" className="button normal" onClick={backup}>
          {keep.save}
        </button>
        <button type="button" className="button normal" onClick={report}>
          {words.report}
        </button>
        <a href="./recovery.html">{words.recovery}</a>
        {close && (
          <button type="button" className="button normal" onClick={close}>
            {common.close}
          </button>
        )}
      </div>
      <p className="quiet small">{words.reportHint}</p>
    </section>
  );
}
