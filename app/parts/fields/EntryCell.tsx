import { useEffect, useId, useRef, useState } from 'react';
import { useHeld } from '../held';
import type { Codec, Reader } from './codec';

interface Entered {
  /** What the cell held before. */
  readonly over: string;
  readonly typed: string;
  readonly problem: string | null;
}

/**
 * A value in a table that is typed over. What cannot be used stays in the field with the reason under
 * it, and the record keeps what it had; Escape brings that back.
 */
export function EntryCell<Value>({
  label,
  value,
  codec,
  reader,
  onEntry,
  isFirst = false,
}: {
  label: string;
  value: Value;
  codec: Codec<Value>;
  reader: Reader;
  onEntry: (value: Value) => void;
  /** It is typed over first: what it holds is selected once it is there. */
  isFirst?: boolean;
}) {
  const text = codec.show(value, reader);
  const problemId = useId();
  const { isHeld, reason } = useHeld(true);
  // What is typed holds as long as what it was typed over. No effect puts it back: one that comes late would do so to what is typed by then.
  const [entered, setEntered] = useState<Entered>({ over: text, typed: text, problem: null });
  const { typed, problem } = entered.over === text ? entered : { typed: text, problem: null };
  const show = (shown: string, why: string | null = null) =>
    setEntered({ over: text, typed: shown, problem: why });
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (isFirst) input.current?.select();
  }, [isFirst]);
  const enter = () => {
    if (typed === text) return show(text);
    const entry = codec.read(typed, reader);
    if (!entry.ok) return show(typed, entry.problem);
    // What is shown is what is stored, also after an entry that leaves it as it was.
    show(text);
    onEntry(entry.value);
  };
  return (
    <div className="cell">
      <input
        ref={input}
        aria-label={label}
        aria-invalid={problem !== null}
        readOnly={isHeld}
        {...reason}
        {...(problem === null ? {} : { 'aria-describedby': problemId })}
        value={typed}
        inputMode={codec.inputMode ?? 'text'}
        autoComplete="off"
        onChange={(event) => show(event.target.value, problem)}
        onBlur={enter}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter();
          if (event.key === 'Escape') show(text);
        }}
      />
      {problem !== null && (
        <p className="problem" id={problemId} role="alert">
          {problem}
        </p>
      )}
    </div>
  );
}
