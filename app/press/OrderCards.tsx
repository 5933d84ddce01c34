import { useMemo, useState } from 'react';
import { fewestGarments, tallyByTransfer } from '../../src/cutting';
import type { LaidCopy, LaidRun } from '../../src/layout';
import { garmentsByOrder, restBeside } from '../../src/model';
import { fabricOfCopy, garmentsPressed } from '../../src/pressing';
import { blanksAgain } from '../../src/stock';
import { type Fabric, sum } from '../../src/units';
import { ShopMark } from '../panels/shop-mark/ShopMark';
import { Button } from '../parts/Button';
import { settingsOrFirst, useOrdersOf, useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { openDialog } from '../store/view';
import { useAllWords, type Words } from '../words';
import { area, dayAndTime, dueDay, type Ways, whole } from '../words/format';
import { Card } from './Card';
import { garmentName } from './garment-name';
import { ordersOn, reprintsAmong, useOnCards } from './on-card';
import { Boxes, type CardProps, ReprintMark } from './RunCard';
import { recipeLine } from './recipe-line';
import { sheetsOfSlips } from './slips';

/** The blanks of every order on the run, to be taken from the store. */
export function PickList({ run, paper, made }: CardProps) {
  const all = useAllWords();
  const { cards: words, press } = all;
  const ways = useWays();
  const { view } = run;
  const garments = garmentsByOrder(view);
  const { takes } = view.dealt();
  const told = useOrdersOf(run);
  const restOf = useRest(run);
  const book = useShop((shop) => shop.book);
  const again = useMemo(() => blanksAgain(book, view.run), [book, view.run]);
  const reprints = view.reprints();
  const orders = ordersOn(run, run.copies).filter(({ order }) => view.order[order.id]?.wants !== 'transfers');
  return (
    <Card
      paper={paper}
      title={words.pickTitle(run.name)}
      facts={<p>{dayAndTime(made.toISOString(), ways)}</p>}
    >
      {orders.map(({ order, copies }) => {
        const lines = garments.get(order.id) ?? [];
        const own = lines.filter(({ id }) => (takes.get(id) ?? 0) > 0);
        // The garments of reprints were taken before, or are asked for beside.
        const fresh = copies.filter(({ id }) => !reprints.has(id));
        const more = again.get(order.id) ?? 0;
        const rest = words.rest(restOf(order.id), ways);
        return (
          <section key={order.id} className="pick">
            <h3>
              {order.code} <span>{told[order.id]?.name}</span>{' '}
              {view.order[order.id]?.rush && <strong className="card-mark">{all.orders.rush}</strong>}
            </h3>
            {rest !== '' && <p>{rest}</p>}
            {own.map((garment) => (
              <p key={garment.id}>
                ☐ <b>{whole(takes.get(garment.id) ?? 0, ways)}</b> × {garmentName(garment, press)}
              </p>
            ))}
            {more === 0 && (lines.length > 0 ? own : fresh).length === 0 && <p>{words.allTaken}</p>}
            {lines.length === 0 && fresh.length > 0 && (
              <p>
                ☐{' '}
                {words.garmentsAtLeast(
                  fewestGarments(fresh),
                  tallyByTransfer(fresh).map(({ name, numbers }) =>
                    words.garment(name, numbers.length, ways),
                  ),
                  ways,
                )}
              </p>
            )}
            {more > 0 && <p>☐ {words.replacement(more, ways)}</p>}
          </section>
        );
      })}
      <p className="closing">{press.deference}</p>
    </Card>
  );
}

/** The fabrics that transfers are sold for most, where nobody has told theirs (common practice, no source). */
const SOLD_FOR: readonly Fabric[] = ['cotton', 'blend', 'polyester'];

/** How transfers that are sold alone are pressed, on each fabric that they are for. */
function pressLines(
  run: LaidRun,
  copies: readonly LaidCopy[],
  words: Words['cards'],
  press: Words['press'],
  ways: Ways,
): string[] {
  const fabrics = new Set(
    copies.flatMap((copy): readonly Fabric[] => {
      const fabric = fabricOfCopy(run, copy);
      return fabric === null ? SOLD_FOR : [fabric];
    }),
  );
  return [
    ...[...fabrics].map((fabric) =>
      words.pressOn(press.fabrics[fabric], recipeLine(run, fabric, press, ways)),
    ),
    words.pressTry,
  ];
}

/** What of each order on a run comes with others. */
const useRest = ({ view: { run } }: LaidRun) => {
  const book = useShop((shop) => shop.book);
  return useMemo(() => restBeside(book, run), [book, run]);
};

const SLIPS_ON_PAGE = 8;

/** How the customer keeps the print: a slip an order, several on a page to be cut apart. */
export function CareSlips({ run, paper }: CardProps) {
  const { cards: words, press } = useAllWords();
  const ways = useWays();
  const orders = useOrdersOf(run);
  const { orders: all } = useOnCards(run);
  const pages = Array.from({ length: Math.ceil(all.length / SLIPS_ON_PAGE) }, (_, page) =>
    all.slice(page * SLIPS_ON_PAGE, (page + 1) * SLIPS_ON_PAGE),
  );
  return pages.map((slips) => (
    <article key={slips[0]?.order.id} className="card-page slips" data-paper={paper}>
      {slips.map(({ order, copies }) => (
        <section key={order.id}>
          <h3>{orders[order.id]?.name}</h3>
          <ul>
            {(orders[order.id]?.wants === 'transfers'
              ? [...pressLines(run, copies, words, press, ways), ...words.transferCare]
              : words.care
            ).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      ))}
    </article>
  ));
}

/** Boxes in a row beside a transfer's name on a slip; the name and its size take two lines. */
const BESIDE = 6;

/** What is in each bag; an order may take several. Slips share sheets, to be cut apart, and go to the customer. */
export function PackingSlips({ run, paper, made }: CardProps) {
  const { cards: words, press, prices, orders: told } = useAllWords();
  const ways = useWays();
  const { view } = run;
  const garments = garmentsByOrder(view);
  const records = useOrdersOf(run);
  const { copies: left, orders } = useOnCards(run);
  const onRun = garmentsPressed(view, left);
  const linesOn = ({ id }: LaidCopy['order']) =>
    (garments.get(id) ?? []).filter((line) => (onRun.get(line.id) ?? 0) > 0);
  const [bags, setBags] = useState<Readonly<Record<string, number>>>({});
  const book = useShop((shop) => shop.book);
  const restOf = useRest(run);
  const { letterhead } = settingsOrFirst(book);
  const slips = orders.flatMap(({ order, copies }) => {
    const of = bags[order.id] ?? 1;
    return Array.from({ length: of }, (_, index) => ({ order, copies, bag: index + 1, of }));
  });
  const isWhole = ({ id }: LaidCopy['order']) => {
    const { came, follows, waiting } = restOf(id);
    return came.length + follows.length + waiting === 0;
  };
  const linesOf = ({ order, copies }: (typeof slips)[number]) =>
    sum(tallyByTransfer(copies).map(({ numbers }) => Math.max(2, Math.ceil(numbers.length / BESIDE)))) +
    linesOn(order).length +
    (view.order[order.id]?.wants === 'transfers'
      ? 3 * pressLines(run, copies, words, press, ways).length
      : 0) +
    (isWhole(order) ? 0 : 2);
  const headOf = ({ order, bag, of }: (typeof slips)[number]) => ({
    title: (
      <>
        {order.code} <span>{records[order.id]?.name}</span>{' '}
        {view.order[order.id]?.rush && <strong className="card-mark">{told.rush}</strong>}
      </>
    ),
    facts: <p className="bag">{isWhole(order) ? words.bag(bag, of, ways) : words.partBag(bag, of, ways)}</p>,
  });
  const bodyOf = ({ order, copies }: (typeof slips)[number]) => {
    const record = records[order.id];
    return (
      <>
        {!isWhole(order) && <p>{words.rest(restOf(order.id), ways)}</p>}
        {record?.contact && <p>{record.contact}</p>}
        {record?.due && (
          <p>
            {press.due} {dueDay(record.due, ways)}
          </p>
        )}
        {record && <p>{words.handovers[record.handover]}</p>}
        <ul>
          {tallyByTransfer(copies).map(({ transfer, name, size, numbers }) => (
            <li key={transfer}>
              <span>
                <b>{whole(numbers.length, ways)}</b> × {name}, {area(size.width, size.height, ways)}{' '}
                <ReprintMark count={reprintsAmong(run, copies, transfer)} of={numbers.length} />
              </span>
              <Boxes count={numbers.length} />
            </li>
          ))}
        </ul>
        {linesOn(order).map((garment) => (
          <p key={garment.id}>
            {words.garmentPart(garmentName(garment, press), onRun.get(garment.id) ?? 0, garment.count, ways)}
          </p>
        ))}
        {record?.wants === 'transfers' &&
          pressLines(run, copies, words, press, ways).map((line) => <p key={line}>{line}</p>)}
        <p>
          ☐ {record?.wants === 'transfers' ? words.flatAndDry : words.stretched} · ☐ {words.counted}
        </p>
        <p className="small-print">{words.packed(dayAndTime(made.toISOString(), ways))}</p>
      </>
    );
  };
  return (
    <>
      {letterhead.name === '' && (
        <p className="unnamed">
          {words.noShopName}{' '}
          <Button weight="plain" onPress={() => openDialog({ kind: 'prices', back: null })}>
            {prices.title}
          </Button>
        </p>
      )}
      <div className="bag-counts">
        {orders.map(({ order }) => (
          <label key={order.id}>
            {words.bagsFor(order.code)}
            <input
              type="number"
              min={1}
              max={20}
              value={bags[order.id] ?? 1}
              onChange={(event) => {
                const count = Math.max(1, Math.min(20, Math.round(Number(event.target.value)) || 1));
                setBags({ ...bags, [order.id]: count });
              }}
            />
          </label>
        ))}
      </div>
      {sheetsOfSlips(slips, linesOf).map(({ up, slips: own }) => {
        const contents = own.map((slip) => ({ slip, key: `${slip.order.id} ${slip.bag}` }));
        const [first] = contents;
        // A slip that has a sheet of its own may need another.
        return up === 1 && first ? (
          <Card key={first.key} paper={paper} {...headOf(first.slip)}>
            <ShopMark />
            {bodyOf(first.slip)}
          </Card>
        ) : (
          <article key={first?.key} className="card-page slips packing" data-up={up} data-paper={paper}>
            {contents.map(({ slip, key }) => {
              const { title, facts } = headOf(slip);
              return (
                <section key={key}>
                  <ShopMark />
                  <header className="card-head">
                    <h2>{title}</h2>
                    {facts}
                  </header>
                  {bodyOf(slip)}
                </section>
              );
            })}
          </article>
        );
      })}
    </>
  );
}
