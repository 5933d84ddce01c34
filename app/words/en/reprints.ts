import type { Run } from '../../../src/model';
import { counted, type Ways, whole } from '../format';
import { copies } from './counts';

/** Copies that are printed again. */
export const reprints = {
  title: 'Reprints that wait',
  hint: 'They come with the next layout, or join a span that is not printed yet, where it has room.',
  join: (span: number, run: string, ways: Ways) => `Join span ${whole(span + 1, ways)} of ${run}`,
  joinState: {
    draft: 'draft',
    locked: 'sent to print: its rest becomes a draft again, to be locked and sent anew',
  } satisfies Record<Extract<Run['state'], 'draft' | 'locked'>, string>,
  noRun: 'No run has an open span. One that was sent whole lies in its printer as it is.',
  joined: (count: number, spans: readonly number[], run: string, ways: Ways) =>
    `${copies(count, ways)} joined ${spans.length > 1 ? 'spans' : 'span'} ${spans.map((span) => whole(span + 1, ways)).join(' + ')} of ${run}.`,
  lockAgain: (run: string) =>
    `${run} is a draft again but for what is printed. Lock it and send the rest anew.`,
  noRoom: (run: string) =>
    `${run} has no room for them on the film that it takes. They wait for the next layout.`,
  /** On paper, beside a transfer: how many of its copies are printed again. */
  onCard: (count: number, of: number, ways: Ways) =>
    of === 1 ? 'reprint' : counted(count, 'reprint', 'reprints', ways),
};
