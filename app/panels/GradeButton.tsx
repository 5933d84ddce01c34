import { verdictOn } from '../../src/artwork';
import type { Transfer } from '../../src/model';
import { GradeMark } from '../parts/GradeMark';
import { findingsFor, useCheck } from '../store/checks';
import { settingsOrFirst } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useWords } from '../words';

/** How a transfer's artwork will print; pressed, it shows why. Nothing, while there is no artwork. */
export function GradeButton({ transfer, short = false }: { transfer: Transfer; short?: boolean }) {
  const { grade: words } = useWords();
  const limits = useShop(({ book }) => settingsOrFirst(book).limits);
  const state = useCheck(transfer);
  if (!state) return null;
  const grade =
    state.kind === 'done' ? verdictOn(findingsFor(state.check, transfer, limits), transfer) : null;
  const told = grade
    ? words.names[grade]
    : state.kind === 'failed' || state.kind === 'stopped'
      ? words.notChecked
      : words.checking;
  return (
    <button
      type="button"
      className={short ? 'grade-button short' : 'grade-button'}
      title={words.look(transfer.name, told)}
      data-grade={grade ?? state.kind}
      aria-label={words.look(transfer.name, told)}
      onClick={() => openDialog({ kind: 'artwork', transfer: transfer.id })}
    >
      {grade ? (
        <GradeMark grade={grade} short={short} />
      ) : (
        <span className="quiet">{short ? '…' : told}</span>
      )}
    </button>
  );
}
