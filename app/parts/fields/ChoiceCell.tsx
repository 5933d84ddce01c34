import { useHeld } from '../held';

/** A choice of a few in a table. Its label is spoken; a column's heading shows it, or on a narrow screen what it is chosen to be. */
export function ChoiceCell<Value extends string>({
  label,
  value,
  options,
  onChange,
}: {
  label: string;
  value: Value;
  options: readonly { readonly value: Value; readonly label: string }[];
  onChange: (value: Value) => void;
}) {
  const { isHeld, reason } = useHeld(true);
  return (
    <select
      className="choice-cell"
      aria-label={label}
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
