import { Button } from '../parts/Button';
import { useFolder } from '../store/folder';
import { allowFolder } from '../store/folder-backup';
import { useAllWords } from '../words';
import { Band } from './Band';

/** Says that backups do not go to their folder, as long as they do not. */
export function FolderBand() {
  const {
    storage,
    keep: { folder: words },
  } = useAllWords();
  const folder = useFolder((state) => state.folder);
  if (!folder) return null;
  const waits = folder.state === 'waits';
  return (
    <Band tone="care">
      <p>{waits ? words.waits(folder.name) : words.failed(folder.name)}</p>
      <Button onPress={() => void allowFolder()}>{waits ? words.allow : storage.retry}</Button>
    </Band>
  );
}
