import { useMemo } from 'react';
import { type Job, tickedBy, ticksOf } from '../../src/pressing';
import { useShop } from '../store/shop';

/** Who ticked a job, by their initials; empty where nobody did, or said. */
export function useDoneBy(): (job: Job) => string {
  const ticks = useShop(({ book }) => book.tick);
  return useMemo(() => {
    const byRun = new Map<string, ReadonlyMap<string, string>>();
    const of = (run: Job['run']) => {
      const known = byRun.get(run.id) ?? tickedBy(ticksOf({ tick: ticks }, run.id));
      byRun.set(run.id, known);
      return known;
    };
    return ({ run, key }) => of(run).get(key) ?? '';
  }, [ticks]);
}
