/** Handles values one after the other; of those that come while one is handled, the latest alone. */
export class Latest<Value> {
  private readonly handle: (value: Value) => Promise<void>;
  private waiting: { readonly value: Value } | null = null;
  private atWork: Promise<void> | null = null;

  constructor(handle: (value: Value) => Promise<void>) {
    this.handle = handle;
  }

  give(value: Value): void {
    this.waiting = { value };
    this.atWork ??= Promise.resolve().then(() => this.work());
  }

  /** Until all that was given is handled, or left for what came later. */
  async rest(): Promise<void> {
    await this.atWork;
  }

  private async work(): Promise<void> {
    try {
      for (let next = this.waiting; next; next = this.waiting) {
        this.waiting = null;
        await this.handle(next.value);
      }
    } finally {
      this.atWork = null;
    }
  }
}
