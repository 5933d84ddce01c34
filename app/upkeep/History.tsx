import { CsvButton } from '../panels/CsvButton';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import { airText } from './air-words';

/** So many notes are listed, the latest first; all are kept. */
const SHOWN = 100;

/** All that was noted: checks, what was taken back, readings of the room. */
export function History() {
  const { upkeep: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const { station } = settingsOrFirst(book);
  const checks = Object.values(book.upkeep)
    // A reading tells it already.
    .filter(({ check }) => check !== 'room')
    .map(({ id, at, by, name, done, note, failed }) => ({
      id: id as string,
      at,
      by,
      text: [
        failed
          ? `${name}: ${words.failedTold(failed, ways)}`
          : done
            ? name
            : `${name}: ${words.historyTakenBack}`,
        note,
      ]
        .filter(Boolean)
        .join(' · '),
    }));
  const readings = Object.values(book.reading).map((reading) => ({
    id: reading.id as string,
    at: reading.at,
    by: reading.by,
    text: `${words.reading}: ${airText(reading, station, ways)}`,
  }));
  const all = [...checks, ...readings].sort((a, b) => b.at.localeCompare(a.at));
  return (
    <details className="upkeep-more">
      <summary>{words.history}</summary>
      {all.length > 0 && (
        <div className="actions start">
          <CsvButton what="upkeep" />
        </div>
      )}
      {all.length === 0 && <p className="quiet">{words.nothingNoted}</p>}
      <ul className="small" data-testid="upkeep-history">
        {all.slice(0, SHOWN).map(({ id, at, by, text }) => (
          <li key={id}>
            {text} <span className="quiet">{words.lastDone(dayAndTime(at, ways), by)}</span>
          </li>
        ))}
      </ul>
      {all.length > SHOWN && <p className="quiet small">{words.older(all.length - SHOWN, ways)}</p>}
    </details>
  );
}
