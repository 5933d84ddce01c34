import { useHeld, type Writing } from './held';

/** A box to tick with its label beside it: the browser's own. */
export function Tick({
  label,
  checked,
  onChange,
  writes = false,
}: Writing & {
  label: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
}) {
  const { isHeld, reason } = useHeld(writes);
  return (
    <label className="tick">
      <input
        type="checkbox"
        disabled={isHeld}
        {...reason}
        checked={checked}
        onChange={(event) => onChange(event.target.checked)}
      />
      <span>{label}</span>
    </label>
  );
}
