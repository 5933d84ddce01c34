import { quoteNumber, quotesOf } from '../../src/model';
import { Button } from '../parts/Button';
import { useWays } from '../store/selectors';
import { useShop } from '../store/shop';
import { showQuote } from '../store/view';
import { useAllWords } from '../words';
import { calendarDay, money } from '../words/format';
import './quotes-given.css';

/** The quotes that were given for an order, the latest first, each to be opened as it was. */
export function QuotesGiven({ order }: { order: string }) {
  const { quote: words } = useAllWords();
  const ways = useWays();
  const book = useShop((shop) => shop.book);
  const quotes = quotesOf(book, order);
  if (quotes.length === 0) return null;
  return (
    <section aria-label={words.given}>
      <h3>{words.given}</h3>
      <ul className="quotes-given">
        {quotes.map((quote) => (
          <li key={quote.id}>
            <Button weight="plain" onPress={() => showQuote(quote.id)}>
              {words.heading(quoteNumber(quote))}
            </Button>
            <span>{calendarDay(quote.on, ways)}</span>
            <strong>{money(quote.total, { ...ways, currency: quote.currency })}</strong>
          </li>
        ))}
      </ul>
    </section>
  );
}
