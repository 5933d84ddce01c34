import type { LogRow } from '../../src/log';
import { useWays } from '../store/selectors';
import { useWords } from '../words';
import { dueDay, filmLength, inkVolume, percent, powderMass, spoken, whole } from '../words/format';

/** Closed runs, the latest first. */
export function LogTable({ rows }: { rows: readonly LogRow[] }) {
  const { log: words } = useWords();
  const ways = useWays();
  const told = (text: string | null) => text ?? words.notMeasured;
  return (
    <section aria-labelledby="closed-runs">
      <h2 id="closed-runs">{words.table}</h2>
      <table className="log-table">
        <thead>
          <tr>
            {[
              words.run,
              words.day,
              words.film,
              words.waste,
              words.colour,
              words.white,
              words.powder,
              words.minutes,
              words.spoiled,
            ].map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ closing, waste, spoiled }) => {
            const { actual } = closing;
            return (
              <tr key={closing.id}>
                <th scope="row">{closing.name}</th>
                <td>{dueDay(closing.day, ways)}</td>
                <td>{filmLength(actual.film, ways)}</td>
                <td>{percent(waste, ways)}</td>
                <td>{told(actual.colour === null ? null : inkVolume(actual.colour, ways))}</td>
                <td>{told(actual.white === null ? null : inkVolume(actual.white, ways))}</td>
                <td>{told(actual.powder === null ? null : powderMass(actual.powder, ways))}</td>
                <td>{told(actual.time.hands === null ? null : spoken(actual.time.hands, ways))}</td>
                <td>{spoiled === 0 ? words.none : whole(spoiled, ways)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}
