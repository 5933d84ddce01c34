import { useMemo } from 'react';
import { type LogRow, spoiledByReason } from '../../src/log';
import { useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { percent, whole } from '../words/format';
import { ChartPart } from './ChartPart';

/** Reasons that are drawn; the table has them all. */
const DRAWN = 8;

/** Copies that came to nothing, by reason: bars with their figures beside them. */
export function SpoiledChart({ rows }: { rows: readonly LogRow[] }) {
  const { log: words, spoil } = useAllWords();
  const ways = useWays();
  const reasons = useMemo(() => spoiledByReason(rows), [rows]);
  const all = rows.reduce((sum, { closing }) => sum + closing.work.copies, 0);
  const spoiled = reasons.reduce((sum, { copies }) => sum + copies, 0);
  const nameOf = ({ reason, stage }: (typeof reasons)[number]) =>
    words.reasonAt(reason === '' ? words.spoiledFilm : reason, spoil.stages[stage]);
  const [most] = reasons;
  const told = most
    ? words.spoiledTold(spoiled, percent(all > 0 ? spoiled / all : 0, ways), nameOf(most), most.copies, ways)
    : words.spoiledNone;
  return (
    <ChartPart
      title={words.spoiledTitle}
      told={told}
      rows={reasons}
      keyOf={(reason) => nameOf(reason)}
      columns={[
        { key: 'reason', label: words.reason, cell: nameOf },
        { key: 'copies', label: words.copies, figure: true, cell: ({ copies }) => whole(copies, ways) },
        { key: 'runs', label: words.runs, figure: true, cell: ({ runs }) => whole(runs, ways) },
      ]}
    >
      {most && (
        <div className="bars" aria-hidden="true">
          {reasons.slice(0, DRAWN).map((reason) => (
            <div key={nameOf(reason)} className="bar-row">
              <span>{nameOf(reason)}</span>
              <span className="bar-track">
                <span className="bar-fill" style={{ width: `${(100 * reason.copies) / most.copies}%` }} />
                <b>{whole(reason.copies, ways)}</b>
              </span>
            </div>
          ))}
        </div>
      )}
    </ChartPart>
  );
}
