import { Checkbox } from 'react-aria-components';

/** A box to tick; its label is spoken, a column's heading or text beside it shows it. */
export function Check({
  label,
  checked,
  onChange,
  disabled = false,
}: {
  label: string;
  checked: boolean;
  onChange: (checked: boolean) => void;
  disabled?: boolean;
}) {
  return (
    <Checkbox
      className="checkbox"
      aria-label={label}
      isSelected={checked}
      onChange={onChange}
      isDisabled={disabled}
    >
      <span className="box" aria-hidden="true">
        {checked && (
          <svg viewBox="0 0 16 16" width="16" height="16" role="presentation">
            <path d="M2.5 8.5 6.5 12.5 13.5 4" fill="none" stroke="currentColor" strokeWidth="2.5" />
          </svg>
        )}
      </span>
    </Checkbox>
  );
}
