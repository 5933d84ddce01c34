import { Button as AriaButton, type ButtonProps } from 'react-aria-components';
import { useHeld, type Writing } from './held';

/** How much a button stands out: one `primary` act a view, `plain` ones like links. */
type Weight = 'primary' | 'normal' | 'plain' | 'icon';

export function Button({
  weight = 'normal',
  writes = false,
  ...props
}: Omit<ButtonProps, 'className'> & Writing & { weight?: Weight }) {
  const { isHeld, reason } = useHeld(writes);
  return (
    <AriaButton
      {...props}
      {...reason}
      isDisabled={isHeld || Boolean(props.isDisabled)}
      className={`button ${weight}`}
    />
  );
}
