import { useId } from 'react';
import type { LocalDate } from '../../src/units';

/** A day, or none: the browser's own field, which every hand and reader knows. */
export function DateField({
  label,
  value,
  onChange,
}: {
  label: string;
  value: LocalDate | null;
  onChange: (value: LocalDate | null) => void;
}) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="date"
        value={value ?? ''}
        onChange={({ target }) => onChange(target.value === '' ? null : (target.value as LocalDate))}
      />
    </div>
  );
}
