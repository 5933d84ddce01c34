import { type Verdict, verdictOn } from '../../src/artwork';
import type { Transfer } from '../../src/model';
import { findingsFor, useCheck } from '../store/checks';
import { settingsOrFirst } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import './grade.css';
import { useWords } from '../words';

const signs: Record<Verdict, string> = { good: '✓', meant: '✓', check: '!', poor: '✕' };

/** A grade by a sign, a colour and, where there is room, a word. */
export function GradeMark({ grade, short = false }: { grade: Verdict; short?: boolean }) {
  const { grade: words } = useWords();
  return (
    <span className={short ? `grade short ${grade}` : `grade ${grade}`}>
      <b aria-hidden="true">{signs[grade]}</b>
      {!short && words.names[grade]}
    </span>
  );
}

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
