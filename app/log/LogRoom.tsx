import { useDeferredValue, useMemo } from 'react';
import { type LogRow, logRows } from '../../src/log';
import { CsvButton } from '../panels/CsvButton';
import { Button } from '../parts/Button';
import { Empty } from '../parts/Empty';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { goTo } from '../store/view';
import { useAllWords } from '../words';
import { AirChart, LotPart } from './AirChart';
import { CalibrateOffer } from './CalibrateOffer';
import { LogTable } from './LogTable';
import { PlannedChart } from './PlannedChart';
import { SpoiledChart } from './SpoiledChart';
import { WasteChart } from './WasteChart';
import { WeekChart } from './WeekChart';
import './log.css';

const none: readonly LogRow[] = [];

/** What the shop learned: every closed run with what was planned and what it took, and how that develops. */
export function LogRoom() {
  const { log: words } = useAllWords();
  const ways = useWays();
  const closings = useShop(({ book }) => book.closing);
  const rows = useMemo(() => logRows(closings), [closings]);
  // What lies below the first screen is drawn after it.
  const below = useDeferredValue(rows, none);
  return (
    <>
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          {rows.length > 0 && <p className="quiet">{words.head(rows.length, ways)}</p>}
        </div>
        {rows.length > 0 && (
          <div className="actions">
            <CsvButton what="log" />
          </div>
        )}
      </div>
      {rows.length === 0 && (
        <Empty>
          <p>{words.empty}</p>
          <Button weight="primary" onPress={() => goTo('press')}>
            {words.toPress}
          </Button>
        </Empty>
      )}
      {rows.length > 0 && <CalibrateOffer />}
      {rows.length === 1 && <p>{words.one}</p>}
      {rows.length > 1 && (
        <div className="log-charts">
          <WasteChart rows={rows} />
          <WeekChart rows={rows} />
          {below.length > 1 && (
            <>
              <SpoiledChart rows={below} />
              <PlannedChart rows={below} />
              <AirChart rows={below} />
              <LotPart rows={below} />
            </>
          )}
        </div>
      )}
      {below.length > 0 && <LogTable rows={below} />}
    </>
  );
}
