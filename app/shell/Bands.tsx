import type { ReactNode } from 'react';
import { loadUpdate, useUpdate } from '../offline/update';
import { Button } from '../parts/Button';
import { openSource, retrySaving, takeOver } from '../store/boot';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useWords } from '../words';

function Band({ tone, children }: { tone?: 'care' | 'error'; children: ReactNode }) {
  return (
    <aside className={tone ? `band ${tone}-band` : 'band'} role={tone === 'error' ? 'alert' : undefined}>
      {children}
    </aside>
  );
}

/** What holds for the whole shop: the demo day, another tab, a new version, trouble with storage. */
export function Bands() {
  const { bands, storage } = useWords();
  const ways = useWays();
  const { phase, source, follows, saving, setAside } = useShop();
  const updateReady = useUpdate((update) => update.ready);
  const problem = phase.kind === 'failed' ? phase.problem : saving.kind === 'failed' ? saving.problem : null;
  return (
    <>
      {updateReady && (
        <Band>
          <p>{bands.update}</p>
          <Button weight="plain" onPress={loadUpdate}>
            {bands.updateNow}
          </Button>
        </Band>
      )}
      {problem && (
        <Band tone="error">
          <p>{storage[problem.code]}</p>
          {problem.code !== 'unavailable' && <Button onPress={retrySaving}>{storage.retry}</Button>}
        </Band>
      )}
      {phase.kind === 'newer' && (
        <Band tone="error">
          <p>{bands.newer}</p>
        </Band>
      )}
      {setAside.length > 0 && (
        <Band tone="care">
          <p>{bands.setAside(setAside.length, ways)}</p>
        </Band>
      )}
      {follows && (
        <Band tone="care">
          <p>{bands.follows}</p>
          <Button onPress={takeOver}>{bands.takeOver}</Button>
        </Band>
      )}
      {phase.kind === 'open' && source === 'demo' && (
        <Band>
          <p>{bands.demo}</p>
          <Button weight="plain" onPress={() => void openSource('shop')}>
            {bands.leaveDemo}
          </Button>
        </Band>
      )}
    </>
  );
}
