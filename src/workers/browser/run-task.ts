import { type ProxyMarked, proxy, type Remote, wrap } from 'comlink';
import { WorkerFailed } from './worker-failed';

/** A worker that does one task at a time. Its first task starts it; one that failed is started anew by the next task. */
export interface TaskWorker<Api> {
  readonly start: () => Worker;
  running: { readonly worker: Worker; readonly remote: Remote<Api> } | null;
  /** The tasks that are not over, the one at work first; each ends when it is aborted. */
  readonly tasks: Set<AbortController>;
  /** Over when all of them are. */
  idle: Promise<unknown>;
}

/** What a task calls of its worker, and whom the worker tells how far it is. */
type Task<Api, Answer, Progress> = (
  remote: Remote<Api>,
  told: ((progress: Progress) => void) & ProxyMarked,
) => Promise<Answer>;

interface Options<Progress> {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: Progress) => void;
}

/** @param start is called again for a new worker after a failure or a stop */
export const taskWorker = <Api>(start: () => Worker): TaskWorker<Api> => ({
  start,
  running: null,
  tasks: new Set(),
  idle: Promise.resolve(),
});

function end<Api>(own: TaskWorker<Api>): void {
  own.running?.worker.terminate();
  own.running = null;
}

function running<Api>(own: TaskWorker<Api>): Remote<Api> {
  if (!own.running) {
    const worker = own.start();
    const onFailure = (event: Event): void => {
      if (own.running?.worker !== worker) return;
      end(own);
      // HTML, "run a worker": a script that cannot be fetched is told by a plain event, an error at work by an ErrorEvent.
      const isMissing = event.type === 'error' && !('message' in event);
      const [atWork] = own.tasks;
      atWork?.abort(new WorkerFailed(isMissing ? 'missing' : 'broken'));
    };
    worker.addEventListener('error', onFailure);
    worker.addEventListener('messageerror', onFailure);
    own.running = { worker, remote: wrap<Api>(worker) };
  }
  return own.running.remote;
}

const aborted = (signal: AbortSignal): Promise<never> =>
  new Promise((_, reject) => {
    if (signal.aborted) reject(signal.reason);
    signal.addEventListener('abort', () => reject(signal.reason), { once: true });
  });

/**
 * Runs a task in a worker, after those that were given to it before.
 * @param signal ends the task at once, and the worker with it if it is at work
 * @param onProgress is told nothing any more once the task is over
 * @throws {WorkerFailed} if the worker fails; the signal's reason, if it is aborted; what the task throws
 */
export async function runTask<Api, Answer, Progress = never>(
  own: TaskWorker<Api>,
  task: Task<Api, Answer, Progress>,
  { signal, onProgress }: Options<Progress> = {},
): Promise<Answer> {
  signal?.throwIfAborted();
  const over = new AbortController();
  const stop = () => over.abort(signal?.reason);
  signal?.addEventListener('abort', stop);
  const told = proxy((progress: Progress) => {
    if (own.tasks.has(over)) onProgress?.(progress);
  });
  const atTurn = async (): Promise<Answer> => {
    over.signal.throwIfAborted();
    try {
      return await Promise.race([task(running(own), told), aborted(over.signal)]);
    } finally {
      // One that was stopped, and neither failed nor was closed, is started for the next task, which need not wait for it then.
      if (over.signal.aborted && own.running) {
        end(own);
        running(own);
      }
    }
  };
  own.tasks.add(over);
  const answer = own.idle.then(atTurn);
  own.idle = answer.catch(() => undefined);
  try {
    return await Promise.race([answer, aborted(over.signal)]);
  } finally {
    own.tasks.delete(over);
    signal?.removeEventListener('abort', stop);
  }
}

/** Ends a worker and all its tasks. */
export function closeWorker<Api>(own: TaskWorker<Api>): void {
  for (const task of own.tasks) task.abort(new DOMException('closed', 'AbortError'));
  end(own);
}

/** Runs a task in a worker of its own, which is ended with it: it may have taken much memory. */
export async function runAlone<Api, Answer, Progress = never>(
  start: () => Worker,
  task: Task<Api, Answer, Progress>,
  options?: Options<Progress>,
): Promise<Answer> {
  const own = taskWorker<Api>(start);
  try {
    return await runTask(own, task, options);
  } finally {
    closeWorker(own);
  }
}
