import { expose } from 'comlink';

/** A worker in the same thread: its messages go through a channel, as a worker's do, and it fails when it is told to. */
export class FakeWorker extends EventTarget implements Worker {
  readonly onmessage = null;
  readonly onmessageerror = null;
  readonly onerror = null;
  isEnded = false;
  readonly #here: MessagePort;

  constructor(api: object) {
    super();
    const { port1, port2 } = new MessageChannel();
    this.#here = port1;
    expose(api, port2);
    port1.addEventListener('message', ({ data }) => {
      if (!this.isEnded) this.dispatchEvent(new MessageEvent('message', { data }));
    });
    port1.start();
  }
  postMessage(message: unknown, transfer?: Transferable[] | StructuredSerializeOptions): void {
    this.#here.postMessage(message, Array.isArray(transfer) ? transfer : []);
  }
  terminate(): void {
    this.isEnded = true;
    this.#here.close();
  }
  /** Its file is not there. */
  goMissing(): void {
    this.dispatchEvent(new Event('error'));
  }
  /** An error that nothing catches. */
  break(): void {
    this.dispatchEvent(Object.assign(new Event('error'), { message: 'out of memory' }));
  }
  /** An answer that cannot be read. */
  garble(): void {
    this.dispatchEvent(new Event('messageerror'));
  }
}

/** What a fake worker does: it tells its progress, then answers when it is let. */
export interface Slow {
  double(number: number, told: (share: number) => void): Promise<number>;
  fail(): Promise<never>;
}

/** Starts fake workers that each wait for `release`. */
export function fakeWorkers() {
  const started: FakeWorker[] = [];
  const waiting: (() => void)[] = [];
  const asked: number[] = [];
  const api: Slow = {
    async double(number, told) {
      asked.push(number);
      told(0.5);
      await new Promise<void>((resolve) => waiting.push(resolve));
      told(1);
      return 2 * number;
    },
    async fail() {
      throw new RangeError('no such thing');
    },
  };
  return {
    started,
    /** What was asked of all of them, in turn. */
    asked,
    start: () => {
      const worker = new FakeWorker(api);
      started.push(worker);
      return worker;
    },
    /** Lets the task at work answer. */
    release: () => waiting.shift()?.(),
  };
}
