import { useWays } from '../store/selectors';
import { useDay } from '../store/timeline';
import { useWords } from '../words';
import { listedUpTo, spoken } from '../words/format';

/** So many orders are named; the others are counted. */
const NAMED = 3;

/** Orders that will be late as the day is planned, by their names. */
export function LateOrders() {
  const { film: words } = useWords();
  const ways = useWays();
  const day = useDay('quick');
  if (day.kind !== 'ready') return null;
  const late = day.day.timeline.orders
    .filter((order) => order.late > 0)
    .map(({ order, late: by }) => `${order.code} ${order.name} ${words.lateBy(spoken(by, ways))}`);
  if (late.length === 0) return null;
  return <p className="care">{words.late(listedUpTo(NAMED, late, words.moreOrders, ways))}</p>;
}
