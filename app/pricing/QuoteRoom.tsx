import { useId } from 'react';
import { editOrder } from '../../src/editing';
import type { Book, Order, Quote } from '../../src/model';
import { Button } from '../parts/Button';
import { type PricedOrder, usePriced } from '../store/costs';
import { settingsOrFirst, useWays } from '../store/selectors';
import { commit, useShop } from '../store/shop';
import { goTo, openDialog, useView } from '../store/view';
import { useWords } from '../words';
import { dayOf, money } from '../words/format';
import { PriceLines } from './PriceLines';
import { giveQuote } from './quoting';
import '../parts/paper.css';
import '../press/cards.css';
import './pricing.css';

/** The order whose quote is shown: the one that was asked for, or else the one that was quoted last. */
function quotedOrder(book: Book, asked: string | null): Order | undefined {
  const wanted = asked === null ? undefined : book.order[asked];
  return (
    wanted ?? Object.values(book.order).sort((a, b) => (b.quote?.number ?? 0) - (a.quote?.number ?? 0))[0]
  );
}

/** A quote as it is printed. */
export function QuoteRoom() {
  const { quote: words } = useWords();
  const asked = useView((view) => view.quoted);
  const order = useShop(({ book }) => quotedOrder(book, asked));
  if (!order?.quote) {
    return (
      <section className="empty">
        <h1>{words.title}</h1>
        <p>{words.missing}</p>
        <Button weight="primary" onPress={() => goTo('orders')}>
          {words.toOrders}
        </Button>
      </section>
    );
  }
  return <QuotePage order={order} quote={order.quote} />;
}

function QuotePage({ order, quote }: { order: Order; quote: Quote }) {
  const { quote: words, prices } = useWords();
  const ways = useWays();
  const priced = usePriced(order.id);
  const { letterhead, paper } = useShop(({ book }) => settingsOrFirst(book));
  const back = () => {
    goTo('orders');
    openDialog({ kind: 'price', order: order.id });
  };
  return (
    <>
      <div className="room-head">
        <div>
          <h1>{words.title}</h1>
          <p className="quiet">{words.hint}</p>
        </div>
        <div className="actions">
          <Button weight="plain" onPress={back}>
            {words.back}
          </Button>
          <Button weight="primary" isDisabled={!priced} onPress={() => print()}>
            {words.print}
          </Button>
        </div>
      </div>
      <div className="quote-acts">
        {letterhead.name === '' && (
          <div className="quote-changed">
            <p className="care">{words.noName}</p>
            <Button onPress={() => openDialog({ kind: 'prices', back: null })}>{prices.title}</Button>
          </div>
        )}
        {priced && priced.price.total !== quote.total && (
          <div className="quote-changed">
            <p className="care">{words.changed(money(quote.total, ways), money(priced.price.total, ways))}</p>
            <Button onPress={() => giveQuote(order, priced, true)}>{words.again}</Button>
          </div>
        )}
        <Notes order={order} quote={quote} />
      </div>
      <div className="cards-paper">
        {priced && <Paper order={order} quote={quote} priced={priced} paper={paper} />}
      </div>
    </>
  );
}

function Notes({ order, quote }: { order: Order; quote: Quote }) {
  const { quote: words } = useWords();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{words.notes}</label>
      <textarea
        id={id}
        rows={2}
        defaultValue={quote.notes}
        onBlur={({ target }) =>
          target.value.trim() !== quote.notes &&
          commit((draft) => editOrder(draft, order.id, { quote: { ...quote, notes: target.value.trim() } }))
        }
      />
    </div>
  );
}

/** Lines that fit a page at its usual size; more are set smaller. */
const MANY = 16;

/** What the customer reads; nothing on it tells what anything costs the shop. */
function Paper({
  order,
  quote,
  priced: { price },
  paper,
}: {
  order: Order;
  quote: Quote;
  priced: PricedOrder;
  paper: string;
}) {
  const { quote: words } = useWords();
  const ways = useWays();
  const { letterhead } = useShop(({ book }) => settingsOrFirst(book));
  return (
    <article
      className={price.lines.length > MANY ? 'card-page quote many' : 'card-page quote'}
      data-paper={paper}
      data-testid="quote"
    >
      <header className="quote-from">
        <strong>{letterhead.name}</strong>
        <p>{letterhead.address}</p>
      </header>
      <div className="quote-head">
        <h2>{words.heading(String(quote.number).padStart(4, '0'))}</h2>
        <p>
          {words.date(dayOf(quote.on, ways))}
          <br />
          {words.until(dayOf(quote.until, ways))}
        </p>
      </div>
      <p className="quote-for">
        <span>{words.for}</span>
        <strong>{order.name}</strong>
        {order.contact}
      </p>
      <PriceLines price={price} />
      {price.deposit > 0 && <p>{words.deposit(money(price.deposit, ways))}</p>}
      {quote.notes !== '' && (
        <section>
          <h3>{words.notes}</h3>
          <p className="quote-notes">{quote.notes}</p>
        </section>
      )}
    </article>
  );
}
