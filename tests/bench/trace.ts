interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of a task, in microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/**
 * Milliseconds of processor time of each task, by thread, on threads of a name: what others take of a busy machine is left out.
 * @param trace of a browser, with the category `toplevel`
 */
function tasksOf(trace: Buffer, thread: string): number[][] {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { traceEvents: TraceEvent[] };
  const tasks = new Map<string, number[]>();
  for (const { name, args, pid, tid } of traceEvents) {
    if (name === 'thread_name' && args?.name === thread) tasks.set(`${pid} ${tid}`, []);
  }
  for (const { name, ph, pid, tid, tdur = 0 } of traceEvents) {
    if (ph === 'X' && name.endsWith('RunTask')) tasks.get(`${pid} ${tid}`)?.push(tdur / 1000);
  }
  return [...tasks.values()];
}

/** The longest task on a page's own thread. */
export const longestTask = (trace: Buffer): number =>
  tasksOf(trace, 'CrRendererMain')
    .flat()
    .reduce((longest, task) => Math.max(longest, task), 0);

/** What the busiest worker took in all. */
export const busiestWorker = (trace: Buffer): number =>
  Math.max(
    0,
    ...tasksOf(trace, 'DedicatedWorker thread').map((tasks) => tasks.reduce((sum, task) => sum + task, 0)),
  );
