import { tallyByOrder } from '../../src/cutting';
import type { LaidCopy } from '../../src/layout';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';

/** What a pile must hold of each order, and what of it is cut. */
export function Pile({
  title,
  copies,
  out,
}: {
  title: string;
  copies: readonly LaidCopy[];
  out: readonly LaidCopy[];
}) {
  const { cut: words } = useAllWords();
  const ways = useWays();
  const cut = new Map(tallyByOrder(out).map(({ order, count }) => [order.id, count]));
  return (
    <section className="pile">
      <h2>{title}</h2>
      <ul>
        {tallyByOrder(copies).map(({ order: { id, code, name }, count }) => (
          <li key={id} data-whole={cut.get(id) === count}>
            {words.pileOf(code, cut.get(id) ?? 0, count, ways)} <span className="quiet small">{name}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
