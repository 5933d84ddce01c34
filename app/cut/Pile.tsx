import { tallyByOrder } from '../../src/cutting';
import type { LaidCopy } from '../../src/layout';
import { useWays } from '../store/selectors';
import { useWords } from '../words';

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
  const { cut: words } = useWords();
  const ways = useWays();
  const cut = new Map(tallyByOrder(out).map(({ code, count }) => [code, count]));
  return (
    <section className="pile">
      <h2>{title}</h2>
      <ul>
        {tallyByOrder(copies).map(({ code, count }) => (
          <li key={code} data-whole={cut.get(code) === count}>
            {words.pileOf(code, cut.get(code) ?? 0, count, ways)}
          </li>
        ))}
      </ul>
    </section>
  );
}
