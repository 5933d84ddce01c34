import type { Order } from '../../src/model';
import { Button } from '../parts/Button';
import { bringFirst } from '../store/bring-first';
import { useMayComeFirst } from '../store/selectors';
import { useWords } from '../words';

/** Brings an order to the front in one act; not there where none of its copies may move. */
export function FirstButton({ order }: { order: Order }) {
  const { film: words } = useWords();
  const may = useMayComeFirst(order.id);
  if (!may) return null;
  return (
    <Button
      weight="plain"
      aria-label={words.printFirstNamed(order.name)}
      onPress={() => void bringFirst(order)}
    >
      {words.printFirst}
    </Button>
  );
}
