import { useId } from 'react';
import type { LocalDate } from '../../src/units';
import { useHeld, type Writing } from './held';

/** A day, or none: the browser's own field, which every hand and reader knows. */
export function DateField({
  label,
  value,
  onChange,
  writes = false,
}: Writing & {
  label: string;
  value: LocalDate | null;
  onChange: (value: LocalDate | null) => void;
}) {
  const id = useId();
  const { isHeld, reason } = useHeld(writes);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="date"
        disabled={isHeld}
        {...reason}
        value={value ?? ''}
        onChange={({ target }) => onChange(target.value === '' ? null : (target.value as LocalDate))}
      />
    </div>
  );
}
