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
 * Milliseconds of processor time of the longest task on a page's own thread: what others take of a busy machine is left out.
 * @param trace of a browser, with the category `toplevel`
 */
export function longestTask(trace: Buffer): number {
  const { traceEvents } = JSON.parse(trace.toString('utf8')) as { traceEvents: TraceEvent[] };
  const mains = new Set(
    traceEvents
      .filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
      .map(({ pid, tid }) => `${pid} ${tid}`),
  );
  const tasks = traceEvents.filter(
    ({ name, ph, pid, tid }) => ph === 'X' && name.endsWith('RunTask') && mains.has(`${pid} ${tid}`),
  );
  return tasks.reduce((longest, { tdur = 0 }) => Math.max(longest, tdur), 0) / 1000;
}
