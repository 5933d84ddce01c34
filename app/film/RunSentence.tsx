import { type LaidRun, runFigures, wasteOver } from '../../src/layout';
import { um } from '../../src/units';
import { useWays } from '../store/selectors';
import { useWords } from '../words';
import { benchLength, filmLength, money, percent } from '../words/format';
import { useHeld } from './drag';
import { useShortest } from './useShortest';

/** The run as a person would say it, with the figures large; they follow a copy that is dragged. */
export function RunSentence({ run }: { run: LaidRun }) {
  const { film: words } = useWords();
  const ways = useWays();
  const held = useHeld((state) => state.held);
  const shown = held?.run ?? run;
  const shortest = useShortest();
  const { lengthUsed, waste, cost } = runFigures(shown);
  const left = filmLength(um(Math.max(0, run.film.lengthLeft - lengthUsed)), ways);
  const { spanMax } = run.film;
  return (
    <div className="run-sentence">
      {shown.copies.length === 0 ? (
        <p className="sentence">{words.nothingLaid}</p>
      ) : (
        <p className="sentence" data-testid="sentence">
          {words
            .sentence(filmLength(lengthUsed, ways), percent(waste, ways), money(cost, ways))
            .map(({ text, figure }) => (figure ? <strong key={text}>{text}</strong> : text))}
        </p>
      )}
      <p className="quiet small" title={words.gapsAreWaste}>
        {shown.copies.length > 0 && shortest !== null
          ? words.details(
              left,
              filmLength(shortest, ways),
              percent(Math.max(0, wasteOver(shown, shortest)), ways),
            )
          : words.leftOnRoll(left)}
      </p>
      {shown.spans === null && spanMax !== null && (
        <p className="care small">{words.uncuttable(benchLength(spanMax, ways))}</p>
      )}
      {held?.refusals[0] && <p className="error small">{words.refusedShort(held.refusals[0], ways)}</p>}
    </div>
  );
}
