import { changesFor, type Finding, presentRate, type Rate } from '../../src/costing/calibration';
import { edits } from '../../src/editing';
import { Button } from '../parts/Button';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { useAllWords } from '../words';
import { rateText } from './figures';

/** Each rate as it is now and as these runs tell it, with its interval and a button where it is told well enough. */
export function RateTable({ finding }: { finding: Finding }) {
  const { calibrate: words } = useAllWords();
  const taken = finding.points.filter(({ isLeftOut }) => !isLeftOut).length;
  return (
    <table className="rates stacking">
      <thead>
        <tr>
          <th scope="col">{words.columns.rate}</th>
          <th scope="col">{words.columns.present}</th>
          <th scope="col">{words.columns.found}</th>
          <th scope="col">{words.columns.range}</th>
          <th scope="col">{words.columns.apply}</th>
        </tr>
      </thead>
      <tbody>
        {finding.rates.map((rate) => (
          <RateRow key={rate.driver} finding={finding} rate={rate} runs={taken} />
        ))}
      </tbody>
    </table>
  );
}

function RateRow({ finding, rate, runs }: { finding: Finding; rate: Rate; runs: number }) {
  const { calibrate: words } = useAllWords();
  const ways = useWays();
  const { closing } = useShop((shop) => shop.book);
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const { quantity, printer } = finding;
  const { driver, value, low, high, verdict } = rate;
  const say = (amount: number) => rateText(quantity, driver, amount, ways);
  const present = presentRate(finding, rate, settings);
  const changes = changesFor(finding, rate, settings, closing);
  const name = words.drivers[driver];
  // Film in an hour is more where seconds for a metre are less.
  const [from, to] = driver === 'length' ? [high, low] : [low, high];
  const isSet = changes.length > 0 && changes.every(({ before, after }) => before === after);
  const apply = () =>
    act(edits.calibrate({ quantity, driver, printer, found: { value, low, high }, runs, set: changes }));
  const remark = () => {
    if (verdict.kind === 'nothing') return words.nothing;
    if (changes.length === 0) return driver === 'run' ? words.belowCleanings : words.tooFar;
    if (verdict.kind === 'loose') return words.loose(verdict.more, ways);
    return present !== null && present >= low && present <= high ? words.fits : null;
  };
  const said = remark();
  return (
    <tr>
      <th scope="row">
        {name}
        {said !== null && <span className="quiet small">{said}</span>}
      </th>
      <td data-label={words.columns.present}>{present === null ? '–' : say(present)}</td>
      <td data-label={words.columns.found}>
        <b>{say(value)}</b>
      </td>
      <td data-label={words.columns.range}>{words.range(say(from), say(to))}</td>
      <td>
        {verdict.kind === 'told' && changes.length > 0 && (
          <Button writes aria-label={words.applyOf(name)} isDisabled={isSet} onPress={apply}>
            {words.apply}
          </Button>
        )}
      </td>
    </tr>
  );
}
