import { Button } from '../parts/Button';
import { openDialog } from '../store/view';
import { useAllWords } from '../words';

/** Opens the window of handing over. */
export function HandOverButton() {
  const { handOver } = useAllWords();
  return <Button onPress={() => openDialog({ kind: 'hand-over' })}>{handOver.open}</Button>;
}
