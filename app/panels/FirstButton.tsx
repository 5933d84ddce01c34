import type { Order } from '../../src/model';
import { fetchPart } from '../offline/part';
import { Button } from '../parts/Button';
import { sayFailed } from '../store/failures';
import { useMayComeFirst } from '../store/selectors';
import { useWords } from '../words';

/** What it takes is fetched when it is asked for. */
const bringFirst = (order: Order): Promise<void> =>
  fetchPart(() => import('../store/bring-first')).then(
    (fetched) => fetched.bringFirst(order),
    (error) => sayFailed('layout', error),
  );

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
