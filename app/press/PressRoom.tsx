import { edits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { isPrinted, runStates } from '../../src/model';
import { BEGUN, type Entry } from '../../src/pressing';
import { DueLine } from '../panels/DueLine';
import { HandOverButton } from '../panels/HandOverButton';
import { RunChoice } from '../panels/RunChoice';
import { Shelf } from '../panels/Shelf';
import { Button } from '../parts/Button';
import { Tick } from '../parts/Tick';
import { nextRunName } from '../store/next-run';
import { settingsOrFirst, useBenchRun, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { type Day, useDay } from '../store/timeline';
import { goTo, notify, openDialog, openRun } from '../store/view';
import { dayAndTime, spoken, timeAndDay } from '../words/format';
import { DayFacts, OrderTimes } from './DayFacts';
import { HowTo } from './HowTo';
import { jobName } from './job-name';
import { KeptAside } from './KeptAside';
import { ReceivedBar } from './ReceivedBar';
import { TimeChart } from './TimeChart';
import { WhatIf } from './WhatIf';
import './press.css';
import { useWords } from '../words';

/** From film to bagged garment: when the run is done, what comes next, how to press it, and the day as a chart. */
export function PressRoom() {
  const { press: words, upkeep, failures } = useWords();
  const run = useBenchRun();
  const received = useShop(({ book }) => book.run[run?.id ?? '']?.received ?? null);
  const state = useDay(run, 'thorough');
  if (!run) return null;
  return (
    <>
      <div className="room-head">
        <h1>{words.title}</h1>
        <div className="actions">
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
          <HandOverButton />
          <Button onPress={() => goTo('cards')}>{words.cards}</Button>
        </div>
      </div>
      <StateBar run={run} received={received !== null} />
      {received && <ReceivedBar run={run} made={received.made} />}
      <KeptAside />
      {!received && <DueLine />}
      {state.kind === 'missing' &&
        state.problems.map((problem) => (
          <p key={problem} className="care">
            {words.missing[problem]}
          </p>
        ))}
      {state.kind === 'working' && <p className="quiet">{words.working}</p>}
      {state.kind === 'failed' && (
        <p className="care">
          {failures.schedule} <Button onPress={state.again}>{failures.again}</Button>
        </p>
      )}
      {state.kind === 'ready' && <DayView run={run} day={state.day} />}
      <ShelfSection />
    </>
  );
}

function DayView({ run, day }: { run: LaidRun; day: Day }) {
  return (
    <>
      <DayFacts day={day} />
      <TimeChart day={day} />
      <div className="press-columns">
        <Next run={run} day={day} />
        <OrderTimes run={run} day={day} />
        <HowTo run={run} />
        <WhatIf run={run} day={day} />
      </div>
    </>
  );
}

/** How far the run is, and the steps on and back; each is noted with its time. */
function StateBar({ run, received }: { run: LaidRun; received: boolean }) {
  const { press: words, closing } = useWords();
  const ways = useWays();
  const history = useShop(({ book }) => book.run[run.id]?.history ?? []);
  const { state } = run;
  const before = runStates[runStates.indexOf(state) - 1];
  const onward = words.advance[state];
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
        {state === 'draft' && (
          <Button weight="plain" onPress={() => goTo('film')}>
            {words.toFilm}
          </Button>
        )}
        {isPrinted(run) && before && !received && (
          <Button
            weight="plain"
            onPress={() => {
              openRun(run.id);
              act(edits.stepRunBack(run.id));
            }}
          >
            {words.back(words.states[before])}
          </Button>
        )}
        {isPrinted(run) && <Button onPress={() => openDialog({ kind: 'spoil' })}>{words.spoil}</Button>}
        {state === 'closed' && !received && (
          <Button weight="primary" onPress={() => openDialog({ kind: 'close-run', run: run.id })}>
            {closing.correct}
          </Button>
        )}
        {onward && !received && (
          <Button
            weight="primary"
            onPress={() => {
              openRun(run.id);
              if (state === 'pressed') openDialog({ kind: 'close-run', run: run.id });
              else act(edits.advanceRun(run.id));
            }}
          >
            {onward}
          </Button>
        )}
      </div>
      {state === 'draft' && <p className="quiet small">{words.lockFirst}</p>}
    </div>
  );
}

/** How many jobs ahead are listed. */
const AHEAD = 6;

/** What to do now, ticked off with a thumb; the caution stands beside the act. */
function Next({ run, day }: { run: LaidRun; day: Day }) {
  const { press: words } = useWords();
  const ways = useWays();
  const { entries } = day.timeline;
  const open = entries.filter(({ state }) => state !== 'done');
  const last = entries.filter(({ state }) => state === 'done').sort((a, b) => b.end - a.end)[0];
  const mayBegin = run.state !== 'draft' && run.state !== 'closed';
  const begin = () => {
    // It stays in view, whatever state it comes to.
    openRun(run.id);
    act(edits.tickJob(run.id, BEGUN, true, nextRunName()));
    notify('plain', words.startNote);
  };
  const tick = (entry: Entry, isDone: boolean) =>
    act(edits.tickJob(run.id, entry.job.key, isDone, nextRunName()));
  const shown = open.slice(0, AHEAD);
  const cautions = [...new Set(shown.map(({ job }) => words.cautions[job.kind]))].filter(Boolean);
  return (
    <section className="next" aria-labelledby="next-title">
      <h2 id="next-title">{words.next}</h2>
      {!day.begun && mayBegin && (
        <Button weight="primary" onPress={begin}>
          {words.start}
        </Button>
      )}
      {day.begun && (
        <p className="quiet small">
          {words.doneJobs(entries.length - open.length, entries.length, ways)} · {words.nextHint}
        </p>
      )}
      <ul className="job-list">
        {shown.map((entry) => (
          <li key={entry.job.key}>
            <label className="tick">
              <input
                type="checkbox"
                checked={false}
                disabled={!day.begun || !mayBegin}
                onChange={() => tick(entry, true)}
              />
              <span>
                <b>{timeAndDay(day.origin + 1000 * entry.start, ways)}</b> {jobName(entry.job, ways)}{' '}
                <span className="quiet small">{spoken(entry.end - entry.start, ways)}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      {last && day.begun && (
        <p className="small">
          <span className="quiet">{words.lastDone}: </span>
          {jobName(last.job, ways)}{' '}
          <Button
            weight="plain"
            aria-label={words.undoTick(jobName(last.job, ways))}
            onPress={() => tick(last, false)}
          >
            {words.undoShort}
          </Button>
        </p>
      )}
      {cautions.map((caution) => (
        <p key={caution} className="caution small">
          {caution}
        </p>
      ))}
    </section>
  );
}

/** Cured transfers in stock, and the orders that could use them. */
function ShelfSection() {
  const { press: words } = useWords();
  const { shelfFirst } = useShop(({ book }) => settingsOrFirst(book));
  const isEmpty = useShop(({ book }) => Object.values(book.shelf).every(({ count }) => count === 0));
  if (isEmpty) return null;
  return (
    <section className="shelf" aria-labelledby="shelf-title">
      <h2 id="shelf-title">{words.shelf}</h2>
      <Shelf />
      <Tick
        label={words.shelfFirst}
        checked={shelfFirst}
        onChange={(checked) => act(edits.editSettings({ shelfFirst: checked }))}
      />
    </section>
  );
}
