import { Button } from '../parts/Button';
import { openDialog } from '../store/view';
import { useWords } from '../words';

/** Opens the window that saves the log or the ledger as a table. */
export function CsvButton({ what }: { what: 'log' | 'ledger' }) {
  const { csv: words } = useWords();
  return <Button onPress={() => openDialog({ kind: 'csv', what })}>{words.save}</Button>;
}
