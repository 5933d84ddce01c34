import { useId } from 'react';
import { useHeld, type Writing } from './held';

/** A choice of a few: the browser's own list, which every hand and reader knows. */
export function Choice<Value extends string>({
  label,
  value,
  options,
  onChange,
  writes = false,
}: Writing & {
  label: string;
  value: Value;
  options: readonly { readonly value: Value; readonly label: string }[];
  onChange: (value: Value) => void;
}) {
  const id = useId();
  const { isHeld, reason } = useHeld(writes);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        disabled={isHeld}
        {...reason}
        value={value}
        onChange={(event) => {
          const chosen = options.find((option) => option.value === event.target.value);
          if (chosen) onChange(chosen.value);
        }}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.label}
          </option>
        ))}
      </select>
    </div>
  );
}
