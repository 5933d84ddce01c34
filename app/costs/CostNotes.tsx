import type { RunCosts } from '../../src/costing/run';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';

/** Names told before the rest is counted. */
const NAMED = 4;

/** What was assumed, and what is missing from a run's costs. */
export function CostNotes({ costs }: { costs: RunCosts }) {
  const { costSheet: words } = useAllWords();
  const ways = useWays();
  const { run, use, kept } = costs;
  const nameOf = (id: string) => run.copies.find(({ transfer }) => transfer.id === id)?.transfer.name ?? '';
  const codeOf = (id: string) => run.copies.find(({ order }) => order.id === id)?.order.code ?? '';
  const assumed = use.transfers.filter((transfer) => transfer.assumed !== null);
  const names = assumed.slice(0, NAMED).map(({ id }) => nameOf(id));
  if (assumed.length > NAMED) names.push(words.more(assumed.length - NAMED, ways));
  const pressed = new Set(
    use.transfers.filter(({ seconds }) => seconds.pressing > 0).map(({ order }) => order),
  );
  const ours = use.orders.filter(({ id, supplied }) => !supplied && pressed.has(id));
  const bare = ours.filter(({ garments }) => garments.length === 0).map(({ id }) => codeOf(id));
  const unpriced = ours
    .filter(({ garments }) => garments.some(({ price, count }) => price === null && count > 0))
    .map(({ id }) => codeOf(id));
  return (
    <div className="cost-notes">
      {kept && <p className="quiet small">{words.kept}</p>}
      {assumed.length > 0 && <p className="care small">{words.assumed(names, assumed.length, ways)}</p>}
      {use.machines === null && <p className="care small">{words.noTimes}</p>}
      {bare.length > 0 && <p className="quiet small">{words.noGarments(bare)}</p>}
      {unpriced.length > 0 && <p className="care small">{words.unpriced(unpriced)}</p>}
    </div>
  );
}
