import { isNoStep, isObject, type Migration } from './stored';

/**
 * Up to version 14 an order kept its last quote's number, days, total and notes. From version 15 on quotes are records of their own, whole;
 * of an older one the lines are not known. Undo begins anew.
 */
export const keepQuotes: Migration = (records) => {
  const settings = records.get('settings/shop');
  const shop = isObject(settings) ? settings : {};
  const language = shop.language === 'es' ? 'es' : 'en';
  const withoutQuote = (order: unknown) => {
    if (!isObject(order)) return order;
    const { quote: _, ...rest } = order;
    return rest;
  };
  return new Map(
    [...records].filter(isNoStep).flatMap(([key, value]): (readonly [string, unknown])[] => {
      if (!isObject(value)) return [[key, value]];
      if (key.startsWith('run/') && isObject(value.snapshot) && Array.isArray(value.snapshot.orders)) {
        const { snapshot } = value;
        const orders = value.snapshot.orders.map(withoutQuote);
        return [[key, { ...value, snapshot: { ...snapshot, orders } }]];
      }
      if (!key.startsWith('order/')) return [[key, value]];
      if (!isObject(value.quote)) return [[key, withoutQuote(value)]];
      const id = `first-${key.slice('order/'.length)}`;
      const quote = {
        ...value.quote,
        id,
        order: value.id,
        language,
        locale: language,
        currency: shop.currency,
        from: shop.letterhead,
        for: { name: value.name, contact: value.contact },
        content: null,
        changed: value.changed,
      };
      return [
        [key, withoutQuote(value)],
        [`quote/${id}`, quote],
      ];
    }),
  );
};
