import type { LaidRun } from '../../src/layout';
import type { Beyond } from '../../src/model';
import { printerFor, wetWhenWhole } from '../../src/pressing';
import { lateOrders } from '../panels/late-orders';
import { machineName } from '../panels/machine-name';
import { TooLargeNotes } from '../panels/TooLargeNotes';
import { useMore } from '../panels/useMore';
import { OrderCode } from '../parts/OrderCode';
import { stationOf, useBeyondPlan, useOrderNames, useWays } from '../store/selectors';
import type { Day } from '../store/timeline';
import { useAllWords } from '../words';
import { dayAndTime, lateness, momentOf, spoken, timeAndDay } from '../words/format';

/** When all is bagged, what holds it up, and what would go wrong. */
export function DayFacts({ run, day }: { run: LaidRun; day: Day }) {
  const { press: words, film } = useAllWords();
  const ways = useWays();
  const nameOf = useOrderNames();
  const { timeline, plan, origin } = day;
  const { end, least, bottleneck, overWet, overPowdered, wetOverClosing, changes } = timeline;
  const station = stationOf(run);
  const wet = wetWhenWhole(run, station);
  const isHeld = wet !== null && wet > station.wetLimit;
  const over = spoken(end - least, ways);
  const late = lateOrders(timeline.orders, nameOf, film, ways);
  return (
    <div className="done-by">
      <p className="sentence" data-testid="done-by">
        {words
          .sentence(momentOf(origin + 1000 * end, ways), timeline.runs.length, ways)
          .map(({ text, figure }) => (figure ? <strong key={text}>{text}</strong> : text))}
      </p>
      <p className="quiet small">
        {words.bottleneck(
          bottleneck,
          bottleneck.kind === 'worker' ? spoken(bottleneck.busy, ways) : '',
          bottleneck.kind === 'worker' && bottleneck.machine ? machineName(bottleneck.machine) : null,
        )}{' '}
        {end <= least ? words.proven : words.bound(momentOf(origin + 1000 * least, ways), over)}{' '}
        {words.changes(changes, ways)}
      </p>
      {late.length > 0 && <p className="care">{late.join(', ')}</p>}
      {isHeld && (
        <p className="care">{words.liesWet(run.name, spoken(wet, ways), spoken(station.wetLimit, ways))}</p>
      )}
      {wetOverClosing !== null && (
        <p className="care">{words.wetOverClosing(momentOf(origin + 1000 * wetOverClosing, ways))}</p>
      )}
      {overWet > 0 && wetOverClosing === null && (
        <p className="care">{words.tooWet(spoken(overWet, ways))}</p>
      )}
      {overPowdered > 0 && <p className="care">{words.tooLongPowdered(spoken(overPowdered, ways))}</p>}
      {printerFor(run, station).sends === null && run.film.kind === 'roll' && (
        <p className="quiet small">{words.askSends}</p>
      )}
      {plan.without
        .filter((other) => other.run.id !== run.id)
        .map((other) => (
          <p key={other.run.id} className="care small">
            {words.notPlanned(other.run.name)}
          </p>
        ))}
      <TooLargeNotes tooLarge={plan.work.tooLarge.filter((large) => large.run.id === run.id)} />
    </div>
  );
}

/** What of an order is not in the bag by then. */
function MissingCopies({ beyond }: { beyond: Beyond }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  if (beyond.waiting + beyond.elsewhere === 0) return null;
  return <span className="care"> {words.beyond(beyond, ways)}</span>;
}

/** When each order is bagged, against when it is due. */
export function OrderTimes({ day }: { day: Day }) {
  const { press: words, film } = useAllWords();
  const ways = useWays();
  const isSeveral = day.timeline.runs.length > 1;
  const nameOf = useOrderNames();
  const beyondOf = useBeyondPlan(day.plan.without);
  const { orders } = day.timeline;
  const { shown, more } = useMore(orders.length);
  return (
    <section aria-labelledby="times-title">
      <h2 id="times-title">{words.orders}</h2>
      <table className="times">
        <thead>
          <tr>
            <th scope="col">{words.orders}</th>
            {isSeveral && <th scope="col">{words.inRuns}</th>}
            <th scope="col">{words.orderDone}</th>
            <th scope="col">{words.due}</th>
          </tr>
        </thead>
        <tbody>
          {orders.slice(0, shown).map(({ order, runs, end, due, late }) => {
            return (
              <tr key={order.id}>
                <th scope="row">
                  <span className="named">
                    <OrderCode code={order.code} tint={order.tint} /> {nameOf(order, runs)}
                  </span>
                </th>
                {isSeveral && <td>{runs.map(({ name }) => name).join(', ')}</td>}
                <td>
                  {timeAndDay(day.origin + 1000 * end, ways)}
                  <MissingCopies beyond={beyondOf(order.id)} />
                </td>
                <td>
                  {due === null
                    ? words.noDue
                    : dayAndTime(new Date(day.origin + 1000 * due).toISOString(), ways)}
                  {late > 0 && <span className="care"> · {film.lateBy(lateness(late, ways))}</span>}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {more}
    </section>
  );
}
