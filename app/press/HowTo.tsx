import type { LaidCopy, LaidRun } from '../../src/layout';
import { cautionsFor, cureRecipe, fabricsOn, pressRecipe } from '../../src/pressing';
import { useMore } from '../panels/useMore';
import { OrderCode } from '../parts/OrderCode';
import { stationOf, useWays } from '../store/selectors';
import { useAllWords } from '../words';
import { bothDegrees, rulerLength, spoken } from '../words/format';
import { fabricName } from './recipe-line';

/** How this run is cured and pressed: a line a fabric, its cautions, and how a cure should look. */
export function HowTo({ run }: { run: LaidRun }) {
  const { press: words } = useAllWords();
  const ways = useWays();
  const { view } = run;
  const { temperature: unit, curer } = stationOf(run);
  const cure = cureRecipe(view, curer);
  const { temperature, seconds, clear } = cure.values;
  return (
    <section className="how-to" aria-labelledby="how-title">
      <h2 id="how-title">{words.curing}</h2>
      <p>
        <b>
          {words.cureLine(
            bothDegrees(temperature, unit, ways.locale),
            spoken(seconds, ways),
            clear > 0 ? rulerLength(clear, ways) : null,
          )}
        </b>{' '}
        <span className="quiet small">
          {words.curers[curer]} · {words.origins[cure.origin]}
        </span>
      </p>
      <ul className="small quiet">
        {words.cureLooks.map((look) => (
          <li key={look}>{look}</li>
        ))}
      </ul>
      <h2>{words.pressing}</h2>
      {fabricsOn(run).map(({ fabric, orders }) => {
        const { values, origin, notes } = pressRecipe(view, run.film.peel, fabric);
        return (
          <div key={fabric ?? ''} className="fabric">
            <FabricOrders orders={orders} name={fabricName(fabric, words)} />
            <p>
              <b>{words.line(values, bothDegrees(values.temperature, unit, ways.locale), ways)}</b>
            </p>
            <p className="small">
              {[
                ...(values.prePress > 0 ? [words.prePress(values.prePress, ways)] : []),
                words.cover(values.cover),
                words.peelAfter(run.film.peel, values.wait, ways),
                ...(values.secondPress > 0 ? [words.secondPress(values.secondPress, ways)] : []),
              ].join(', ')}
            </p>
            <p className="quiet small">{[words.origins[origin], notes].filter(Boolean).join(' · ')}</p>
            {fabric === null && <p className="caution small">{words.untoldCaution}</p>}
            {cautionsFor(fabric ?? 'other').map((caution) => (
              <p key={caution} className="caution small">
                {words.fabricCautions[caution]}
              </p>
            ))}
          </div>
        );
      })}
    </section>
  );
}

/** Which orders go on a fabric; of many the first, and more by a press. */
function FabricOrders({ orders, name }: { orders: readonly LaidCopy['order'][]; name: string }) {
  const { shown, more } = useMore(orders.length);
  return (
    <p className="fabric-orders">
      {orders.slice(0, shown).map(({ id, code, tint }) => (
        <OrderCode key={id} code={code} tint={tint} />
      ))}{' '}
      {name} {more}
    </p>
  );
}
