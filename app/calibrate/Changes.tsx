import { edits, isInForce } from '../../src/editing';
import { Button } from '../parts/Button';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { useAllWords } from '../words';
import { dayAndTime } from '../words/format';
import { settingText } from './figures';

/** What was set from the log, the latest first; what is still in force can be taken back. */
export function Changes() {
  const { calibrate: words } = useAllWords();
  const ways = useWays();
  const changes = useShop(({ book }) => book.calibration);
  const settings = useShop(({ book }) => settingsOrFirst(book));
  const list = Object.values(changes).sort((a, b) => b.at.localeCompare(a.at));
  return (
    <section aria-labelledby="changes-title">
      <h3 id="changes-title">{words.changes}</h3>
      {list.length === 0 && <p className="quiet">{words.noChanges}</p>}
      <ul className="changes" data-testid="changes">
        {list.map((change) => {
          const text = change.set
            .map(({ setting, before, after }) =>
              words.change(
                words.settings[setting],
                settingText(setting, before, ways),
                settingText(setting, after, ways),
              ),
            )
            .join('; ');
          return (
            <li key={change.id}>
              <span>
                {text}{' '}
                <span className="quiet small">
                  {words.changedAt(dayAndTime(change.at, ways), change.runs, ways)}
                </span>
              </span>
              {isInForce(change, settings) ? (
                <Button
                  writes
                  weight="plain"
                  aria-label={words.takeBackOf(text)}
                  onPress={() => act(edits.takeBackCalibration(change.id))}
                >
                  {words.takeBack}
                </Button>
              ) : (
                <span className="quiet small">
                  {change.takenBack === null
                    ? words.setSince
                    : words.takenBack(dayAndTime(change.takenBack, ways))}
                </span>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
