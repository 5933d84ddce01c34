import { useMemo, useState } from 'react';
import { type Finding, findRates, toldQuantities } from '../../src/costing/calibration';
import { printedOn } from '../../src/log';
import { type Printer, printerOf, type Quantity, quantities } from '../../src/model';
import { printerChoices } from '../panels/machine-name';
import { Button } from '../parts/Button';
import { Choice } from '../parts/Choice';
import { settingsOrFirst, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { Window } from '../windows/Window';
import { useAllWords } from '../words';
import { listed } from '../words/format';
import { Changes } from './Changes';
import { RateTable } from './RateTable';
import { ResidualPlot } from './ResidualPlot';
import { RunTable } from './RunTable';
import './calibrate.css';

/** What the log tells of one quantity at a time: its rates, how each run fits, and what was changed so far. */
export function CalibrateDialog() {
  const { calibrate: words, common, station: machines } = useAllWords();
  const { closing, leftOut, calibration, run, tick } = useShop((shop) => shop.book);
  const { station } = useShop(({ book }) => settingsOrFirst(book));
  const [chosen, setChosen] = useState<Printer['id']>(station.printers[0].id);
  const isOfPrinter = station.printers.length > 1;
  const [quantity, setQuantity] = useState<Quantity>(
    () => toldQuantities(Object.values(closing), Object.values(calibration))[0] ?? 'colour',
  );
  const finding = useMemo(() => {
    const of = quantity === 'printer' ? printerOf(station, { printer: chosen }).id : null;
    const on = printedOn({ run, tick }, station);
    // What was printed on several tells of none of them.
    const told = Object.values(closing).filter(({ id }) => of === null || on(id).every((own) => own === of));
    return findRates(told, quantity, Object.values(leftOut), Object.values(calibration), of);
  }, [closing, quantity, leftOut, calibration, run, tick, station, chosen]);
  return (
    <Window title={words.title} wide>
      <p className="quiet">{words.hint}</p>
      <div className="told-what">
        <Choice
          label={words.what}
          value={quantity}
          options={quantities.map((value) => ({ value, label: words.quantities[value] }))}
          onChange={setQuantity}
        />
        {isOfPrinter && quantity === 'printer' && (
          <Choice
            label={machines.printer}
            value={chosen}
            options={printerChoices(station)}
            onChange={setChosen}
          />
        )}
      </div>
      <Told finding={finding} />
      <Changes />
      <div className="actions">
        <Button onPress={() => openDialog(null)}>{common.close}</Button>
      </div>
    </Window>
  );
}

function Told({ finding }: { finding: Finding }) {
  const { calibrate: words } = useAllWords();
  const ways = useWays();
  const { rates, missing, apart, untold, points } = finding;
  const list = (names: readonly string[]) => listed(names, ways);
  return (
    <>
      {missing > 0 && <p>{words.missing(missing, ways)}</p>}
      {missing === 0 && rates.length === 0 && <p>{words.nothingTold}</p>}
      {rates.length > 0 && <RateTable finding={finding} />}
      {apart && (
        <p className="quiet small">
          {words.apart(list(apart.drivers.map((driver) => words.drivers[driver])), apart.reason)}
        </p>
      )}
      {untold.size > 0 && (
        <p className="quiet small">
          {words.notTold(list([...untold].map(([reason, count]) => words.untold[reason](count, ways))))}
        </p>
      )}
      {rates.length > 0 && <ResidualPlot finding={finding} />}
      {points.length > 0 && <RunTable finding={finding} />}
    </>
  );
}
