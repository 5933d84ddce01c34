import { Button } from '../parts/Button';
import { openDialog } from '../store/view';
import { useWords } from '../words';

/** Opens the window of handing over. */
export function HandOverButton() {
  const { handOver } = useWords();
  return <Button onPress={() => openDialog({ kind: 'hand-over' })}>{handOver.open}</Button>;
}
