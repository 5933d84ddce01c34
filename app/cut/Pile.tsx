import { tallyByOrder } from '../../src/cutting';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { useOrdersOf, useWays } from '../store/selectors';
import { useAllWords } from '../words';

/** What a pile must hold of each order, and what of it is cut. */
export function Pile({
  run,
  title,
  copies,
  out,
}: {
  run: LaidRun;
  title: string;
  copies: readonly LaidCopy[];
  out: readonly LaidCopy[];
}) {
  const { cut: words } = useAllWords();
  const ways = useWays();
  const orders = useOrdersOf(run);
  const cut = new Map(tallyByOrder(out).map(({ order, count }) => [order.id, count]));
  return (
    <section className="pile">
      <h2>{title}</h2>
      <ul>
        {tallyByOrder(copies).map(({ order: { id, code }, count }) => (
          <li key={id} data-whole={cut.get(id) === count}>
            {words.pileOf(code, cut.get(id) ?? 0, count, ways)}{' '}
            <span className="quiet small">{orders[id]?.name}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
