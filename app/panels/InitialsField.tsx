import { Field } from '../parts/Field';
import { sayInitials, useInitials } from '../store/initials';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';

/** Who ticks at this device: it goes with every tick. */
export function InitialsField({ problem = null }: { problem?: string | null }) {
  const { press: words } = useAllWords();
  const { by } = useInitials();
  const people = useShop(({ book }) => book.settings.shop?.station.people);
  const names = (people ?? []).flatMap(({ name }) => name.trim() || []);
  return (
    <Field
      label={words.initials}
      hint={words.initialsHint}
      value={by}
      onChange={sayInitials}
      suggestions={names}
      problem={problem}
    />
  );
}
