import { useEffect, useRef } from 'react';
import { Button } from '../parts/Button';
import { loadAgain } from '../store/load-again';
import { dismissNotice, type Notice, useView } from '../store/view';
import { useWords } from '../words';

/** For how long a notice stays, in milliseconds: what needs care longer than what went well, what failed until it is read. */
const READ = { plain: 7000, care: 20_000, error: null } as const;

/** Between the news and what stands above them, in pixels. */
const CLEAR = 8;

/** Tells the page how much room the news takes at its foot, so that what lies under them can be scrolled clear of them. */
function useRoomForNews() {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const { current } = place;
    if (!current) return;
    const sizes = new ResizeObserver(() =>
      document.body.style.setProperty('--news', `${current.offsetHeight && current.offsetHeight + CLEAR}px`),
    );
    sizes.observe(current);
    return () => sizes.disconnect();
  }, []);
  return place;
}

/** Short sentences about what just happened. */
export function Notices() {
  const notices = useView((view) => view.notices);
  const place = useRoomForNews();
  return (
    <div className="notices" ref={place} role="status" aria-live="polite">
      {notices.map((notice) => (
        <NoticeLine key={notice.id} notice={notice} />
      ))}
    </div>
  );
}

function NoticeLine({ notice: { id, tone, text, reload } }: { notice: Notice }) {
  const { common, failures } = useWords();
  useEffect(() => {
    const read = READ[tone];
    if (read === null) return;
    const timer = setTimeout(() => dismissNotice(id), read);
    return () => clearTimeout(timer);
  }, [id, tone]);
  return (
    <div className={`notice tone-${tone}`}>
      <p>
        {text} {reload && failures.missing}
      </p>
      {reload && <Button onPress={() => void loadAgain()}>{failures.reload}</Button>}
      <Button weight="plain" onPress={() => dismissNotice(id)}>
        {common.dismiss}
      </Button>
    </div>
  );
}
