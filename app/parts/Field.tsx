import { useId } from 'react';
import { FieldError, Input, Label, Text, TextArea, TextField } from 'react-aria-components';
import { useHeld, type Writing } from './held';

/** A labelled line of text, or so many rows of it, with a hint, and a sentence when what was typed cannot be used. */
export function Field({
  label,
  value,
  onChange,
  problem,
  hint,
  inputMode,
  rows,
  suggestions = [],
  onBlur,
  writes = false,
}: Writing & {
  label: string;
  value: string;
  onChange: (value: string) => void;
  problem?: string | null;
  hint?: string;
  inputMode?: 'decimal' | 'numeric';
  rows?: number;
  /** What may be chosen instead of typed. */
  suggestions?: readonly string[];
  onBlur?: () => void;
}) {
  const { isHeld, reason } = useHeld(writes);
  const list = useId();
  return (
    <TextField
      className="field"
      // The browser would not let a form go while a sentence stands beside a field that has since been mended.
      validationBehavior="aria"
      value={value}
      onChange={onChange}
      isInvalid={Boolean(problem)}
      isReadOnly={isHeld}
      {...reason}
      {...(onBlur ? { onBlur } : {})}
    >
      <Label>{label}</Label>
      {rows ? (
        <TextArea rows={rows} />
      ) : (
        <Input inputMode={inputMode} autoComplete="off" {...(suggestions.length > 0 ? { list } : {})} />
      )}
      {suggestions.length > 0 && (
        <datalist id={list}>
          {suggestions.map((each) => (
            <option key={each} value={each} />
          ))}
        </datalist>
      )}
      {hint && (
        <Text slot="description" className="hint">
          {hint}
        </Text>
      )}
      <FieldError className="problem">{problem}</FieldError>
    </TextField>
  );
}
