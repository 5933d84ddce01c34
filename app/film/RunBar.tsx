import { Suspense } from 'react';
import { filmEdits, filmForNextRun } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { openRuns, printedRuns, type Run } from '../../src/model';
import { fetchPart, part } from '../offline/part';
import type { NextAct } from '../panels/useNextAct';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { atRest } from '../store/at-rest';
import { sayFailed } from '../store/failures';
import { finishPrinting, nextRunName } from '../store/next-run';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo, openDialog, openRun } from '../store/view';
import { useWords } from '../words';
import { rulerLength } from '../words/format';

const NEW = 'new';

/** What is due is looked up once the film is on the screen. */
const DueLine = part(() => import('../panels/DueLine').then(({ DueLine: line }) => line), atRest);

/** Which run is looked at, how far it is, and the steps from draft to printed. */
export function RunBar({ run, next }: { run: LaidRun; next: NextAct | null }) {
  const { runs: words } = useWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const follows = useShop((shop) => shop.follows);
  const open = openRuns(book);
  const printed = printedRuns(book);
  const leaving =
    run.state === 'draft' && run.copies.length > 0
      ? Object.values(book.copy).filter((copy) => copy.state === 'waiting' && copy.run === run.id).length
      : 0;
  const label = ({ name, state }: Run) => `${name} · ${words.states[state]}`;
  const choose = (id: string) => {
    if (id !== NEW) return openRun(id);
    const film = book.run[run.id]?.film;
    const added =
      film &&
      act(filmEdits.addRun({ name: nextRunName(), film: filmForNextRun(book, film), takes: 'chosen' }));
    if (added) openRun(added.result);
    openDialog({ kind: 'run' });
  };
  return (
    <div className="run-bar">
      <Choice
        label={words.run}
        value={run.id as string}
        options={[
          ...[...open, ...printed].map((each) => ({ value: each.id as string, label: label(each) })),
          ...(follows ? [] : [{ value: NEW, label: words.add }]),
        ]}
        onChange={choose}
      />
      <p className="quiet small">
        {run.printedTo > 0 && run.state === 'draft' && words.printedToHere(rulerLength(run.printedTo, ways))}
      </p>
      {run.state === 'draft' && (
        <Suspense fallback={<div className="due-place" />}>
          <DueLine />
        </Suspense>
      )}
      {leaving > 0 && <p className="care small">{words.lettingGo(leaving, ways)}</p>}
      <RunSteps run={run} next={next} />
    </div>
  );
}

/** What it takes is fetched when it is asked for. */
const lock = (): Promise<void> =>
  fetchPart(() => import('./lock')).then(
    (fetched) => fetched.lockRun(),
    (error) => sayFailed('lock', error),
  );

/** The steps that a run can take from where it is. */
function RunSteps({ run, next }: { run: LaidRun; next: NextAct | null }) {
  const { runs: words, rooms } = useWords();
  const toPress = (
    <Button weight="primary" onPress={() => goTo('press')}>
      {rooms.press}
    </Button>
  );
  const steps: Record<Run['state'], () => React.ReactNode> = {
    draft: () => (
      <>
        <Button weight="plain" onPress={() => openDialog({ kind: 'run' })}>
          {words.choose}
        </Button>
        {run.printedTo > 0 && (
          <Button onPress={() => openDialog({ kind: 'spoiled' })}>{words.spoiled}</Button>
        )}
        <Button
          writes
          weight={next === 'lock' ? 'primary' : 'normal'}
          isDisabled={run.copies.length === 0 || run.spans === null}
          onPress={() => void lock()}
        >
          {words.lock}
        </Button>
      </>
    ),
    locked: () => (
      <>
        <Button writes weight="plain" onPress={() => act(filmEdits.unlockRun(run.id))}>
          {words.unlock}
        </Button>
        <Button onPress={() => openDialog({ kind: 'spoiled' })}>{words.spoiled}</Button>
        <Button onPress={() => openDialog({ kind: 'printed' })}>{words.printedTo}</Button>
        <Button writes weight={next === 'printed' ? 'primary' : 'normal'} onPress={() => finishPrinting(run)}>
          {words.leadOn.locked}
        </Button>
      </>
    ),
    printed: () => (
      <>
        <Button writes weight="plain" onPress={() => act(filmEdits.reopenRun(run.id))}>
          {words.stepBack}
        </Button>
        {toPress}
      </>
    ),
    cured: () => toPress,
    pressed: () => toPress,
    closed: () => (
      <Button weight="primary" onPress={() => goTo('log')}>
        {words.leadOn.closed}
      </Button>
    ),
  };
  return <div className="actions">{steps[run.state]()}</div>;
}
