import type { Checker } from '../../src/artwork/browser';
import { fetchPart } from '../offline/part';

/** A worker that looks at artwork, fetched when the first question is asked. */
export interface LateChecker {
  /** @throws {PartMissing} if it cannot be fetched, by the next question perhaps; an `AbortError` once it is closed */
  get(): Promise<Checker>;
  close(): void;
}

export function lateChecker(): LateChecker {
  let isClosed = false;
  let opened: Promise<Checker> | null = null;
  const open = async (): Promise<Checker> => {
    try {
      const { openChecker } = await fetchPart(() => import('../../src/artwork/browser'));
      return openChecker();
    } catch (error) {
      opened = null;
      throw error;
    }
  };
  return {
    async get() {
      opened ??= open();
      const checker = await opened;
      if (isClosed) throw new DOMException('closed', 'AbortError');
      return checker;
    },
    close() {
      isClosed = true;
      void opened?.then((checker) => checker.close()).catch(() => undefined);
    },
  };
}
