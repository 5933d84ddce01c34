import { useAllWords, useLocale } from '../words';
import { wholePercent } from '../words/format';
import { Button } from './Button';

/** Begins to lay out in the background; while that goes on it tells how far it is, and stops it. */
export function TryButton({
  label,
  trying,
  share,
  onStart,
  onStop,
}: {
  label: string;
  trying: boolean;
  /** From 0 to 1. */
  share: number;
  onStart: () => void;
  onStop: () => void;
}) {
  const { filmForm: words, commands } = useAllWords();
  const locale = useLocale();
  if (!trying) return <Button onPress={onStart}>{label}</Button>;
  return (
    <div className="trying">
      <progress max={1} value={share} aria-label={words.comparing(wholePercent(share, { locale }))} />
      <Button onPress={onStop}>{commands.stop}</Button>
    </div>
  );
}
