import { useEffect } from 'react';
import { Button } from '../parts/Button';
import { dismissNotice, useView } from '../store/view';
import { useWords } from '../words';

/** What went well is said for as long as it takes to read; what needs care stays. */
const READ = 7000;

/** Short sentences about what just happened. */
export function Notices() {
  const { common } = useWords();
  const notices = useView((view) => view.notices);
  useEffect(() => {
    const timers = notices
      .filter(({ tone }) => tone === 'plain')
      .map(({ id }) => setTimeout(() => dismissNotice(id), READ));
    return () => timers.forEach(clearTimeout);
  }, [notices]);
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
