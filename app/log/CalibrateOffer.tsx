import { useDeferredValue, useMemo } from 'react';
import { FEWEST_RUNS, toldQuantities } from '../../src/costing/calibration';
import type { Book } from '../../src/model';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useAllWords } from '../words';
import { listed } from '../words/format';
import './log.css';

/** What closed runs tell enough of, and the way to look at it; or how many more it takes. */
export function CalibrateOffer() {
  const { calibrate: words } = useAllWords();
  const ways = useWays();
  // Fitting some thousand runs takes a moment: the room is drawn before it.
  const book = useDeferredValue<Book | null>(
    useShop((shop) => shop.book),
    null,
  );
  const closing = book?.closing;
  const calibration = book?.calibration;
  const told = useMemo(
    () => closing && calibration && toldQuantities(Object.values(closing), Object.values(calibration)),
    [closing, calibration],
  );
  const names = told?.map((quantity) => words.quantities[quantity]) ?? [];
  return (
    <div className="calibrate-offer" data-testid="calibrate-offer">
      <p className="quiet">
        {names.length > 0 && words.offer(listed(names, ways))}
        {told?.length === 0 && words.noOffer(FEWEST_RUNS, ways)}
      </p>
      <Button onPress={() => openDialog({ kind: 'calibrate' })}>{words.open}</Button>
    </div>
  );
}
