import type { Draft } from 'immer';
import type { Alternative, Costs, Film, Pricing, RunUse } from '../model';
import { keysOf, minorDigits } from '../units';
import type { BookDraft } from './step';

/** Keeps a figure in another currency's units; nothing stays nothing. */
type Keep = <Amount extends number | null>(amount: Amount) => Amount;

function keepFilm(film: Draft<Film>, keep: Keep): void {
  if (film.kind === 'roll') film.price.amount = keep(film.price.amount);
  else film.price = keep(film.price);
}

function keepCosts(costs: Draft<Costs>, keep: Keep): void {
  for (const name of ['colourInk', 'whiteInk', 'powder', 'energy', 'blank'] as const) {
    Object.assign(costs, { [name]: keep(costs[name]) });
  }
  for (const room of keysOf(costs.labour)) {
    costs.labour[room] = keep(costs.labour[room]);
  }
  for (const blank of costs.blanks) blank.price = keep(blank.price);
  if (costs.overhead.kind === 'hour') costs.overhead.rate = keep(costs.overhead.rate);
}

function keepPricing(pricing: Draft<Pricing>, keep: Keep): void {
  for (const name of ['placement', 'artworkFee', 'minimum'] as const) pricing[name] = keep(pricing[name]);
  pricing.length.amount = keep(pricing.length.amount);
}

function keepAlternative(alternative: Draft<Alternative>, keep: Keep): void {
  alternative.shipping = keep(alternative.shipping);
  if (alternative.kind === 'length') alternative.price.amount = keep(alternative.price.amount);
  else alternative.price = keep(alternative.price);
  if (alternative.kind === 'decorated') alternative.setUp = keep(alternative.setUp);
}

function keepUse({ film, orders }: Draft<RunUse>, keep: Keep): void {
  if (film.kind === 'roll') film.price.amount = keep(film.price.amount);
  else film.price = keep(film.price);
  for (const order of orders) {
    order.replacement = keep(order.replacement);
    for (const garment of order.garments) garment.price = keep(garment.price);
  }
}

/**
 * Changes the currency. Nothing is converted: prices keep their figures, as near as the decimals of the new currency allow,
 * also in what locked runs embed. A quote that was given stays in the currency it was given in.
 */
export function changeCurrency(draft: BookDraft, currency: string): void {
  const { shop } = draft.settings;
  if (!shop || shop.currency === currency) return;
  const scale = 10 ** (minorDigits(currency) - minorDigits(shop.currency));
  const keep: Keep = (amount) =>
    amount === null
      ? amount
      : // What has a price does not become free.
        (Math.max(amount > 0 ? 1 : 0, Math.round(amount * scale)) as typeof amount);
  for (const film of Object.values(draft.film)) keepFilm(film, keep);
  for (const garment of Object.values(draft.garment)) garment.price = keep(garment.price);
  for (const run of Object.values(draft.run)) {
    for (const { film } of run.printed?.as ?? []) keepFilm(film, keep);
    if (run.state === 'draft') continue;
    keepFilm(run.snapshot.film, keep);
    if (!run.basis) continue;
    keepCosts(run.basis.costs, keep);
    keepUse(run.basis.use, keep);
  }
  keepCosts(shop.costs, keep);
  keepPricing(shop.pricing, keep);
  for (const alternative of shop.alternatives) keepAlternative(alternative, keep);
  shop.currency = currency;
}
