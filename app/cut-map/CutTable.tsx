import { copiesWithin, knifeCuts, runSpans } from '../../src/cutting';
import type { LaidRun } from '../../src/layout';
import type { Micrometres } from '../../src/units';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { onRulers, whole } from '../words/format';

/** The cuts of the map as a table, for a phone in the hand and for screen readers. */
export function CutTable({ run }: { run: LaidRun }) {
  const { cutMap } = useAllWords();
  const ways = useWays();
  const words = cutMap.cuts;
  const spans = runSpans(run);
  const cuts = knifeCuts(run);
  if (cuts.length === 0) return null;
  const both = (length: Micrometres) => words.both(...onRulers(length, ways));
  return (
    <table className="cuts">
      <caption>{words.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{words.cut}</th>
          <th scope="col">{words.fromPrevious}</th>
          <th scope="col">{words.fromStart}</th>
          <th scope="col">{words.copies}</th>
        </tr>
      </thead>
      <tbody>
        {cuts.map((cut, index) => (
          <tr key={cut.number}>
            <th scope="row">{whole(cut.number, ways)}</th>
            <td>{both(cut.fromPrevious)}</td>
            <td>{both(cut.fromStart)}</td>
            <td>{spans[index] && whole(copiesWithin(run.copies, spans[index]).length, ways)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
