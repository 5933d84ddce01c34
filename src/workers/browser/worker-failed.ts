/** A worker that failed. `missing`: its file is not to be had, as after an update; `broken`: it ended at work. */
export class WorkerFailed extends Error {
  readonly why: 'missing' | 'broken';
  constructor(why: WorkerFailed['why']) {
    super(`the worker is ${why}`);
    this.why = why;
  }
}
