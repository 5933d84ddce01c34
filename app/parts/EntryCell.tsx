import { useEffect, useId, useState } from 'react';
import type { Result } from '../../src/units';

/**
 * A value in a table that is typed over. What cannot be used stays in the field with the reason under
 * it, and the record keeps what it had; Escape brings that back.
 */
export function EntryCell<Value>({
  label,
  text,
  read,
  onEntry,
  inputMode = 'text',
}: {
  label: string;
  text: string;
  read: (typed: string) => Result<Value, string>;
  onEntry: (value: Value, typed: string) => void;
  inputMode?: 'text' | 'decimal' | 'numeric';
}) {
  const problemId = useId();
  const [typed, setTyped] = useState(text);
  const [problem, setProblem] = useState<string | null>(null);
  const takeOver = (value: string) => {
    setTyped(value);
    setProblem(null);
  };
  useEffect(() => {
    setTyped(text);
    setProblem(null);
  }, [text]);
  const enter = () => {
    if (typed === text) return setProblem(null);
    const entry = read(typed);
    if (!entry.ok) return setProblem(entry.problem);
    setProblem(null);
    onEntry(entry.value, typed.trim());
  };
  return (
    <div className="cell">
      <input
        aria-label={label}
        aria-invalid={problem !== null}
        aria-describedby={problem === null ? undefined : problemId}
        value={typed}
        inputMode={inputMode}
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
