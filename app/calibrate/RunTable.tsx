import type { Finding } from '../../src/costing/calibration';
import { edits } from '../../src/editing';
import { Check } from '../parts/Check';
import { useWays } from '../store/selectors';
import { act } from '../store/shop';
import { useAllWords } from '../words';
import { dueDay, wholePercent } from '../words/format';
import { amountText } from './figures';

/** Every run that was looked at, the latest first; any of them can be left out. */
export function RunTable({ finding }: { finding: Finding }) {
  const { calibrate: words } = useAllWords();
  const ways = useWays();
  const { quantity, points } = finding;
  const say = (amount: number) => amountText(quantity, amount, ways);
  const leaveOut = (run: (typeof points)[number]['run'], out: boolean) =>
    act(edits.leaveRunOut(quantity, run, out));
  return (
    <details className="runs-told">
      <summary>{words.runs}</summary>
      <p className="quiet small">{words.influenceHint}</p>
      <div className="runs-scroll">
        <table>
          <thead>
            <tr>
              {Object.values(words.runColumns).map((label) => (
                <th key={label} scope="col">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {points.toReversed().map(({ run, name, day, measured, told, pull, isMisfit, isLeftOut }) => (
              <tr key={run}>
                <th scope="row">{name}</th>
                <td>{dueDay(day, ways)}</td>
                <td>{say(measured)}</td>
                <td>{told === null ? '–' : say(told)}</td>
                <td className={isMisfit ? 'care' : ''}>{told === null ? '–' : say(measured - told)}</td>
                <td>{isLeftOut ? '–' : wholePercent(pull, ways)}</td>
                <td>
                  <Check
                    writes
                    label={words.takeIn(name)}
                    short={words.runColumns.takenIn}
                    checked={!isLeftOut}
                    onChange={(isIn) => leaveOut(run, !isIn)}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
