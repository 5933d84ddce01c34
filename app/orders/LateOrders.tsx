import { lateOrders } from '../panels/late-orders';
import { useOrderNames, useWays } from '../store/selectors';
import { useDay } from '../store/timeline';
import { useWords } from '../words';
import { listedUpTo } from '../words/format';

/** So many orders are named; the others are counted. */
const NAMED = 3;

/** Orders that will be late as the day is planned, by their names. */
export function LateOrders() {
  const { film: words } = useWords();
  const ways = useWays();
  const nameOf = useOrderNames();
  const day = useDay('quick');
  if (day.kind !== 'ready') return null;
  const late = lateOrders(day.day.timeline.orders, nameOf, words, ways);
  if (late.length === 0) return null;
  return <p className="care">{words.late(listedUpTo(NAMED, late, words.moreOrders, ways))}</p>;
}
