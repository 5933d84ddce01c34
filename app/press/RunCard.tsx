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
  platenClosings,
  pressedTogether,
  pressRecipe,
  pressSeconds,
} from '../../src/pressing';
import { type Thumbnail, useThumbnails } from '../panels/useThumbnails';
import { stationOf, useOrdersOf, useWays } from '../store/selectors';
import { useAllWords, type Words } from '../words';
import { area, bothDegrees, dayAndTime, dueDay, rulerLength, spoken } from '../words/format';
import { Card } from './Card';
import { garmentName } from './garment-name';
import { machinesOnCard } from './machines-on-card';
import { reprintsAmong, useOnCards } from './on-card';
import { placeMeasures } from './place-measures';
import { fabricName, recipeLine } from './recipe-line';

/** What every printed card is made from. */
export interface CardProps {
  readonly run: LaidRun;
  readonly paper: Settings['paper'];
  readonly made: Date;
}

/** A box to tick for each copy, or their number where there are many. */
export const Boxes = ({ count }: { count: number }) => (
  <span className="boxes">{count <= 24 ? '☐'.repeat(count) : `☐ × ${count}`}</span>
);

/** What is printed again among a transfer's copies; nothing where none is. */
export function ReprintMark({ count, of }: { count: number; of: number }) {
  const { reprints: words } = useAllWords();
  const ways = useWays();
  return count > 0 && <strong className="card-mark">{words.onCard(count, of, ways)}</strong>;
}

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
  const { copies: left, orders } = useOnCards(run);
  const told = useOrdersOf(run);
  const machines = machinesOnCard(run, all, ways);
  const acts = actsOn(run, station);
  const cure = cureRecipe(view, station.curer).values;
  const garments = garmentsByOrder(view);
  const onRun = garmentsPressed(view, left);
  const places = placeMeasures(run, all, ways);
  return (
    <Card
      paper={paper}
      title={words.runTitle(run.name)}
      facts={
        <p>
          {words.runFacts(
            left.length,
            press.peels[run.film.peel],
            dayAndTime(made.toISOString(), ways),
            ways,
          )}
        </p>
      }
    >
      <p className="before">
        ☐ {words.coated} &nbsp; ☐ {words.edgeFlat} &nbsp; ☐ {words.bareCorner}
      </p>
      {machines.length > 0 && (
        <p className="machines-on-card">
          {machines.map(({ does, names }) => (
            <span key={does}>
              <b>{does}:</b> {names}.{' '}
            </span>
          ))}
        </p>
      )}
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
        {orders.map(({ order, copies }) => {
          const record = view.order[order.id];
          const isPressed = record?.wants !== 'transfers';
          return (
            <section key={order.id}>
              <h3>
                {order.code} <span>{told[order.id]?.name}</span>
                {record?.due && <small> {dueDay(record.due, ways)}</small>}{' '}
                {record?.rush && <strong className="card-mark">{all.orders.rush}</strong>}
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
                        )}`}{' '}
                      <ReprintMark count={reprintsAmong(run, copies, transfer)} of={numbers.length} />
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
