import { Button } from '../parts/Button';
import { Empty } from '../parts/Empty';
import { beginRun } from '../store/next-run';
import { useAllWords } from '../words';

/** A room that shows a run, in a book without one: what was stored of it could not be read, or it was brought back so. */
export function NoRun({ title }: { title: string }) {
  const { damaged: words } = useAllWords();
  return (
    <Empty title={title}>
      <p>{words.noRun}</p>
      <div className="actions">
        <Button writes weight="primary" onPress={beginRun}>
          {words.beginRun}
        </Button>
      </div>
    </Empty>
  );
}
