import { edits, ticksOf } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { BEGUN, batchesOf, type Job, ticked } from '../../src/pressing';
import { Button } from '../parts/Button';
import { useHeld } from '../parts/held';
import { nextRunName } from '../store/next-run';
import { useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import type { Day } from '../store/timeline';
import { notify, openRun } from '../store/view';
import { useAllWords } from '../words';
import { spoken, timeAndDay } from '../words/format';
import { jobName } from './job-name';
import { Together } from './Together';

/** The jobs that were ticked last, all at one instant. */
function lastTicked(jobs: readonly Job[], done: ReadonlyMap<string, string>): Job[] {
  const last = jobs
    .flatMap(({ key }) => done.get(key) ?? [])
    .sort()
    .at(-1);
  return last === undefined ? [] : jobs.filter(({ key }) => done.get(key) === last);
}

/** How many jobs ahead are listed. */
const AHEAD = 6;

/** What to do now, ticked off with a thumb; the caution stands beside the act. */
export function Next({ run, day }: { run: LaidRun; day: Day }) {
  const { press: words } = useAllWords();
  const { isHeld, reason } = useHeld(true);
  const ways = useWays();
  const { entries } = day.timeline;
  const open = entries.filter(({ state }) => state !== 'done');
  const ticks = useShop(({ book }) => book.tick);
  const last = lastTicked(
    entries.map(({ job }) => job),
    ticked(ticksOf({ tick: ticks }, run.id)),
  );
  const mayBegin = run.state !== 'draft' && run.state !== 'closed';
  const begin = () => {
    // It stays in view, whatever state it comes to.
    openRun(run.id);
    act(edits.tickJobs(run.id, [BEGUN], true, nextRunName()));
    notify('plain', words.startNote);
  };
  const tick = (jobs: readonly Job[], isDone: boolean) =>
    act(
      edits.tickJobs(
        run.id,
        jobs.map(({ key }) => key),
        isDone,
        nextRunName(),
      ),
    );
  const [only] = last;
  const lastName = only && last.length === 1 ? jobName(only, ways) : words.jobs(last.length, ways);
  const shown = open.slice(0, AHEAD);
  const cautions = [...new Set(shown.map(({ job }) => words.cautions[job.kind]))].filter(Boolean);
  return (
    <section className="next" aria-labelledby="next-title">
      <h2 id="next-title">{words.next}</h2>
      {!day.begun && mayBegin && (
        <Button writes weight="primary" onPress={begin}>
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
                disabled={isHeld || !day.begun || !mayBegin}
                {...reason}
                onChange={() => tick([entry.job], true)}
              />
              <span>
                <b>{timeAndDay(day.origin + 1000 * entry.start, ways)}</b> {jobName(entry.job, ways)}{' '}
                <span className="quiet small">{spoken(entry.end - entry.start, ways)}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      {day.begun && mayBegin && (
        <Together batches={batchesOf(open.map(({ job }) => job))} onDone={(jobs) => tick(jobs, true)} />
      )}
      {last.length > 0 && day.begun && mayBegin && (
        <p className="small">
          <span className="quiet">{words.lastDone}: </span>
          {lastName}{' '}
          <Button
            writes
            weight="plain"
            aria-label={words.undoTick(lastName)}
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
