import type { Channel, Ground, Locks, Message } from '../../src/storage/writer';

type Grant = (lock: Lock | null) => unknown;

interface Request {
  readonly tab: FakeTab;
  readonly grant: Grant;
  readonly resolve: (value: unknown) => void;
  readonly reject: (error: unknown) => void;
}

/** One tab of a browser: what is called in it waits in a queue, which a halted tab does not work off. */
export interface FakeTab extends Ground {
  /** Halts the tab without a word, as a browser does with one in the background. */
  isHalted: boolean;
  readonly tasks: (() => void)[];
  readonly timers: Set<() => void>;
}

export interface Letter {
  readonly to: FakeTab;
  deliver(): void;
}

/**
 * The tabs of one browser: Web Locks with steal, queue, `ifAvailable` and signals as the specification has them
 * (W3C Web Locks API, from memory), and a channel whose messages wait until they are delivered, in any order, or are lost.
 */
export class FakeBrowser {
  readonly tabs: FakeTab[] = [];
  readonly letters: Letter[] = [];
  private readonly hearing = new Map<FakeTab, (message: Message) => void>();
  private held: Request | null = null;
  private queue: Request[] = [];

  open({ hasLocks = true, hasChannel = true } = {}): FakeTab {
    const timers = new Set<() => void>();
    const tab: FakeTab = {
      isHalted: false,
      tasks: [],
      timers,
      locks: hasLocks ? { request: this.requestIn(() => tab) } : undefined,
      channel: hasChannel ? this.channelIn(() => tab) : null,
      later(run) {
        timers.add(run);
        return () => timers.delete(run);
      },
    };
    this.tabs.push(tab);
    return tab;
  }

  /** The tab is gone at once, with all that it held and waited for. */
  kill(tab: FakeTab): void {
    this.tabs.splice(this.tabs.indexOf(tab), 1);
    this.hearing.delete(tab);
    tab.tasks.length = 0;
    tab.timers.clear();
    this.queue = this.queue.filter((request) => request.tab !== tab);
    if (this.held?.tab === tab) this.free(this.held);
  }

  /** Works off what waits in tabs that are not halted. */
  run(tab: FakeTab): void {
    while (!tab.isHalted && tab.tasks.length > 0) tab.tasks.shift()?.();
  }

  private channelIn(tabOf: () => FakeTab): Channel {
    return {
      tell: (message) => {
        for (const to of this.hearing.keys()) {
          if (to === tabOf()) continue;
          const deliver = () => to.tasks.push(() => this.hearing.get(to)?.(message));
          this.letters.push({ to, deliver });
        }
      },
      hear: (onMessage) => void this.hearing.set(tabOf(), onMessage),
      close: () => void this.hearing.delete(tabOf()),
    };
  }

  private requestIn(tabOf: () => FakeTab): Locks['request'] {
    const request = (_name: string, ...rest: [LockOptions, Grant] | [Grant]) =>
      new Promise<unknown>((resolve, reject) => {
        const [options, grant] = rest.length === 2 ? rest : [{}, rest[0]];
        const tab = tabOf();
        // What a tab that is gone still does is heard by nobody.
        if (!this.tabs.includes(tab)) return;
        const entry: Request = { tab, grant, resolve, reject };
        options.signal?.addEventListener('abort', () => {
          if (!this.queue.includes(entry)) return;
          this.queue = this.queue.filter((waiting) => waiting !== entry);
          tab.tasks.push(() => reject(new DOMException('aborted', 'AbortError')));
        });
        if (options.steal) {
          const robbed = this.held;
          this.held = null;
          if (robbed) robbed.tab.tasks.push(() => robbed.reject(new DOMException('stolen', 'AbortError')));
          this.hold(entry);
        } else if (options.ifAvailable && (this.held || this.queue.length > 0))
          tab.tasks.push(() => resolve(grant(null)));
        else {
          this.queue.push(entry);
          this.next();
        }
      });
    return request as Locks['request'];
  }

  private hold(request: Request): void {
    this.held = request;
    request.tab.tasks.push(() => {
      void Promise.resolve(request.grant({ name: 'book', mode: 'exclusive' })).then((value) => {
        request.resolve(value);
        this.free(request);
      });
    });
  }

  private free(request: Request): void {
    if (this.held !== request) return;
    this.held = null;
    this.next();
  }

  private next(): void {
    const first = this.held ? undefined : this.queue.shift();
    if (first) this.hold(first);
  }
}
