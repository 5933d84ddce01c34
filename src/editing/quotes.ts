import { type Id, type Quote, quoteContent, quotesOf, type Settings } from '../model';
import type { Price } from '../pricing';
import { editSettings } from './settings';
import type { BookDraft, EditContext } from './step';

/** What a quote is given with: its days, and the language and locale it is written in. */
type Given = Pick<Quote, 'on' | 'until' | 'language' | 'locale'>;

const contentOf = (price: Price) => quoteContent({ ...price, lines: [...price.lines] });

/** Keeps a price as a quote under the next number, with the notes of the quote before. */
export function addQuote(
  draft: BookDraft,
  order: string,
  price: Price,
  given: Given,
  { newId, now }: EditContext,
): Id<'quote'> | null {
  const { shop } = draft.settings;
  const known = draft.order[order];
  if (!shop || !known) return null;
  const id = newId<'quote'>();
  draft.quote[id] = {
    id,
    order: known.id,
    number: shop.pricing.nextQuote,
    ...given,
    currency: shop.currency,
    from: { ...shop.letterhead },
    for: { name: known.name, contact: known.contact },
    total: price.total,
    content: contentOf(price),
    notes: quotesOf(draft, order)[0]?.notes ?? '',
    changed: now,
  };
  shop.pricing.nextQuote += 1;
  return id;
}

/** Whether a quote still is what would be given. */
export const isAsPriced = ({ total, content, currency }: Quote, price: Price, inForce: string): boolean =>
  currency === inForce &&
  total === price.total &&
  (content === null || JSON.stringify(content) === JSON.stringify(contentOf(price)));

export function editQuoteNotes(draft: BookDraft, id: string, notes: string): void {
  const quote = draft.quote[id];
  if (quote) quote.notes = notes;
}

/** Puts the shop's name and address on the quotes in force that were given before there were any. */
export function signQuotes(draft: BookDraft): void {
  const { letterhead } = draft.settings.shop ?? {};
  if (!letterhead || letterhead.name === '') return;
  for (const { id, from, order } of Object.values(draft.quote)) {
    const quote = draft.quote[id];
    const isLatest = quotesOf(draft, order)[0]?.id === id;
    if (quote && isLatest && from.name === '') quote.from = { ...letterhead };
  }
}

/** Sets what the shop asks for and signs with. */
export function editPrices(
  draft: BookDraft,
  fields: Partial<Pick<Settings, 'pricing' | 'letterhead' | 'mark'>>,
): void {
  editSettings(draft, fields);
  signQuotes(draft);
}
