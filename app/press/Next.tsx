import { type ReactNode, useState } from 'react';
import { benchEdits } from '../../src/editing';
import type { LaidRun } from '../../src/layout';
import { actOf, BEGUN, batchesOf, type Entry, isDusty, type Job } from '../../src/pressing';
import { groupBy } from '../../src/units';
import { Cautions } from '../panels/Cautions';
import { InitialsField } from '../panels/InitialsField';
import { machineName } from '../panels/machine-name';
import { Button } from '../parts/Button';
import { useHeld } from '../parts/held';
import { useNarrow } from '../parts/useNarrow';
import { initialsNow } from '../store/initials';
import { nextRunName } from '../store/next-run';
import { stationOf, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { type Day, openRunsOf } from '../store/timeline';
import { notify, openDialog, openRun } from '../store/view';
import { useAllWords } from '../words';
import { spoken, timeAndDay } from '../words/format';
import { BeforePrint } from './BeforePrint';
import { DoneOn, plannedOn } from './DoneOn';
import { machinesOf } from './day-rows';
import { jobName } from './job-name';
import { NextCard } from './NextCard';
import { Together } from './Together';
import { useDoneBy } from './useDoneBy';

/** The jobs that were ticked last, all at one instant. */
function lastTicked(jobs: readonly Job[], tickedAt: (job: Job) => string | undefined): Job[] {
  const last = jobs
    .flatMap((job) => tickedAt(job) ?? [])
    .sort()
    .at(-1);
  return last === undefined ? [] : jobs.filter((job) => tickedAt(job) === last);
}

/** Whether a job is at its printer. */
const isPrint = ({ kind }: Job): boolean => kind === 'ready' || kind === 'print';

/** How many jobs ahead are listed. */
const AHEAD = 6;

/**
 * Ticks jobs, each on its run, or takes their ticks back.
 * @param machineOf the machine that a job is done on, where there are several
 */
function tick(jobs: readonly Job[], isDone: boolean, machineOf: (job: Job) => string | null): void {
  for (const [run, own] of groupBy(jobs, (job) => job.run.id)) {
    const keys = own.map(({ key }) => key);
    const machines = new Map<string, string>();
    for (const job of own) {
      const machine = machineOf(job);
      if (machine !== null) machines.set(job.key, machine);
    }
    act(benchEdits.tickJobs(run, keys, { done: isDone, by: initialsNow(), machines }, nextRunName()));
  }
}

/** Tells a job from all others of the day. */
const idOfJob = ({ run, key }: Job): string => `${run.id} ${key}`;

/** Begins a run: its clock goes from now on. */
function begin(run: Job['run']['id'], note: string): void {
  // It stays in view, whatever state it comes to.
  openRun(run);
  act(benchEdits.tickJobs(run, [BEGUN], { done: true, by: initialsNow() }, nextRunName()));
  notify('plain', note);
}

/** What to do now, on whatever run, ticked off with a thumb; the caution stands beside the act. */
export function Next({ run, day }: { run: LaidRun; day: Day }) {
  const { press: words } = useAllWords();
  const narrow = useNarrow();
  const ways = useWays();
  const { entries, runs } = day.timeline;
  const laid = new Map(useShop(({ book }) => openRunsOf(book)).map((own) => [own.laid.id as string, own]));
  const ahead = entries.filter(({ state }) => state !== 'done');
  const last = lastTicked(
    entries.map(({ job }) => job),
    (job) => laid.get(job.run.id)?.done.get(job.key),
  );
  const mayTick = (id: string) => day.begun.has(id) && laid.get(id)?.laid.state !== 'draft';
  const mayBegin = (id: string) => !day.begun.has(id) && (laid.get(id)?.laid.state ?? 'draft') !== 'draft';
  const shown = ahead.slice(0, AHEAD);
  const [first] = shown;
  const own = first && laid.get(first.job.run.id)?.laid;
  // The run that is looked at, and that which comes next.
  const toBegin = [...new Set([run.id, ...(first ? [first.job.run.id] : [])])].filter(mayBegin);
  const acts = [
    ...new Set(
      shown.flatMap(({ job }) => {
        const of = laid.get(job.run.id)?.laid;
        return (of && actOf(job.kind, stationOf(of).curer)) ?? [];
      }),
    ),
  ];
  // The run that is printed next: on a phone once that is what comes next, elsewhere once it is in sight.
  const atPrinter = narrow ? first : shown.find(({ job }) => isPrint(job));
  const printed = atPrinter && isPrint(atPrinter.job) ? laid.get(atPrinter.job.run.id)?.laid : undefined;
  const nextPrinted = printed?.state === 'locked' ? printed : null;
  const [only] = last;
  const doneBy = useDoneBy();
  // Where a job is done that is not ticked yet, as far as that is not as planned.
  const [said, setSaid] = useState<ReadonlyMap<string, string>>(new Map());
  const entryOf = new Map(entries.map((entry) => [idOfJob(entry.job), entry]));
  const machineOf = (job: Job): string | null => {
    const entry = entryOf.get(idOfJob(job));
    const planned = entry ? plannedOn(entry) : null;
    return planned && (said.get(idOfJob(job)) ?? planned.id);
  };
  const doneOn = (entry: Entry): ReactNode => {
    const { job } = entry;
    const planned = plannedOn(entry);
    const of = laid.get(job.run.id)?.laid;
    return (
      planned &&
      of && (
        <DoneOn
          entry={entry}
          planned={planned}
          station={stationOf(of)}
          value={machineOf(job) ?? planned.id}
          onChange={(machine) => setSaid(new Map([...said, [idOfJob(job), machine]]))}
        />
      )
    );
  };
  const lastOn = only && last.length === 1 ? machinesOf(entryOf.get(idOfJob(only)) ?? { takes: [] }) : [];
  const lastName = only && last.length === 1 ? jobName(only, ways) : words.jobs(last.length, ways);
  return (
    <>
      {narrow && first && own && (
        <BeforePrint run={nextPrinted}>
          <NextCard
            job={first.job}
            machines={machinesOf(first).filter(({ kind }) => kind === 'person' || !mayTick(own.id))}
            where={mayTick(own.id) ? doneOn(first) : null}
            run={own}
            isBegun={mayTick(own.id)}
            onDone={() => tick([first.job], true, machineOf)}
            onBegin={mayBegin(own.id) ? () => begin(own.id, words.startNote) : null}
          />
        </BeforePrint>
      )}
      <section className="next" aria-labelledby="next-title">
        <h2 id="next-title">{words.next}</h2>
        {!narrow && <BeforePrint run={nextPrinted}>{null}</BeforePrint>}
        {!narrow &&
          toBegin.map((id) => (
            <Button key={id} writes weight="primary" onPress={() => begin(id, words.startNote)}>
              {runs.length > 1 ? words.startOf(laid.get(id)?.laid.name ?? '') : words.start}
            </Button>
          ))}
        {day.begun.size > 0 && (
          <p className="quiet small">
            {words.doneJobs(entries.length - ahead.length, entries.length, ways)} · {words.nextHint}
          </p>
        )}
        {day.begun.size > 0 && <InitialsField />}
        <ul className="job-list">
          {shown.map((entry) => (
            <JobLine
              key={idOfJob(entry.job)}
              entry={entry}
              origin={day.origin}
              names={runs.length > 1}
              where={mayTick(entry.job.run.id) ? doneOn(entry) : null}
              onDone={mayTick(entry.job.run.id) ? () => tick([entry.job], true, machineOf) : null}
            />
          ))}
        </ul>
        {first?.job.kind === 'ready' && (
          <p>
            <Button weight="plain" onPress={() => openDialog({ kind: 'upkeep' })}>
              {words.nozzlesFailed}
            </Button>
          </p>
        )}
        {mayTick(run.id) && (
          <Together
            batches={batchesOf(ahead.flatMap(({ job }) => (job.run.id === run.id ? [job] : [])))}
            onDone={(jobs) => tick(jobs, true, machineOf)}
          />
        )}
        {last.length > 0 && (
          <p className="small">
            <span className="quiet">{words.lastDone}: </span>
            {lastName}
            {lastOn.map((machine) => ` · ${machineName(machine)}`)}
            {only && doneBy(only) !== '' && <span className="quiet"> · {doneBy(only)}</span>}{' '}
            <Button
              writes
              weight="plain"
              aria-label={words.undoTick(lastName)}
              onPress={() => tick(last, false, () => null)}
            >
              {words.undoShort}
            </Button>
          </p>
        )}
        <Cautions small cautions={acts.map((act) => words.cautions[act])} dusty={acts.some(isDusty)} />
      </section>
    </>
  );
}

/** A job ahead, with its time and its run. */
function JobLine({
  entry,
  origin,
  names,
  where,
  onDone,
}: {
  entry: Entry;
  origin: number;
  /** Whether runs are named, since there are several. */
  names: boolean;
  /** What says on which of several machines it is done; `null` where none need be said, or nothing is done yet. */
  where: ReactNode;
  /** `null` where it cannot be ticked yet. */
  onDone: (() => void) | null;
}) {
  const ways = useWays();
  const { job, start, end } = entry;
  const { isHeld, reason } = useHeld(true);
  return (
    <li>
      <label className="tick">
        <input
          type="checkbox"
          checked={false}
          disabled={isHeld || onDone === null}
          {...reason}
          onChange={() => onDone?.()}
        />
        <span>
          <b>{timeAndDay(origin + 1000 * start, ways)}</b> {jobName(job, ways)}{' '}
          <span className="quiet small">
            {[
              ...(names ? [job.run.name] : []),
              ...machinesOf(entry)
                .filter(({ kind }) => where === null || kind === 'person')
                .map(machineName),
              spoken(end - start, ways),
            ].join(' · ')}
          </span>
        </span>
      </label>
      {where}
    </li>
  );
}
