import type { LaidCopy, LaidRun } from '../layout';
import type { Printer, RunView, Station } from '../model';
import type { Span } from '../packing';
import type { Job, Worker } from './jobs';
import type { Chain, Due, ShelfLoad, Stint, Task, Use, Wait } from './schedule';

/** Where the tasks of a run are put down, each with the job that it is. */
export class Builder {
  readonly tasks: Task[] = [];
  readonly jobs: Job[] = [];
  readonly chains: Chain[] = [];
  readonly waits: Wait[] = [];
  /** What lies powdered until it is cured. */
  readonly powdered: ShelfLoad[] = [];
  readonly stints: Stint[] = [];
  readonly dues: Due[] = [];
  readonly run: Job['run'];

  constructor(run: Job['run']) {
    this.run = run;
  }

  add(
    job: Pick<Job, 'key' | 'kind'> & Partial<Job>,
    task: {
      duration: number;
      uses: readonly Use[];
      after: readonly (number | null)[];
      lag?: number;
      pauses?: boolean;
    },
  ): number {
    const { duration, uses, after, lag = 0, pauses = false } = task;
    const before = [...new Set(after)].filter((index) => index !== null);
    this.tasks.push({
      duration,
      uses: uses.filter(({ from, to }) => to > from),
      after: before.map((index) => ({ task: index, lag })),
      pauses,
      fixed: null,
    });
    this.jobs.push({
      run: this.run,
      spans: [],
      order: null,
      transfers: [],
      copies: [],
      parts: [],
      fabric: null,
      ...job,
    });
    return this.tasks.length - 1;
  }

  /** Lets a task begin no sooner than so long after the end of another; before it, where that is below 0. */
  startAfter(index: number, task: number, lag: number): void {
    const own = this.tasks[index];
    if (own) this.tasks[index] = { ...own, after: [...own.after, { task, lag }] };
  }
}

/** How long hands are at what takes so many seconds, with what rest and hitches add (common practice, no source). */
export const byHand = ({ allowance }: Pick<Station, 'allowance'>, seconds: number): number =>
  Math.round(seconds * (1 + allowance));

/** A whole degree is the step of a press's setting. */
export const degrees = (temperature: number): number => Math.round(temperature / 10);

/** What the work of a run is made from, and what it is put down in. */
export interface WorkSource {
  readonly view: RunView;
  readonly station: Station;
  /** The printer that the run's film is in. */
  readonly printer: Printer;
  readonly film: LaidRun['film'];
  readonly spans: readonly Span[];
  readonly bySpan: readonly (readonly LaidCopy[])[];
  /** What is ticked while each span is cut apart. */
  readonly cutParts: readonly (readonly string[])[];
  readonly isPressed: (copy: LaidCopy) => boolean;
  readonly build: Builder;
  readonly use: (
    worker: Worker,
    from: number,
    to: number,
    needs?: {
      /** Of a press, in whole degrees. */
      readonly setting?: number;
      /** Which of several may take it; any, unless told. */
      readonly units?: readonly number[] | null;
    },
  ) => Use;
}
