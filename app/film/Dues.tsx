import { memo } from 'react';
import type { LaidRun } from '../../src/layout';
import type { DayWork } from '../../src/pressing';
import { lateOrders } from '../panels/late-orders';
import { useBeyondPlan, useOrderNames, useWays } from '../store/selectors';
import type { DayState } from '../store/timeline';
import { useWords } from '../words';
import { listedUpTo, momentOf } from '../words/format';

/** So many orders are named; the others are counted. */
const NAMED = 3;

const ALL_PLANNED: DayWork['without'] = [];

/**
 * Which orders of a run are in a rush, when these are done, and which will be late: in one line that is there from the beginning, so that
 * nothing below moves when it becomes known.
 */
export const Dues = memo(function Dues({ run, day }: { run: LaidRun; day: DayState }) {
  const { film: words } = useWords();
  const ways = useWays();
  const nameOf = useOrderNames();
  const beyondOf = useBeyondPlan(day.kind === 'ready' ? day.day.plan.without : ALL_PLANNED);
  const told = run.copies.some(({ order }) => {
    const own = run.view.order[order.id];
    return own !== undefined && (own.due !== null || own.rush);
  });
  if (!told || day.kind === 'missing' || day.kind === 'failed' || day.kind === 'none') return null;
  if (day.kind === 'working') return <p className="quiet small dues">{words.duesWorking}</p>;
  const { timeline, origin } = day.day;
  const isHere = new Set<string>(run.copies.map(({ order }) => order.id));
  const orders = timeline.orders.filter(({ order }) => isHere.has(order.id));
  const rush = orders.flatMap(({ order, runs, end, late }) =>
    run.view.order[order.id]?.rush && late === 0
      ? [words.rushDone(`${order.code} ${nameOf(order, runs)}`, momentOf(origin + 1000 * end, ways))]
      : [],
  );
  const late = lateOrders(orders, nameOf, words, ways);
  const short = orders.filter(({ order }) => {
    const { waiting, elsewhere } = beyondOf(order.id);
    return waiting + elsewhere > 0;
  }).length;
  return (
    <p className="small dues" data-testid="dues">
      {late.length > 0 && (
        <span className="care">{words.late(listedUpTo(NAMED, late, words.moreOrders, ways))}</span>
      )}{' '}
      {rush.length > 0 && <span>{listedUpTo(NAMED, rush, words.moreOrders, ways)}.</span>}{' '}
      {late.length === 0 && (
        <span className="quiet">{short > 0 ? words.inTimeBut(short, ways) : words.allInTime}</span>
      )}
    </p>
  );
});
