/** Why nothing could be read or kept. */
export interface StorageProblem {
  readonly code: 'quota' | 'unavailable' | 'closed' | 'blocked' | 'overtaken' | 'unknown';
}

const codes: Readonly<Record<string, StorageProblem['code']>> = {
  QuotaExceededError: 'quota',
  InvalidStateError: 'closed',
  SecurityError: 'unavailable',
  NotFoundError: 'closed',
  TimeoutError: 'blocked',
  Overtaken: 'overtaken',
};

/** Tells what a rejected request means to the user. */
export function problemOf(error: unknown): StorageProblem {
  if (typeof indexedDB === 'undefined') return { code: 'unavailable' };
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  return { code: codes[name] ?? 'unknown' };
}
