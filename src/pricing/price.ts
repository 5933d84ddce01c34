import type { Aim, Order, PriceLine, Pricing } from '../model';
import { asMinor, type Micrometres, type Minor, sum, um } from '../units';
import { factorOf, marginOf, markupOf, reached } from './earned';

/** A transfer of an order, to be priced. */
export interface Print {
  readonly transfer: string;
  readonly name: string;
  /** Transfers of one design have one key. */
  readonly design: string;
  /** Transfers of one printed size have one key. */
  readonly size: string;
  /** Copies that are charged; spares are not. */
  readonly count: number;
  /** What all its copies, spares too, cost before rounding, garments aside. */
  readonly cost: number;
  /** Film for all of them, waste included. */
  readonly length: Micrometres;
}

/** Garments of one style and colour. */
export interface PricedGarments {
  readonly name: string;
  readonly count: number;
  /** What one costs the shop; `null` where that is not known. */
  readonly cost: Minor | null;
}

/** An order's price, its lines summing to it, and what it earns. */
export interface Price {
  readonly lines: readonly PriceLine[];
  /** The sum of the lines. */
  readonly subtotal: Minor;
  /** What the shop keeps: without tax. */
  readonly net: Minor;
  readonly tax: (NonNullable<Pricing['tax']> & { readonly amount: Minor }) | null;
  /** What the customer pays. */
  readonly total: Minor;
  readonly deposit: Minor;
  readonly cost: Minor;
  readonly margin: number | null;
  readonly markup: number | null;
  readonly aim: Aim;
  readonly problem: 'below-cost' | 'below-aim' | 'no-garment-price' | null;
}

/** Up to the next whole minor unit, past what floats are off by. */
const roundedUp = (value: number): Minor => asMinor(Math.ceil(value - 1e-6));

/**
 * What one print costs the customer, by its size. Prints of one size cost the same, whatever ink or spares each takes: they share what
 * all of them cost.
 */
function pricesBySize(prints: readonly Print[], pricing: Pricing, aim: Aim): ReadonlyMap<string, Minor> {
  const bySize = new Map<string, Pick<Print, 'cost' | 'count' | 'length'>>();
  for (const { size, cost, count, length } of prints) {
    const known = bySize.get(size);
    bySize.set(size, {
      cost: (known?.cost ?? 0) + cost,
      count: (known?.count ?? 0) + count,
      length: um((known?.length ?? 0) + length),
    });
  }
  return new Map([...bySize].map(([size, all]) => [size, eachOf(all, pricing, aim)]));
}

function eachOf(
  { cost, count, length }: Pick<Print, 'cost' | 'count' | 'length'>,
  pricing: Pricing,
  aim: Aim,
): Minor {
  switch (pricing.by) {
    case 'cost':
      return roundedUp((cost * factorOf(aim)) / count);
    case 'placement':
      return pricing.placement;
    case 'length':
      return roundedUp(((length / count) * pricing.length.amount) / pricing.length.per);
  }
}

/** What comes off for many: the largest break that a count reaches. */
const breakFor = (count: number, { breaks }: Pricing) =>
  breaks
    .filter(({ from }) => from <= count)
    .reduce<Pricing['breaks'][number] | null>(
      (best, each) => (best && best.from > each.from ? best : each),
      null,
    );

type PrintLine = Extract<PriceLine, { kind: 'print' }>;

function breakLines(
  prints: readonly { readonly print: Print; readonly line: PrintLine }[],
  pricing: Pricing,
): PriceLine[] {
  const groups = new Map<string | null, { count: number; amount: number; name: string | null }>();
  for (const { print, line } of prints) {
    const key = pricing.breaksBy === 'order' ? null : print.design;
    const group = groups.get(key) ?? { count: 0, amount: 0, name: key === null ? null : print.name };
    group.count += line.count;
    group.amount += line.amount;
    groups.set(key, group);
  }
  return [...groups.values()].flatMap(({ count, amount, name }): PriceLine[] => {
    const reachedBreak = breakFor(count, pricing);
    if (!reachedBreak || reachedBreak.off === 0) return [];
    const { from, off: share } = reachedBreak;
    return [{ kind: 'break', from, share, name, amount: asMinor(-amount * share) }];
  });
}

/**
 * Prices an order. What one print or garment costs the customer is whole and rounded up, the same for every print of one size, so that
 * lines are count times price, and the total is their sum;
 * every surcharge, discount and the tax is rounded once.
 * @param cost all that the order costs the shop
 */
export function priceOf({
  pricing,
  order,
  prints,
  garments,
  newDesigns,
  cost,
}: {
  readonly pricing: Pricing;
  readonly order: Pick<Order, 'rush' | 'supplied' | 'pricing'>;
  readonly prints: readonly Print[];
  readonly garments: readonly PricedGarments[];
  readonly newDesigns: number;
  readonly cost: Minor;
}): Price {
  const aim = order.pricing.aim ?? pricing.aim;
  const charged = prints.filter(({ count }) => count > 0);
  const prices = pricesBySize(charged, pricing, aim);
  const printLines = charged.map((print) => {
    const { transfer: id, name, count, size } = print;
    const each = prices.get(size) ?? asMinor(0);
    return {
      print,
      line: { kind: 'print' as const, id, name, count, each, amount: asMinor(count * each) },
    };
  });
  const garmentLines = order.supplied
    ? []
    : garments.flatMap(({ name, count, cost: own }): PriceLine[] => {
        if (own === null || count === 0) return [];
        const each = roundedUp(own * factorOf(aim));
        return [{ kind: 'garments', id: `${name} ${own}`, name, count, each, amount: asMinor(count * each) }];
      });
  const brought = order.supplied ? sum(garments.map(({ count }) => count)) : 0;
  const goods: PriceLine[] = [...printLines.map(({ line }) => line), ...garmentLines];
  const fee: PriceLine[] =
    pricing.artworkFee > 0 && newDesigns > 0
      ? [
          {
            kind: 'artwork-fee',
            count: newDesigns,
            each: pricing.artworkFee,
            amount: asMinor(newDesigns * pricing.artworkFee),
          },
        ]
      : [];
  const lines: PriceLine[] = [...goods, ...breakLines(printLines, pricing)];
  if (brought > 0) lines.push({ kind: 'supplied', count: brought, amount: asMinor(0) });
  const so = () => sum(lines.map(({ amount }) => amount));
  const { discount } = order.pricing;
  if (discount > 0) lines.push({ kind: 'discount', share: discount, amount: asMinor(-so() * discount) });
  lines.push(...fee);
  if (order.rush && pricing.rush > 0) {
    lines.push({ kind: 'rush', share: pricing.rush, amount: asMinor(so() * pricing.rush) });
  }
  if (goods.length > 0 && so() < pricing.minimum) {
    lines.push({ kind: 'minimum', amount: asMinor(pricing.minimum - so()) });
  }
  const subtotal = asMinor(so());
  const tax = taxOn(subtotal, pricing.tax);
  const net = tax?.kind === 'included' ? asMinor(subtotal - tax.amount) : subtotal;
  const total = asMinor(net + (tax?.amount ?? 0));
  const isUnpriced = !order.supplied && garments.some((each) => each.cost === null && each.count > 0);
  return {
    lines,
    subtotal,
    net,
    tax,
    total,
    deposit: asMinor(total * pricing.deposit),
    cost,
    margin: marginOf(net, cost),
    markup: markupOf(net, cost),
    aim,
    problem: isUnpriced ? 'no-garment-price' : problemOf(net, cost, aim),
  };
}

/** Half a thousandth: less is not seen in a percentage. */
const UNSEEN = 0.0005;

function problemOf(net: Minor, cost: Minor, aim: Aim): Price['problem'] {
  if (net < cost) return 'below-cost';
  const got = reached(aim, net, cost);
  return got !== null && got < aim.share - UNSEEN ? 'below-aim' : null;
}

/** Tax on a sum, or in it: `sum x rate / (1 + rate)`; rounded once. */
function taxOn(subtotal: Minor, tax: Pricing['tax']): Price['tax'] {
  if (!tax) return null;
  const share = tax.kind === 'on-top' ? tax.share : tax.share / (1 + tax.share);
  return { ...tax, amount: asMinor(subtotal * share) };
}

/** What becomes of the margin when the price goes up or down by some shares. */
export const marginsAround = ({ net, cost }: Pick<Price, 'net' | 'cost'>, changes: readonly number[]) =>
  changes.map((change) => ({
    change,
    price: asMinor(net * (1 + change)),
    margin: marginOf(net * (1 + change), cost),
  }));
