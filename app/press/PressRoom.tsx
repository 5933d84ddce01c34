import { memo, Suspense, useDeferredValue } from 'react';
import { edits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { isPrinted, type Run, runStates } from '../../src/model';
import { part } from '../offline/part';
import { DueLine } from '../panels/DueLine';
import { HandOverButton } from '../panels/HandOverButton';
import { NoRun } from '../panels/NoRun';
import { RunChoice } from '../panels/RunChoice';
import { Shelf } from '../panels/Shelf';
import { Button } from '../parts/Button';
import { Empty } from '../parts/Empty';
import { RoomHead } from '../parts/RoomHead';
import { Tick } from '../parts/Tick';
import { useNarrow } from '../parts/useNarrow';
import { finishPrinting } from '../store/next-run';
import { settingsOrFirst, useBenchRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { type Day, useDay } from '../store/timeline';
import { goTo, openDialog, openRun } from '../store/view';
import { dayAndTime } from '../words/format';
import { DayFacts, OrderTimes } from './DayFacts';
import { whyNotPlanned } from './day-problems';
import { HowTo } from './HowTo';
import { KeptAside } from './KeptAside';
import { Next } from './Next';
import { ReceivedBar } from './ReceivedBar';
import { Reprints } from './Reprints';
import { TimeChart } from './TimeChart';
import { WhatIf } from './WhatIf';
import './press.css';
import { useAllWords } from '../words';

/** What moves rows by hand and by keys is large, and only several runs need it. */
const RunOrder = part(() => import('./RunOrder').then(({ RunOrder: order }) => order));

/** From film to bagged garment: when the run is done, what comes next, how to press it, and the day as a chart. */
export function PressRoom() {
  const { press: words, upkeep, failures } = useAllWords();
  const run = useBenchRun();
  const received = useShop(({ book }) => book.run[run?.id ?? '']?.received ?? null);
  const state = useDay('thorough');
  // A long day is drawn in slices, behind what is pressed meanwhile.
  const drawn = useDeferredValue(state, null);
  const day = state.kind === 'ready' && drawn?.kind === 'ready' ? drawn.day : null;
  const narrow = useNarrow();
  if (!run) return <NoRun title={words.title} />;
  return (
    <>
      <RoomHead title={words.title} told={run.name}>
        <RunChoice run={run} />
        {!received && (
          <>
            <Button weight="plain" onPress={() => openDialog({ kind: 'station' })}>
              {words.equipment}
            </Button>
            <Button weight="plain" onPress={() => openDialog({ kind: 'recipes' })}>
              {words.recipes}
            </Button>
            <Button weight="plain" onPress={() => openDialog({ kind: 'upkeep' })}>
              {upkeep.open}
            </Button>
          </>
        )}
        {!narrow && <HandOverButton />}
        <Button onPress={() => goTo('cards')}>{words.cards}</Button>
      </RoomHead>
      <StateBar run={run} received={received !== null} />
      {received && <ReceivedBar run={run} made={received.made} />}
      <KeptAside />
      {!received && <DueLine />}
      {whyNotPlanned(run, state).map((problem) =>
        problem === 'nothing-laid' ? (
          <Empty key={problem}>
            <p>{words.missing[problem]}</p>
          </Empty>
        ) : (
          <p key={problem} className="care">
            {words.missing[problem]}
          </p>
        ),
      )}
      {(state.kind === 'working' || (state.kind === 'ready' && !day)) && (
        <p className="quiet">{words.working}</p>
      )}
      {state.kind === 'failed' && (
        <p className="care">
          {failures.schedule} <Button onPress={state.again}>{failures.again}</Button>
        </p>
      )}
      {run.state === 'closed' && <p>{words.closed}</p>}
      {!received && !narrow && <Reprints />}
      {day && <DayView run={run} day={day} />}
      {!received && narrow && <Reprints />}
      <ShelfSection />
      {narrow && <HandOverButton />}
    </>
  );
}

/** The day; on a phone, held at the press, what comes next stands first. */
const DayView = memo(function DayView({ run, day }: { run: LaidRun; day: Day }) {
  const narrow = useNarrow();
  const next = <Next run={run} day={day} />;
  return (
    <>
      {narrow && <div className="press-columns">{next}</div>}
      <DayFacts run={run} day={day} />
      <TimeChart day={day} />
      <div className="press-columns">
        {!narrow && next}
        <OrderTimes day={day} />
        <HowTo run={run} />
        {day.timeline.runs.length > 1 && (
          <Suspense fallback={null}>
            <RunOrder day={day} />
          </Suspense>
        )}
        <WhatIf day={day} />
      </div>
    </>
  );
});

/** How far the run is, and the steps on and back; each is noted with its time. */
function StateBar({ run, received }: { run: LaidRun; received: boolean }) {
  const { press: words, closing, runs } = useAllWords();
  const ways = useWays();
  const history = useShop(({ book }) => book.run[run.id]?.history ?? []);
  const { state } = run;
  const before = runStates[runStates.indexOf(state) - 1];
  const advance = () => act(edits.advanceRun(run.id));
  const leadOn: Record<Run['state'], () => void> = {
    draft: () => goTo('film'),
    locked: () => finishPrinting(run),
    printed: advance,
    cured: advance,
    pressed: () => openDialog({ kind: 'close-run', run: run.id }),
    closed: () => goTo('log'),
  };
  return (
    <div className="state-bar">
      <ol className="states" aria-label={words.history}>
        {runStates.map((each) => {
          const last = history.findLast((entry) => entry.state === each);
          const isReached = runStates.indexOf(each) <= runStates.indexOf(state);
          return (
            <li key={each} aria-current={each === state ? 'step' : undefined} data-reached={isReached}>
              <span>{words.states[each]}</span>
              {last && isReached && <span className="quiet small">{dayAndTime(last.at, ways)}</span>}
            </li>
          );
        })}
      </ol>
      <div className="actions">
        {isPrinted(run) && before && !received && (
          <Button
            writes
            weight="plain"
            onPress={() => {
              openRun(run.id);
              act(edits.stepRunBack(run.id));
            }}
          >
            {words.back(words.states[before])}
          </Button>
        )}
        {isPrinted(run) && (
          <Button onPress={() => openDialog({ kind: 'spoil', copy: null, stage: 'press' })}>
            {words.spoil}
          </Button>
        )}
        {state === 'closed' && !received && (
          <Button onPress={() => openDialog({ kind: 'close-run', run: run.id })}>{closing.correct}</Button>
        )}
        {!received && (
          <Button
            weight="primary"
            writes={state === 'locked' || state === 'printed' || state === 'cured'}
            onPress={() => {
              // It stays in view, whatever state it comes to.
              openRun(run.id);
              leadOn[state]();
            }}
          >
            {runs.leadOn[state]}
          </Button>
        )}
      </div>
      {state === 'draft' && <p className="quiet small">{words.lockFirst}</p>}
    </div>
  );
}

/** Cured transfers in stock, and the orders that could use them. */
function ShelfSection() {
  const { press: words } = useAllWords();
  const { shelfFirst } = useShop(({ book }) => settingsOrFirst(book));
  const isEmpty = useShop(({ book }) => Object.values(book.shelf).every(({ count }) => count === 0));
  if (isEmpty) return null;
  return (
    <section className="shelf" aria-labelledby="shelf-title">
      <h2 id="shelf-title">{words.shelf}</h2>
      <Shelf />
      <Tick
        writes
        label={words.shelfFirst}
        checked={shelfFirst}
        onChange={(checked) => act(edits.editSettings({ shelfFirst: checked }))}
      />
    </section>
  );
}
