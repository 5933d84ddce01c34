import { useWays } from '../store/selectors';
import { usePastDate } from '../store/upkeep';
import { useAllWords } from '../words';
import { calendarDay } from '../words/format';

/** Film, ink and powder that are past the date on their box. */
export function PastDates() {
  const { upkeep: words } = useAllWords();
  const ways = useWays();
  const past = usePastDate();
  if (past.length === 0) return null;
  return (
    <section aria-labelledby="upkeep-dates-title">
      <h3 id="upkeep-dates-title">{words.dates}</h3>
      <ul>
        {past.map(({ id, name, lot, bestBefore }) => (
          <li key={id} className="care">
            {words.pastSince(name, lot, calendarDay(bestBefore, ways))}
          </li>
        ))}
      </ul>
      <p className="quiet small">{words.datesHint}</p>
    </section>
  );
}
