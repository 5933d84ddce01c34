import { Suspense } from 'react';
import type { StorageProblem } from '../../src/storage';
import { part } from '../offline/part';
import { useUpdate } from '../offline/update';
import { Button } from '../parts/Button';
import { openSource, retrySaving, startAnew, takeOver } from '../store/boot';
import { useFolder } from '../store/folder';
import { loadAgain } from '../store/load-again';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useWords } from '../words';
import { Band } from './Band';
import { FOLLOWS } from './follows';

/** What of the reasons for working in memory a user can do something about. */
const whyOf = ({ code }: StorageProblem): 'unavailable' | 'blocked' | 'unreadable' =>
  code === 'unavailable' || code === 'blocked' ? code : 'unreadable';

const Damaged = part(() => import('./Damaged').then(({ Damaged: bands }) => bands));
const FolderBand = part(() => import('./FolderBand').then(({ FolderBand: band }) => band));

/** What holds for the whole shop: the demo day, another tab, a new version, trouble with storage. */
export function Bands() {
  const { bands, failures, keep, storage, trouble } = useWords();
  const { phase, source, follows, saving, inMemory, isGone, setAside, fellBack } = useShop();
  const isDamaged = setAside.length > 0 || fellBack.length > 0;
  const newer = useUpdate((update) => update.newer);
  /** Backups do not go to their folder. */
  const isHeldUp = useFolder(({ folder }) => folder !== null && folder.state !== 'ready');
  const problem = saving.kind === 'failed' && !inMemory ? saving.problem : null;
  return (
    <>
      {newer !== 'none' && (
        <Band>
          <p>{newer === 'ready' ? bands.update : bands.updatedElsewhere}</p>
          <Button weight="plain" onPress={() => void loadAgain()}>
            {bands.updateNow}
          </Button>
        </Band>
      )}
      {problem && (
        <Band tone="error">
          <p>{storage[problem.code]}</p>
          <Button onPress={retrySaving}>{storage.retry}</Button>
        </Band>
      )}
      {inMemory && (
        <Band tone="error">
          <p>
            {storage.whyInMemory[whyOf(inMemory)]} {storage.inMemory}
          </p>
          <Button onPress={retrySaving}>{storage.retry}</Button>
          <Button onPress={() => openDialog({ kind: 'keep' })}>{keep.save}</Button>
          <a href="./recovery.html">{trouble.recovery}</a>
        </Band>
      )}
      {isGone && (
        <Band tone="error">
          <p>{storage.gone}</p>
          <Button onPress={() => openDialog({ kind: 'keep' })}>{storage.bringBack}</Button>
          <a href="./recovery.html">{trouble.recovery}</a>
          <Button onPress={startAnew}>{storage.startAnew}</Button>
        </Band>
      )}
      {phase.kind === 'newer' && (
        <Band tone="error">
          <p>{bands.newer}</p>
          <Button onPress={() => void loadAgain()}>{bands.updateNow}</Button>
        </Band>
      )}
      {phase.kind === 'part-missing' && (
        <Band tone="error">
          <p>{failures.missing}</p>
          <Button onPress={() => void loadAgain()}>{failures.reload}</Button>
          <a href="./recovery.html">{trouble.recovery}</a>
        </Band>
      )}
      {source === 'shop' && isHeldUp && (
        <Suspense>
          <FolderBand />
        </Suspense>
      )}
      {isDamaged && (
        <Suspense>
          <Damaged />
        </Suspense>
      )}
      {follows && (
        <Band tone="care">
          <p id={FOLLOWS}>{bands.follows}</p>
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
