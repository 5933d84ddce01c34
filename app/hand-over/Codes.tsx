import { useEffect, useState } from 'react';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { CodePicture } from './CodePicture';

/** How long each code is shown, in milliseconds: a camera needs a moment to find it sharp. */
const EACH = 1600;

const prefersRest = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Codes shown one after another, by themselves or by hand. */
export function Codes({ codes }: { codes: readonly string[] }) {
  const { handOver: words } = useAllWords();
  const ways = useWays();
  const [at, setAt] = useState(0);
  const [plays, setPlays] = useState(() => codes.length > 1 && !prefersRest());
  useEffect(() => {
    if (!plays) return;
    const timer = setInterval(() => setAt((before) => (before + 1) % codes.length), EACH);
    return () => clearInterval(timer);
  }, [plays, codes.length]);
  const step = (by: number) => {
    setPlays(false);
    setAt((at + by + codes.length) % codes.length);
  };
  const label = words.codeOf(at + 1, codes.length, ways);
  return (
    <div className="codes">
      <CodePicture text={codes[at] ?? ''} label={label} />
      <p className="count" data-testid="code-count">
        {label}
      </p>
      {codes.length > 1 && (
        <div className="actions">
          <Button onPress={() => step(-1)}>{words.previous}</Button>
          <Button weight="primary" onPress={() => setPlays(!plays)}>
            {plays ? words.pause : words.play}
          </Button>
          <Button onPress={() => step(1)}>{words.next}</Button>
        </div>
      )}
      <p className="quiet small">{words.codesHint}</p>
    </div>
  );
}
