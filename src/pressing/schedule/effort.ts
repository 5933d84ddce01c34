import type { ScheduleProblem } from './problem';

/** Tasks of a busy day. */
const BUSY = 600;

/**
 * How many sequences are tried of a problem: as many as are wished of a busy day, of a larger one as many fewer as each takes longer.
 * @param wished at least 1
 */
export const sequencesFor = ({ tasks }: Pick<ScheduleProblem, 'tasks'>, wished: number): number =>
  tasks.length <= BUSY ? wished : Math.max(1, Math.floor((wished * BUSY) / tasks.length));
