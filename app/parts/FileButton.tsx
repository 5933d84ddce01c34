import { Button as AriaButton, type ButtonProps } from 'react-aria-components';
import type { Weight } from './Button';
import { useHeld, type Writing } from './held';

/** The button in a `FileTrigger`, which hears its presses. */
export function FileButton({
  weight = 'normal',
  writes = false,
  isDisabled = false,
  ...props
}: Omit<ButtonProps, 'className'> & Writing & { weight?: Weight }) {
  const { isHeld, reason } = useHeld(writes);
  return (
    <AriaButton {...props} {...reason} isDisabled={isHeld || isDisabled} className={`button ${weight}`} />
  );
}
