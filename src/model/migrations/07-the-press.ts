import { isNoStep, isObject, type Migration, withInSnapshot } from './stored';

/** The equipment of a desktop printer with one press: what version 7 begins with. */
const firstStation = {
  temperature: 'C',
  cutApart: 'after-cure',
  printer: { perHour: 2_500_000, warmUp: 240, check: 120 },
  hands: 1,
  press: { count: 1, platen: { width: 406_400, length: 508_000 }, warmUp: 720, rise: 3, fall: 8 },
  curer: 'press',
  oven: { width: 406_400, length: 508_000 },
  wetLimit: 300,
  handling: { cutOff: 30, powder: 75, load: 20, cutApart: 10, dress: 15, place: 8, pack: 15 },
  closes: '17:00',
};

const forOrder = { fabric: 'cotton', wants: 'garments' };
const forCopy = { shelved: false };
const forFilm = { peel: 'hot' };
const inSnapshot = { film: forFilm, orders: forOrder, copies: forCopy };

/** Version 6 ended at the printer. Version 7 goes on: fabrics, peeling, the shop's equipment, and when a run came to each state. */
export const goOnToThePress: Migration = (records) =>
  new Map(
    [...records].filter(isNoStep).map(([key, value]) => {
      if (!isObject(value)) return [key, value];
      switch (key.slice(0, key.indexOf('/'))) {
        case 'order':
          return [key, { ...forOrder, ...value }];
        case 'copy':
          return [key, { ...forCopy, ...value }];
        case 'film':
          return [key, { ...forFilm, ...value }];
        case 'run':
          return [key, { history: [], ...value, snapshot: withInSnapshot(value.snapshot, inSnapshot) }];
        case 'settings': {
          const temperature = value.unit === 'in' ? 'F' : 'C';
          return [key, { station: { ...firstStation, temperature }, ...value }];
        }
        default:
          return [key, value];
      }
    }),
  );
