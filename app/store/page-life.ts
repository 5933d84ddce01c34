import type { SharedBook } from '../../src/storage';

/**
 * Tells a book what the browser does with its page: a tab that is halted must not be waited for by the others, and
 * one that is looked at again may have missed a word. Until the returned function is called.
 */
export function followPage({
  pause,
  resume,
  look,
}: Pick<SharedBook, 'pause' | 'resume' | 'look'>): () => void {
  const stopped = new AbortController();
  const { signal } = stopped;
  document.addEventListener('freeze', pause, { signal });
  document.addEventListener('resume', resume, { signal });
  document.addEventListener('visibilitychange', look, { signal });
  return () => stopped.abort();
}
