import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import { hearOfNewer, takeNewest, useUpdate } from '../../../app/offline/update';

/** A service worker's registration, as far as the page asks it. */
class FakeRegistration extends EventTarget {
  active: FakeWorker | null = null;
  waiting: FakeWorker | null = null;
  installing: FakeWorker | null = null;
  update = vi.fn(async () => undefined);
}

class FakeWorker extends EventTarget {
  readonly heard: unknown[] = [];
  private readonly answer: () => void;
  constructor(answer: () => void = () => undefined) {
    super();
    this.answer = answer;
  }
  postMessage(message: unknown): void {
    this.heard.push(message);
    this.answer();
  }
}

const container = new (class extends EventTarget {
  registration: FakeRegistration | undefined = new FakeRegistration();
  getRegistration = async () => this.registration;
})();
const takesOver = () => container.dispatchEvent(new Event('controllerchange'));

beforeEach(() => {
  container.registration = new FakeRegistration();
  useUpdate.setState({ newer: 'none' });
  vi.stubGlobal('navigator', { serviceWorker: container });
});
afterEach(() => vi.unstubAllGlobals());

/** A version is found on the host, and is fetched whole or not. */
function install(registration: FakeRegistration, isWhole: boolean): void {
  const worker = new FakeWorker();
  registration.installing = worker;
  registration.dispatchEvent(new Event('updatefound'));
  registration.installing = null;
  if (isWhole) registration.waiting = worker;
  worker.dispatchEvent(new Event('statechange'));
}

const hear = (registration: FakeRegistration): void =>
  hearOfNewer(registration as unknown as ServiceWorkerRegistration);

it('a newer version is heard of after others that could not be had whole', () => {
  const registration = new FakeRegistration();
  registration.active = new FakeWorker();
  hear(registration);
  for (let failed = 0; failed < 3; failed += 1) install(registration, false);
  expect(useUpdate.getState().newer).toBe('none');
  install(registration, true);
  expect(useUpdate.getState().newer).toBe('ready');
});

it('a newer version that waits already is heard of', () => {
  const registration = new FakeRegistration();
  Object.assign(registration, { active: new FakeWorker(), waiting: new FakeWorker() });
  hear(registration);
  expect(useUpdate.getState().newer).toBe('ready');
});

it('the first version of all is no newer one', () => {
  const registration = new FakeRegistration();
  hear(registration);
  install(registration, true);
  expect(useUpdate.getState().newer).toBe('none');
});

it('a version that waits is told to take over, and has done so when the page is loaded', async () => {
  let isTaken = false;
  const waiting = new FakeWorker(() =>
    setTimeout(() => {
      isTaken = true;
      takesOver();
    }, 5),
  );
  Object.assign(container.registration ?? {}, { waiting });
  await takeNewest();
  expect(waiting.heard).toEqual([{ type: 'SKIP_WAITING' }]);
  expect(isTaken).toBe(true);
});

it('a version that the host has by now is fetched first', async () => {
  const registration = container.registration ?? new FakeRegistration();
  const worker = new FakeWorker(takesOver);
  registration.update.mockImplementation(async () => {
    registration.installing = worker;
    setTimeout(() => {
      Object.assign(registration, { installing: null, waiting: worker });
      worker.dispatchEvent(new Event('statechange'));
    });
    return undefined;
  });
  await takeNewest();
  expect(worker.heard).toEqual([{ type: 'SKIP_WAITING' }]);
});

it('the host is not asked where another tab has loaded the newer version already', async () => {
  useUpdate.setState({ newer: 'elsewhere' });
  await takeNewest();
  expect(container.registration?.update).not.toHaveBeenCalled();
});

it.each<[string, () => void]>([
  ['there is none', () => undefined],
  ['there is no service worker', () => vi.stubGlobal('navigator', {})],
  ['none is registered', () => Object.assign(container, { registration: undefined })],
  [
    'there is no way to the host',
    () => container.registration?.update.mockRejectedValue(new TypeError('Failed to fetch')),
  ],
])('the page is loaded as it is where %s', async (_, prepare) => {
  prepare();
  await expect(takeNewest()).resolves.toBeUndefined();
});

it('a version that does not take over is not waited for longer than some seconds', async () => {
  vi.useFakeTimers();
  Object.assign(container.registration ?? {}, { waiting: new FakeWorker() });
  const done = vi.fn();
  const taking = takeNewest().then(done);
  await vi.advanceTimersByTimeAsync(7000);
  expect(done).not.toHaveBeenCalled();
  await vi.advanceTimersByTimeAsync(2000);
  expect(done).toHaveBeenCalled();
  await taking;
  vi.useRealTimers();
});
