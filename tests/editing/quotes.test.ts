import { describe, expect, it } from 'vitest';
import {
  addQuote,
  changeCurrency,
  editOrder,
  editQuoteNotes,
  editSettings,
  isAsPriced,
  removeOrder,
  signQuotes,
} from '../../src/editing';
import { type Book, type Pricing, quotesOf, readRecord } from '../../src/model';
import { type Price, priceOf, startingPricing } from '../../src/pricing';
import { asMinor, fromMm, type LocalDate } from '../../src/units';
import { edited, freshIds, smallBook } from './book';

/** A price with every kind of line. */
function priced(fields: Partial<Pricing> = {}): Price {
  return priceOf({
    pricing: {
      ...startingPricing('USD', 'mm'),
      minimum: asMinor(90_000),
      breaks: [{ from: 2, off: 0.1 }],
      tax: { name: 'VAT', share: 0.2, kind: 'on-top' },
      ...fields,
    },
    order: { rush: true, supplied: false, pricing: { aim: null, newDesigns: null, discount: 0.05 } },
    prints: [
      { transfer: 't', name: 'crest', design: 'd', size: 's', count: 10, cost: 2000, length: fromMm(900) },
    ],
    garments: [{ name: 'tee, black', count: 10, cost: asMinor(450) }],
    newDesigns: 1,
    cost: asMinor(6500),
  });
}

const given = {
  on: '2026-11-25' as LocalDate,
  until: '2026-12-25' as LocalDate,
  language: 'en',
  locale: 'en-GB',
} as const;

const quoted = (book: Book, order: string, price: Price) =>
  edited(book, (draft) => {
    addQuote(draft, order, price, given, freshIds());
  });

/** As it comes back from storage. */
const stored = (book: Book, order: string) =>
  quotesOf(book, order).map((quote) => readRecord('quote', JSON.parse(JSON.stringify(quote))));

describe('a quote that was given', () => {
  const { book, order } = smallBook();
  const price = priced();
  const once = quoted(book, order, price);

  it('keeps every line, and nothing of what the order costs', () => {
    const [quote] = stored(once, order);
    expect(quote?.content?.lines).toEqual(price.lines);
    expect(new Set(price.lines.map(({ kind }) => kind))).toEqual(
      new Set(['print', 'garments', 'break', 'discount', 'artwork-fee', 'rush', 'minimum']),
    );
    expect(quote).toMatchObject({
      number: 1,
      currency: 'USD',
      total: price.total,
      content: { subtotal: price.subtotal, tax: price.tax, deposit: price.deposit },
      ...given,
    });
    expect(Object.keys(quote?.content ?? {}).sort()).toEqual(['deposit', 'lines', 'subtotal', 'tax']);
    expect(once.settings.shop?.pricing.nextQuote).toBe(2);
  });

  it('stays as it was when order, prices, letterhead and currency change', () => {
    const before = stored(once, order);
    const after = edited(once, (draft) => {
      const { shop } = draft.settings;
      if (!shop) throw new Error('no settings');
      editOrder(draft, order, { name: 'Another name', contact: 'Someone else' });
      editSettings(draft, {
        letterhead: { name: 'Print Barn', address: '' },
        pricing: { ...shop.pricing, deposit: 0 },
      });
      changeCurrency(draft, 'JPY');
    });
    expect(stored(after, order)).toEqual(before);
  });

  it('is held against what would be asked now, also after a reload', () => {
    const [quote] = stored(once, order);
    if (!quote) throw new Error('no quote');
    expect(isAsPriced(quote, priced(), 'USD')).toBe(true);
    expect(isAsPriced(quote, priced(), 'EUR')).toBe(false);
    expect(isAsPriced(quote, priced({ deposit: 0.1 }), 'USD')).toBe(false);
    expect(isAsPriced(quote, priced({ artworkFee: asMinor(1600) }), 'USD')).toBe(false);
    // Of an older version's quote the total alone is known.
    expect(isAsPriced({ ...quote, content: null }, priced({ deposit: 0.1 }), 'USD')).toBe(true);
  });

  it('is followed by others with its notes, the latest first, and goes with its order', () => {
    const [first] = quotesOf(once, order);
    const noted = edited(once, (draft) => editQuoteNotes(draft, first?.id ?? '', 'Collect after four.'));
    const twice = quoted(noted, order, priced({ artworkFee: asMinor(0) }));
    expect(quotesOf(twice, order).map(({ number, notes }) => [number, notes])).toEqual([
      [2, 'Collect after four.'],
      [1, 'Collect after four.'],
    ]);
    expect(edited(twice, (draft) => removeOrder(draft, order)).quote).toEqual({});
  });

  it('is signed later where the shop had no name yet, but only while it holds', () => {
    const twice = quoted(once, order, price);
    const signed = edited(twice, (draft) => {
      editSettings(draft, { letterhead: { name: 'Print Barn', address: '2 Mill Lane' } });
      signQuotes(draft);
      editSettings(draft, { letterhead: { name: 'Another Barn', address: '' } });
      signQuotes(draft);
    });
    expect(quotesOf(signed, order).map(({ from }) => from.name)).toEqual(['Print Barn', '']);
  });

  it('is given for no order that is not there', () => {
    expect(quoted(book, 'gone', price)).toBe(book);
  });
});
