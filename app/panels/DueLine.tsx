import { isDueAtPrint } from '../../src/upkeep';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { stateName, useCheckStates, usePastDate } from '../store/upkeep';
import { openDialog } from '../store/view';
import { useAllWords } from '../words';
import './due-line.css';

/** So many checks are named, so that the line stays one of two rows; the others are counted. */
const NAMED = 1;

/** What is due before a run is printed, in one line; it holds nothing up. */
export function DueLine() {
  const words = useAllWords();
  const ways = useWays();
  const states = useCheckStates();
  const isNew = useShop(({ book }) => Object.keys(book.upkeep).length === 0);
  const all = states.filter(({ standing }) => standing.kind !== 'done');
  // What the next print waits for is named first.
  const due = [...all.filter(isDueAtPrint), ...all.filter((state) => !isDueAtPrint(state))];
  const past = usePastDate();
  if (due.length === 0 && past.length === 0) return null;
  const names = due.slice(0, NAMED).map((state) => stateName(state, words));
  return (
    <div className="due-line small" data-testid="upkeep-due">
      <span>
        {due.length > 0 &&
          (isNew
            ? words.upkeep.lineNever
            : words.upkeep.line(names.join('; '), due.length - names.length, ways))}{' '}
        {past.length > 0 && (
          <span className="care">{words.upkeep.pastDate(past.map(({ name }) => name).join(', '))}</span>
        )}
      </span>
      <Button weight="plain" onPress={() => openDialog({ kind: 'upkeep' })}>
        {words.upkeep.open}
      </Button>
    </div>
  );
}
