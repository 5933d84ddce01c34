import { useMemo } from 'react';
import { logRows } from '../../src/log';
import { CalibrateOffer } from '../calibrate/CalibrateOffer';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { goTo } from '../store/view';
import { useWords } from '../words';
import { LogTable } from './LogTable';
import './log.css';

/** What the shop learned: every closed run with what was planned and what it took. */
export function LogRoom() {
  const { log: words } = useWords();
  const ways = useWays();
  const closings = useShop(({ book }) => book.closing);
  const rows = useMemo(() => logRows(closings), [closings]);
  return (
    <>
      <div className="room-head">
        <h1>{words.title}</h1>
        {rows.length > 0 && <p className="quiet">{words.head(rows.length, ways)}</p>}
      </div>
      {rows.length === 0 ? (
        <section className="empty">
          <p>{words.empty}</p>
          <Button weight="primary" onPress={() => goTo('press')}>
            {words.toPress}
          </Button>
        </section>
      ) : (
        <>
          <CalibrateOffer />
          <LogTable rows={rows} />
        </>
      )}
    </>
  );
}
