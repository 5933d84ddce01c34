import { Button as AriaButton, type ButtonProps } from 'react-aria-components';

/** How much a button stands out: one `primary` act a view, `plain` ones like links. */
type Weight = 'primary' | 'normal' | 'plain' | 'icon';

export function Button({
  weight = 'normal',
  ...props
}: Omit<ButtonProps, 'className'> & { weight?: Weight }) {
  return <AriaButton {...props} className={`button ${weight}`} />;
}
