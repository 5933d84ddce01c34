import { changeRecords, inReceived, inSettings, inSnapshots } from './change-records';
import { isObject, type Migration } from './stored';

type Stored = Record<string, unknown>;

/** What a test strip had told, and the image's way through the printer: a strip that nobody printed says this. */
const UNTOLD = { firstEnd: 'lead', inkUp: 'mirrored', feed: 1, mirrored: false };
const PRINTER = 'printer-1';
const MOST = 20;

/** What the shop's only printer was told to be in other settings. */
function toldOf(settings: unknown): Stored {
  if (!isObject(settings)) return UNTOLD;
  const { printer, printImage } = settings;
  const mirrored = isObject(printImage) ? { mirrored: printImage.mirrored } : {};
  return { ...UNTOLD, ...(isObject(printer) ? printer : {}), ...mirrored };
}

/** So many machines that are alike, or people, named by their numbers. */
const alike = (kind: string, count: unknown, one: Stored): Stored[] =>
  Array.from({ length: typeof count === 'number' ? Math.min(Math.max(0, count), MOST) : 1 }, (_, at) => ({
    id: `${kind}-${at + 1}`,
    name: '',
    ...one,
  }));

const withMachines =
  (told: Stored) =>
  (station: Stored): Stored => {
    const { printer, hands, press, oven, ...rest } = station;
    if (!isObject(printer) || !isObject(press) || !isObject(oven)) return station;
    const { count, large, ...onePress } = press;
    return {
      ...rest,
      printers: alike('printer', 1, { ...printer, ...told }),
      presses: alike('press', count, onePress),
      large,
      ovens: alike('oven', 1, { bed: oven }),
      people: alike('person', hands, { hours: null }),
    };
  };

const inPrinter = (film: unknown): unknown => (isObject(film) ? { ...film, printer: PRINTER } : film);

const withPrinter = (snapshot: Stored): Stored =>
  isObject(snapshot.film) ? { ...snapshot, film: inPrinter(snapshot.film), printer: null } : snapshot;

function withoutPrinter({ printer: _, ...settings }: Stored): Stored {
  if (!isObject(settings.printImage)) return settings;
  const { mirrored: __, ...printImage } = settings.printImage;
  return { ...settings, printImage };
}

/** Version 45 knows printers, presses, ovens and people one by one, which film is in which printer, and whose a test strip is. */
export const nameMachines: Migration = (records) => {
  const ofShop = withMachines(toldOf(records.get('settings/shop')));
  return changeRecords({
    settings: (settings) => withoutPrinter(inSettings(settings, withMachines(toldOf(settings)))),
    film: inPrinter,
    run: (run) => inReceived(inSnapshots(run, withPrinter), ofShop),
    calibration: (change) => ({ ...change, printer: change.quantity === 'printer' ? PRINTER : null }),
  })(records);
};
