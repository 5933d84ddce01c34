import { Button } from '../parts/Button';
import { dismissNotice, useView } from '../store/view';
import { useWords } from '../words';

/** Short sentences about what just happened; they stay until they are read away or pushed out by newer ones. */
export function Notices() {
  const { common } = useWords();
  const notices = useView((view) => view.notices);
  return (
    <div className="notices" role="status" aria-live="polite">
      {notices.map(({ id, tone, text }) => (
        <div key={id} className={`notice tone-${tone}`}>
          <p>{text}</p>
          <Button weight="plain" onPress={() => dismissNotice(id)}>
            {common.dismiss}
          </Button>
        </div>
      ))}
    </div>
  );
}
