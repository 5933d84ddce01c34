import { tallyByTransfer } from '../../src/cutting';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { garmentsByOrder, type Settings } from '../../src/model';
import {
  actsOn,
  cautionsFor,
  cureRecipe,
  fabricOfCopy,
  fabricsOn,
  garmentsPressed,
  isDusty,
  numbered,
  platenClosings,
  pressedTogether,
  pressRecipe,
  pressSeconds,
} from '../../src/pressing';
import { machineName } from '../panels/machine-name';
import { type Thumbnail, useThumbnails } from '../panels/useThumbnails';
import { printerOfRun, stationOf, useWays } from '../store/selectors';
import { useAllWords, type Words } from '../words';
import { area, bothDegrees, dayAndTime, dueDay, rulerLength, spoken } from '../words/format';
import { Card } from './Card';
import { garmentName } from './garment-name';
import { placeMeasures } from './place-measures';
import { fabricName, recipeLine } from './recipe-line';

/** What every printed card is made from. */
export interface CardProps {
  readonly run: LaidRun;
  readonly paper: Settings['paper'];
  readonly made: Date;
}

/** The orders of a run, soonest due first, with their copies. */
export function ordersOn(
  run: LaidRun,
): { readonly order: LaidCopy['order']; readonly copies: readonly LaidCopy[] }[] {
  const orders = new Map<string, { order: LaidCopy['order']; copies: LaidCopy[] }>();
  for (const copy of run.copies) {
    const own = orders.get(copy.order.id);
    if (own) own.copies.push(copy);
    else orders.set(copy.order.id, { order: copy.order, copies: [copy] });
  }
  const dueOf = (id: string) => run.view.order[id]?.due ?? '9999';
  return [...orders.values()].sort(
    (a, b) => dueOf(a.order.id).localeCompare(dueOf(b.order.id)) || a.order.code.localeCompare(b.order.code),
  );
}

/** A box to tick for each copy, or their number where there are many. */
export const Boxes = ({ count }: { count: number }) => (
  <span className="boxes">{count <= 24 ? '☐'.repeat(count) : `☐ × ${count}`}</span>
);

/** A small picture, by which a transfer is known in the hand. */
const Picture = ({ of }: { of: Thumbnail | undefined }) =>
  of && <img className="picture" src={of.url} alt="" />;

/** How long copies of a transfer are pressed: on each fabric that they go on, where the times differ. */
function secondsOf(
  run: LaidRun,
  copies: readonly LaidCopy[],
  size: Parameters<typeof pressSeconds>[1],
  press: Words['press'],
): string {
  const fabrics = [...new Set(copies.map((copy) => fabricOfCopy(run, copy)))];
  const times = fabrics.map((fabric) => {
    const seconds = pressSeconds(pressRecipe(run.view, run.film.peel, fabric).values, size, stationOf(run));
    return { name: fabricName(fabric, press), seconds };
  });
  const [first] = times;
  return times.every(({ seconds }) => seconds === first?.seconds)
    ? `${first?.seconds}\u00a0s`
    : times.map(({ name, seconds }) => `${name} ${seconds}\u00a0s`).join(', ');
}

/** One page for the press side: what, on which garments, how, and where to tick it off. */
export function RunCard({ run, paper, made }: CardProps) {
  const all = useAllWords();
  const { cards: words, press } = all;
  const ways = useWays();
  const { view } = run;
  const pictures = useThumbnails(run);
  const station = stationOf(run);
  const unit = station.temperature;
  const [one, ...more] = numbered('printer', station.printers);
  const printer = more.length > 0 ? [one, ...more].find((each) => each?.id === printerOfRun(run).id) : null;
  const acts = actsOn(run, station);
  const cure = cureRecipe(view, station.curer).values;
  const garments = garmentsByOrder(view);
  const onRun = garmentsPressed(view, run.copies);
  const places = placeMeasures(run, all, ways);
  return (
    <Card
      paper={paper}
      title={words.runTitle(run.name)}
      facts={
        <p>
          {words.runFacts(
            run.copies.length,
            press.peels[run.film.peel],
            dayAndTime(made.toISOString(), ways),
            ways,
          )}
          {printer && ` · ${machineName(printer)}`}
        </p>
      }
    >
      <p className="before">
        ☐ {words.coated} &nbsp; ☐ {words.edgeFlat} &nbsp; ☐ {words.bareCorner}
      </p>
      <section className="recipes-on-card">
        <p>
          <b>{press.kinds.cure}</b>{' '}
          {press.cureLine(
            bothDegrees(cure.temperature, unit, ways.locale),
            spoken(cure.seconds, ways),
            cure.clear > 0 ? rulerLength(cure.clear, ways) : null,
          )}
          . {words.cureLook}
        </p>
        {fabricsOn(run).map(({ fabric, orders }) => {
          const { origin, notes } = pressRecipe(view, run.film.peel, fabric);
          return (
            <p key={fabric ?? ''}>
              <b>
                {fabricName(fabric, press)} ({orders.map(({ code }) => code).join(', ')})
              </b>{' '}
              {recipeLine(run, fabric, press, ways)}.{' '}
              {[
                ...(fabric === null ? [press.untoldCaution] : []),
                ...cautionsFor(fabric ?? 'other').map((caution) => press.fabricCautions[caution]),
                notes,
              ].join(' ')}{' '}
              <i>{press.origins[origin]}</i>
            </p>
          );
        })}
      </section>
      <div className="card-orders">
        {ordersOn(run).map(({ order, copies }) => {
          const record = view.order[order.id];
          const isPressed = record?.wants !== 'transfers';
          return (
            <section key={order.id}>
              <h3>
                {order.code} <span>{order.name}</span>
                {record?.due && <small> {dueDay(record.due, ways)}</small>}
              </h3>
              {!isPressed && <p>{words.transfersOnly}</p>}
              {(garments.get(order.id) ?? []).flatMap((garment) => {
                const here = onRun.get(garment.id) ?? 0;
                return here === 0
                  ? []
                  : [
                      <p key={garment.id}>
                        {words.garmentPart(garmentName(garment, press), here, garment.count, ways)}
                      </p>,
                    ];
              })}
              <ul>
                {tallyByTransfer(copies).map(({ transfer, name, artwork, size, numbers }) => (
                  <li key={transfer}>
                    <span>
                      <Picture of={pictures.get(artwork ?? '')} />
                    </span>
                    <span>
                      {name}, {area(size.width, size.height, ways)}
                      {isPressed &&
                        `, ${secondsOf(
                          run,
                          copies.filter((copy) => copy.transfer.id === transfer),
                          size,
                          press,
                        )}`}
                    </span>
                    <Boxes count={numbers.length} />
                  </li>
                ))}
              </ul>
              {isPressed &&
                pressedTogether(platenClosings(view, copies, station)).map(
                  ({ transfers, garments: count }) => (
                    <p key={transfers.map(({ id }) => id).join()}>
                      {words.together(
                        transfers.map(({ name }) => name),
                        count,
                        ways,
                      )}
                    </p>
                  ),
                )}
            </section>
          );
        })}
      </div>
      {places.length > 0 && (
        <p className="small-print">
          {places.join(' ')} {words.commonPractice}
        </p>
      )}
      <p className="card-cautions">
        {acts.map((act) => (
          <span key={act}>
            <b>{press.acts[act]}:</b> {press.cautions[act]}{' '}
          </span>
        ))}
        {acts.some(isDusty) && press.dust}
      </p>
      <p className="closing">{press.deference}</p>
    </Card>
  );
}
