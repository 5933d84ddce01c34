import { Button } from '../parts/Button';
import { openDialog, type Saved } from '../store/view';
import { useAllWords } from '../words';

/** Opens the window that saves a table. */
export function CsvButton({ what }: { what: Saved }) {
  const { csv: words } = useAllWords();
  return <Button onPress={() => openDialog({ kind: 'csv', what })}>{words.save}</Button>;
}
