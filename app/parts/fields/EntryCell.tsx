import { useEffect, useId, useRef, useState } from 'react';
import { useHeld } from '../held';
import type { Codec, Reader } from './codec';

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
  const [typed, setTyped] = useState(text);
  const [problem, setProblem] = useState<string | null>(null);
  const [entries, setEntries] = useState(0);
  const takeOver = (shown: string) => {
    setTyped(shown);
    setProblem(null);
  };
  // What is shown is what is stored, also after an entry that left it as it was.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the number of entries says when to look again
  useEffect(() => {
    setTyped(text);
    setProblem(null);
  }, [text, entries]);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (isFirst) input.current?.select();
  }, [isFirst]);
  const enter = () => {
    if (typed === text) return setProblem(null);
    const entry = codec.read(typed, reader);
    if (!entry.ok) return setProblem(entry.problem);
    setProblem(null);
    onEntry(entry.value);
    setEntries((count) => count + 1);
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
        onChange={(event) => setTyped(event.target.value)}
        onBlur={enter}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter();
          if (event.key === 'Escape') takeOver(text);
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
