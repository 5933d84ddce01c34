import { Field } from '../parts/Field';
import { sayInitials, useInitials } from '../store/initials';
import { useAllWords } from '../words';

/** Who ticks at this device: it goes with every tick. */
export function InitialsField() {
  const { press: words } = useAllWords();
  const { by } = useInitials();
  return <Field label={words.initials} hint={words.initialsHint} value={by} onChange={sayInitials} />;
}
