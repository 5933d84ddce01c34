import type { SelectHTMLAttributes } from 'react';
import { useHeld, type Writing } from './held';

/** One of a few, and what follows when another is chosen. */
export interface Choosing<Value extends string> {
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly label: string }[];
  readonly onChange: (value: Value) => void;
}

/** The browser's own list, which every hand and reader knows; whoever shows it names it. */
export function Select<Value extends string>({
  value,
  options,
  onChange,
  writes = false,
  ...named
}: Writing &
  Choosing<Value> &
  Pick<SelectHTMLAttributes<HTMLSelectElement>, 'id' | 'className' | 'aria-label'>) {
  const { isHeld, reason } = useHeld(writes);
  return (
    <select
      {...named}
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
  );
}
