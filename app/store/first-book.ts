import { startingCosts, startingRates } from '../../src/costing';
import { addDemoDay } from '../../src/demo';
import { applyEdit, type FilmFields, setPlaces, startBook } from '../../src/editing';
import { placesOf, problemOf } from '../../src/layout';
import {
  type Book,
  emptyBook,
  type Instant,
  type Language,
  rollWidths,
  runOf,
  type Settings,
} from '../../src/model';
import { createPlanner } from '../../src/packing';
import { startingStation } from '../../src/pressing';
import { startingPricing } from '../../src/pricing';
import type { Source } from '../../src/storage';
import { asMinor, fromMm, fromUnit, type Micrometres, minorDigits } from '../../src/units';
import { languageNow, localeNow, wordsNow } from '../words';
import { typedLength } from '../words/format';
import { editContext } from './shop';
import { dayFrom } from './today';

const EURO = [
  'AT',
  'BE',
  'CY',
  'DE',
  'EE',
  'ES',
  'FI',
  'FR',
  'GR',
  'HR',
  'IE',
  'IT',
  'LT',
  'LU',
  'LV',
  'MT',
  'NL',
  'PT',
  'SI',
  'SK',
];

const currencies: Readonly<Record<string, string>> = {
  ...Object.fromEntries(EURO.map((region) => [region, 'EUR'])),
  AU: 'AUD',
  CA: 'CAD',
  CH: 'CHF',
  DK: 'DKK',
  GB: 'GBP',
  JP: 'JPY',
  MX: 'MXN',
  NO: 'NOK',
  NZ: 'NZD',
  PL: 'PLN',
  SE: 'SEK',
};

/** How a shop of this region most likely measures and pays; all of it can be changed. */
export function firstSettings(locale: string, language: Language): Omit<Settings, 'changed'> {
  const region = new Intl.Locale(locale).maximize().region ?? '';
  const currency = currencies[region] ?? 'USD';
  return {
    language,
    unit: region === 'US' ? 'in' : 'mm',
    currency,
    dateOrder: null,
    paper: ['US', 'CA', 'MX'].includes(region) ? 'letter' : 'a4',
    mapView: 'ink-up',
    mapPaper: { landscape: false, large: false, perSpan: false, pictures: true },
    printer: { firstEnd: 'lead', inkUp: 'mirrored', feed: 1 },
    limits: { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0.2) },
    printImage: { form: 'png', ppi: 300, mirrored: false, ticks: false, numbers: false },
    station: startingStation(region === 'US' ? 'F' : 'C'),
    shelfFirst: true,
    rates: startingRates,
    costs: startingCosts(currency),
    pricing: startingPricing(currency),
    alternatives: [],
    letterhead: { name: '', address: '' },
    lastBackup: null,
    columns: {},
  };
}

/** A desktop printer's roll, whole (common practice, no source); the price is the shop's to set. */
export const firstFilm = (currency: string): FilmFields => ({
  kind: 'roll',
  name: wordsNow().filmForm.firstFilm,
  width: rollWidths['roll-13in'],
  margins: { left: fromMm(5), right: fromMm(5), lead: fromMm(10), tail: fromMm(10) },
  lengthLeft: fromUnit(60, 'm'),
  price: { amount: asMinor(8.4 * 10 ** minorDigits(currency)), per: fromUnit(1, 'm') },
  gap: fromMm(5),
  cutting: 'free',
  together: { kind: 'any' },
  peel: 'hot',
  spanMax: fromMm(480),
  curl: fromMm(0),
  jobBlank: fromMm(0),
  cutBlank: fromMm(0),
  unreached: fromMm(400),
  noPrint: [],
  archived: false,
});

/** What a book begins with: a roll and a run, and for the demo day its orders, laid out once so that nobody finds it bare. */
export function firstBook(source: Source): Book {
  const context = editContext();
  const settings = firstSettings(navigator.language, languageNow());
  const { book } = applyEdit(
    emptyBook,
    (draft) => {
      startBook(
        draft,
        { settings, film: firstFilm(settings.currency), runName: wordsNow().film.firstRun },
        context,
      );
      if (source === 'demo') {
        const ways = { ...settings, locale: localeNow() };
        const typed = (length: Micrometres) => `${typedLength(length, ways)} ${ways.unit}`;
        addDemoDay(draft, { dayFrom, unit: ways.unit, words: wordsNow().demo, typed }, context);
      }
    },
    context.now,
  );
  return source === 'demo' ? laidOnce(book, context.now) : book;
}

/** A book with the first layout of its only run. */
function laidOnce(book: Book, now: Instant): Book {
  const open = runOf(book, null);
  if (!open) return book;
  const { run, film } = open;
  const own = problemOf(book, run, film, 'pinned');
  const plan = createPlanner(own.problem, 1).best();
  return applyEdit(book, (draft) => setPlaces(draft, run.id, placesOf(plan, own, film)), now).book;
}
