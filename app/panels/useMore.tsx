import { type ReactNode, useState } from 'react';
import { Button } from '../parts/Button';
import { FEW } from '../parts/few';
import { useWays } from '../store/selectors';
import { useWords } from '../words';

/**
 * How much of a long list is drawn, where its rows have no known height or something stands below it, and a button for more of it
 * (`null` where all is drawn): each press draws as much again as there is.
 */
export function useMore(count: number): { shown: number; more: ReactNode } {
  const { common: words } = useWords();
  const ways = useWays();
  const [most, setMost] = useState(FEW);
  const shown = Math.min(most, count);
  const next = Math.min(shown, count - shown);
  return {
    shown,
    more:
      next > 0 ? (
        <Button weight="plain" onPress={() => setMost(shown + next)}>
          {words.more(next, count - shown, ways)}
        </Button>
      ) : null,
  };
}
