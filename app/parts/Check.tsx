import { Checkbox } from 'react-aria-components';
import { useHeld, type Writing } from './held';

/** A box to tick. Its label is spoken; a column's heading shows it, or on a narrow screen `short` beside the box. */
export function Check({
  label,
  short,
  checked,
  onChange,
  disabled = false,
  writes = false,
}: Writing & {
  label: string;
  short: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
  disabled?: boolean;
}) {
  const { isHeld, reason } = useHeld(writes);
  return (
    <Checkbox
      className="checkbox"
      aria-label={label}
      isSelected={checked}
      onChange={onChange}
      isDisabled={isHeld || disabled}
      {...reason}
    >
      <span className="box" aria-hidden="true">
        {checked && (
          <svg viewBox="0 0 16 16" width="16" height="16" role="presentation">
            <path d="M2.5 8.5 6.5 12.5 13.5 4" fill="none" stroke="currentColor" strokeWidth="2.5" />
          </svg>
        )}
      </span>
      <span className="narrow-only" aria-hidden="true">
        {short}
      </span>
    </Checkbox>
  );
}
