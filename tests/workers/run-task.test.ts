import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { closeWorker, runTask, type TaskWorker, taskWorker, WorkerFailed } from '../../src/workers/browser';
import { type FakeWorker, fakeWorkers, type Slow } from './fake-worker';

let fake = fakeWorkers();
let own: TaskWorker<Slow> = taskWorker(fake.start);

beforeEach(() => {
  fake = fakeWorkers();
  own = taskWorker<Slow>(fake.start);
});
afterEach(() => closeWorker(own));

const double = (
  number: number,
  options: { signal?: AbortSignal; onProgress?: (share: number) => void } = {},
) => runTask<Slow, number, number>(own, (remote, told) => remote.double(number, told), options);

/** Waits until the workers have been asked for so many things. */
const asked = (count: number) => vi.waitFor(() => expect(fake.asked).toHaveLength(count));

/** Whether a promise is still neither kept nor broken. */
const isPending = (promise: Promise<unknown>) =>
  Promise.race([
    promise.then(
      () => false,
      () => false,
    ),
    new Promise((resolve) => setTimeout(resolve, 5, true)),
  ]);

describe('a task in a worker', () => {
  it('is answered, by one worker for all', async () => {
    expect(fake.started).toHaveLength(0);
    for (const number of [3, 4]) {
      const answer = double(number);
      await asked(number - 2);
      fake.release();
      expect(await answer).toBe(2 * number);
    }
    expect(fake.started).toHaveLength(1);
  });

  it('throws what it throws in the worker, which goes on', async () => {
    await expect(runTask(own, (remote) => remote.fail())).rejects.toThrow('no such thing');
    const answer = double(5);
    await asked(1);
    fake.release();
    expect(await answer).toBe(10);
    expect(fake.started).toHaveLength(1);
  });

  it('tells its progress, and nothing once it is over', async () => {
    const shares: number[] = [];
    const stop = new AbortController();
    const answer = double(1, { signal: stop.signal, onProgress: (share) => shares.push(share) });
    await vi.waitFor(() => expect(shares).toEqual([0.5]));
    stop.abort();
    await expect(answer).rejects.toThrow();
    fake.release();
    await new Promise((resolve) => setTimeout(resolve, 10));
    expect(shares).toEqual([0.5]);
  });

  it.each<{ what: string; fail: (worker: FakeWorker) => void; why: WorkerFailed['why'] }>([
    { what: 'its file is missing', fail: (worker) => worker.goMissing(), why: 'missing' },
    { what: 'an error ends it', fail: (worker) => worker.break(), why: 'broken' },
    { what: 'its answer cannot be read', fail: (worker) => worker.garble(), why: 'broken' },
  ])('fails if $what, and the next one has a new worker', async ({ fail, why }) => {
    const failed = double(1);
    const next = double(2);
    await asked(1);
    const [worker] = fake.started;
    if (worker) fail(worker);
    await expect(failed).rejects.toMatchObject(new WorkerFailed(why));
    await asked(2);
    fake.release();
    fake.release();
    expect(await next).toBe(4);
    expect(fake.started.map(({ isEnded }) => isEnded)).toEqual([true, false]);
  });

  it('leaves a worker that failed between two tasks', async () => {
    const first = double(1);
    await asked(1);
    fake.release();
    await first;
    fake.started[0]?.break();
    const second = double(2);
    await asked(2);
    fake.release();
    expect(await second).toBe(4);
    expect(fake.started.map(({ isEnded }) => isEnded)).toEqual([true, false]);
  });

  it('fails where no worker can be started, and is tried again', async () => {
    const start = vi.fn(fake.start).mockImplementationOnce(() => {
      throw new Error('not allowed');
    });
    own = taskWorker<Slow>(start);
    await expect(double(1)).rejects.toThrow('not allowed');
    const again = double(2);
    await asked(1);
    fake.release();
    expect(await again).toBe(4);
  });
});

describe('a task that is stopped', () => {
  it('is not begun if it was stopped before', async () => {
    await expect(double(1, { signal: AbortSignal.abort('no more') })).rejects.toBe('no more');
    expect(fake.started).toHaveLength(0);
  });

  it('ends at once with its worker, and the next one has a new worker', async () => {
    const stop = new AbortController();
    const answer = double(1, { signal: stop.signal });
    await asked(1);
    stop.abort('no more');
    await expect(answer).rejects.toBe('no more');
    expect(fake.started[0]?.isEnded).toBe(true);
    const next = double(2);
    await asked(2);
    fake.release();
    fake.release();
    expect(await next).toBe(4);
    expect(fake.started).toHaveLength(2);
  });

  it('is over without harm if its signal comes after the answer', async () => {
    const stop = new AbortController();
    const answer = double(1, { signal: stop.signal });
    await asked(1);
    fake.release();
    await answer;
    stop.abort();
    await new Promise((resolve) => setTimeout(resolve, 5));
    expect(fake.started[0]?.isEnded).toBe(false);
  });

  it('leaves the task before it at work, if it waits', async () => {
    const stop = new AbortController();
    const first = double(1);
    const second = double(2, { signal: stop.signal });
    const third = double(3);
    await asked(1);
    stop.abort('no more');
    await expect(second).rejects.toBe('no more');
    expect(await isPending(first)).toBe(true);
    fake.release();
    expect(await first).toBe(2);
    await asked(2);
    fake.release();
    expect(await third).toBe(6);
    expect(fake.asked).toEqual([1, 3]);
    expect(fake.started).toHaveLength(1);
  });
});

describe('two tasks of a worker', () => {
  it('are done one after the other', async () => {
    const first = double(1);
    const second = double(2);
    await asked(1);
    expect(await isPending(second)).toBe(true);
    expect(fake.asked).toEqual([1]);
    fake.release();
    expect(await first).toBe(2);
    await asked(2);
    fake.release();
    expect(await second).toBe(4);
    expect(fake.started).toHaveLength(1);
  });

  it('both end when it is closed', async () => {
    const answers = [double(1), double(2)].map((answer) => answer.catch((error: unknown) => error));
    await asked(1);
    closeWorker(own);
    for (const error of await Promise.all(answers)) expect(error).toMatchObject({ name: 'AbortError' });
    expect(fake.started[0]?.isEnded).toBe(true);
    expect(fake.asked).toEqual([1]);
  });
});
