import { Button } from '../parts/Button';
import { openDialog } from '../store/view';
import { useWords } from '../words';

/** Closes a window in which every entry counts at once, so that nothing is left to save. */
export function CloseButton() {
  const { common } = useWords();
  return <Button onPress={() => openDialog(null)}>{common.close}</Button>;
}
