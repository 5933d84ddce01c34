import type { AriaAttributes, ReactNode } from 'react';
import { useHeld, type Writing } from './held';

/** How much a button stands out: one `primary` act a view, `plain` ones like links. */
export type Weight = 'primary' | 'normal' | 'plain' | 'icon';

interface ButtonProps extends Writing, Pick<AriaAttributes, 'aria-label' | 'aria-pressed' | 'aria-expanded'> {
  children: ReactNode;
  weight?: Weight;
  type?: 'button' | 'submit';
  onPress?: () => void;
  isDisabled?: boolean;
  /** What it began is still going on: it keeps the focus, and pressing it does nothing. */
  isPending?: boolean;
}

/** The browser's own button: the first screen need not wait for more. */
export function Button({
  weight = 'normal',
  type = 'button',
  writes = false,
  isDisabled = false,
  isPending = false,
  onPress,
  ...props
}: ButtonProps) {
  const { isHeld, reason } = useHeld(writes);
  return (
    <button
      {...props}
      {...reason}
      type={type}
      className={`button ${weight}`}
      disabled={isHeld || isDisabled}
      aria-disabled={isPending || undefined}
      aria-busy={isPending || undefined}
      onClick={isPending ? undefined : onPress}
    />
  );
}
