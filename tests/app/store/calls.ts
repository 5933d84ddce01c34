/** A call that waits for its answer. */
export interface Call<Input, Answer> {
  readonly input: Input;
  readonly signal: AbortSignal;
  answer(answer: Answer): void;
  fail(error: unknown): void;
}

/** Calls of something that takes long, which a test answers or fails; a call that is stopped is rejected. */
export function waitingCalls<Input, Answer>() {
  const calls: Call<Input, Answer>[] = [];
  return {
    calls,
    call: (input: Input, signal: AbortSignal): Promise<Answer> =>
      new Promise((resolve, reject) => {
        calls.push({ input, signal, answer: resolve, fail: reject });
        if (signal.aborted) reject(signal.reason);
        signal.addEventListener('abort', () => reject(signal.reason));
      }),
  };
}

/** Lets all promises that are kept by now have their say. */
export async function settle(): Promise<void> {
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
}
