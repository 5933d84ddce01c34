import { hasFolders } from '../files/pickers';
import { Button } from '../parts/Button';
import { useFolder } from '../store/folder';
import { chooseFolder, leaveFolder } from '../store/folder-backup';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { notify } from '../store/view';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';

/** Backups that go to a folder by themselves; of the shop's own book alone. */
export function FolderBackups() {
  const {
    keep: { folder: words },
  } = useAllWords();
  const ways = useWays();
  const source = useShop((shop) => shop.source);
  const folder = useFolder((state) => state.folder);
  if (source !== 'shop') return null;
  const choose = () => void chooseFolder().catch(() => notify('error', words.refused));
  return (
    <section className="spaced">
      <h3>{words.title}</h3>
      <p className="quiet">
        {folder ? words.chosen(folder.name) : hasFolders() ? words.none : words.cannot}
        {folder?.at != null && ` ${words.last(dayAndTime(new Date(folder.at).toISOString(), ways))}`}
      </p>
      {hasFolders() && (
        <div className="actions">
          <Button onPress={choose}>{folder ? words.another : words.choose}</Button>
          {folder && (
            <Button weight="plain" onPress={() => void leaveFolder()}>
              {words.leave}
            </Button>
          )}
        </div>
      )}
    </section>
  );
}
