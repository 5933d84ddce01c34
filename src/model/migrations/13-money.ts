import { minorDigits } from '../../units';
import { isNoStep, isObject, type Migration, withInSnapshot } from './stored';

/** What version 13 begins with, in a currency's own units. */
function firstPrices(currency: string) {
  const unit = 10 ** (/^[A-Z]{3}$/.test(currency) ? minorDigits(currency) : 2);
  const money = (amount: number) => Math.round(amount * unit);
  const fine = (amount: number) => Math.round(amount * unit * 1000);
  const hour = fine(18);
  return {
    costs: {
      filmBy: 'footprint',
      colourInk: fine(150),
      whiteInk: fine(160),
      powder: fine(35),
      maintenance: { day: 6_000, runsADay: 2, cleaning: 3_000, cleanings: 1 },
      energy: fine(0.2),
      watts: { printer: 150, oven: 1500, press: 1400 },
      labour: { artwork: hour, printing: hour, cutting: hour, pressing: hour, packing: hour },
      artworkTime: { order: 180, design: 420 },
      blank: money(4.5),
      blanks: [],
      spoilage: 0.03,
      overhead: { kind: 'hour', rate: fine(6) },
    },
    pricing: {
      aim: { kind: 'margin', share: 0.5 },
      by: 'cost',
      placement: money(6),
      length: { amount: money(30), per: 1_000_000 },
      artworkFee: money(15),
      breaks: [
        { from: 24, off: 0.05 },
        { from: 48, off: 0.1 },
      ],
      breaksBy: 'order',
      rush: 0.25,
      minimum: money(25),
      deposit: 0.5,
      tax: null,
      validDays: 30,
      nextQuote: 1,
    },
    alternatives: [],
    letterhead: { name: '', address: '' },
  };
}

/** Version 12 knew what film costs. Version 13 knows the other costs, prices and quotes; the values to start with are common practice. */
export const countMoney: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      const order = { supplied: false, pricing: { aim: null, newDesigns: null, discount: 0 }, quote: null };
      const garment = { price: null };
      switch (key.slice(0, key.indexOf('/'))) {
        case 'order':
          return [key, { ...order, ...value }];
        case 'garment':
          return [key, { ...garment, ...value }];
        case 'run':
          return [
            key,
            {
              basis: null,
              ...value,
              snapshot: withInSnapshot(value.snapshot, { orders: order, garments: garment }),
            },
          ];
        case 'settings':
          return [key, { ...firstPrices(String(value.currency)), ...value }];
        default:
          return [key, value];
      }
    }),
  );
