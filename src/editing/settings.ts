import type { Film, Settings } from '../model';
import { asMinor, type Minor, minorDigits } from '../units';
import type { BookDraft } from './step';

export function editSettings(draft: BookDraft, fields: Partial<Omit<Settings, 'changed'>>): void {
  const { shop } = draft.settings;
  if (shop) Object.assign(shop, fields);
}

/**
 * Changes the currency. Nothing is converted: prices keep their figures, as near as the decimals of the new currency allow,
 * also in what locked runs embed.
 */
export function changeCurrency(draft: BookDraft, currency: string): void {
  const { shop } = draft.settings;
  if (!shop || shop.currency === currency) return;
  const scale = 10 ** (minorDigits(currency) - minorDigits(shop.currency));
  const sameFigure = (amount: Minor): Minor => asMinor(amount * scale);
  const films: Film[] = [
    ...Object.values(draft.film),
    ...Object.values(draft.run).flatMap(({ snapshot }) => snapshot?.film ?? []),
  ];
  for (const film of films) {
    if (film.kind === 'roll') film.price.amount = sameFigure(film.price.amount);
    else film.price = sameFigure(film.price);
  }
  shop.currency = currency;
}
