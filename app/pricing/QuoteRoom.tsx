import { useId } from 'react';
import { edits, isAsPriced } from '../../src/editing';
import { type Book, type Order, type Quote, quoteNumber, quotesOf } from '../../src/model';
import { Button } from '../parts/Button';
import { Empty } from '../parts/Empty';
import { useHeld } from '../parts/held';
import { usePriced } from '../store/prices';
import { settingsOrFirst, useWays } from '../store/selectors';
import { act, useShop } from '../store/shop';
import { goTo, openDialog, showQuote, useView } from '../store/view';
import { useAllWords } from '../words';
import { money } from '../words/format';
import { QuotePages } from './QuotePages';
import { giveQuote } from './quoting';
import '../parts/paper.css';
import '../parts/card-page.css';
import './pricing.css';

/** The quote that was asked for, or else the one that was given last. */
const quoteOf = (book: Book, asked: string | null): Quote | undefined =>
  (asked === null ? undefined : book.quote[asked]) ??
  Object.values(book.quote).sort((a, b) => b.number - a.number)[0];

/** A quote as it is printed. */
export function QuoteRoom() {
  const { quote: words } = useAllWords();
  const asked = useView((view) => view.quoted);
  const quote = useShop(({ book }) => quoteOf(book, asked));
  const order = useShop(({ book }) => quote && book.order[quote.order]);
  if (!quote || !order) {
    return (
      <Empty title={words.title}>
        <p>{words.missing}</p>
        <Button weight="primary" onPress={() => goTo('orders')}>
          {words.toOrders}
        </Button>
      </Empty>
    );
  }
  return <QuotePage order={order} quote={quote} />;
}

function QuotePage({ order, quote }: { order: Order; quote: Quote }) {
  const { quote: words } = useAllWords();
  const latest = useShop(({ book }) => quotesOf(book, order.id)[0]);
  const { paper } = useShop(({ book }) => settingsOrFirst(book));
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
          <Button weight="primary" onPress={() => print()}>
            {words.print}
          </Button>
        </div>
      </div>
      <div className="quote-acts">
        {quote.content === null && <p className="care">{words.totalOnly}</p>}
        {latest && latest.id !== quote.id ? (
          <div className="quote-changed">
            <p>{words.earlier(quoteNumber(latest))}</p>
            <Button onPress={() => showQuote(latest.id)}>{words.openLatest}</Button>
          </div>
        ) : (
          <InForce order={order} quote={quote} />
        )}
      </div>
      <div className="cards-paper">
        <QuotePages quote={quote} paper={paper} />
      </div>
    </>
  );
}

/** What may still be done about the quote that holds. */
function InForce({ order, quote }: { order: Order; quote: Quote }) {
  const { quote: words, prices } = useAllWords();
  const ways = useWays();
  const priced = usePriced(order.id);
  const then = money(quote.total, { ...ways, currency: quote.currency });
  return (
    <>
      {quote.from.name === '' && (
        <div className="quote-changed">
          <p className="care">{words.noName}</p>
          <Button onPress={() => openDialog({ kind: 'prices', back: null })}>{prices.title}</Button>
        </div>
      )}
      {priced && !isAsPriced(quote, priced.price, ways.currency) && (
        <div className="quote-changed">
          <p className="care">{words.changed(then, money(priced.price.total, ways))}</p>
          <Button writes onPress={() => giveQuote(order, priced, true)}>
            {words.again}
          </Button>
        </div>
      )}
      <Notes key={quote.id} quote={quote} />
    </>
  );
}

function Notes({ quote }: { quote: Quote }) {
  const { isHeld, reason } = useHeld(true);
  const { quote: words } = useAllWords();
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{words.notes}</label>
      <textarea
        id={id}
        rows={2}
        readOnly={isHeld}
        {...reason}
        defaultValue={quote.notes}
        onBlur={({ target }) =>
          target.value.trim() !== quote.notes && act(edits.editQuoteNotes(quote.id, target.value.trim()))
        }
      />
    </div>
  );
}
