import { startingRates } from '../costing/rates';
import { startingCosts } from '../costing/starting';
import type { Language, Settings } from '../model';
import { startingStation } from '../pressing/starting';
import { startingPricing } from '../pricing/starting';
import { fromInches, fromMm } from '../units';

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

/** From which widths on film is trusted, in round figures of the unit (common practice, no source). */
const limits: Readonly<Record<Settings['unit'], Settings['limits']>> = {
  mm: { stroke: fromMm(0.5), opening: fromMm(0.8), choke: fromMm(0.2), white: fromMm(0.2) },
  in: {
    stroke: fromInches(0.02),
    opening: fromInches(0.032),
    choke: fromInches(0.008),
    white: fromInches(0.008),
  },
};

/** How a shop of this region most likely measures and pays; all of it can be changed. */
export function firstSettings(locale: string, language: Language): Omit<Settings, 'changed'> {
  const region = new Intl.Locale(locale).maximize().region ?? '';
  const currency = currencies[region] ?? 'USD';
  const unit = region === 'US' ? 'in' : 'mm';
  return {
    language,
    unit,
    currency,
    dateOrder: null,
    paper: ['US', 'CA', 'MX'].includes(region) ? 'letter' : 'a4',
    mapView: 'ink-up',
    mapPaper: { landscape: false, large: false, perSpan: false, pictures: true },
    limits: limits[unit],
    printImage: {
      form: 'png',
      ppi: 300,
      ticks: false,
      numbers: false,
      names: false,
      corners: false,
      feedCorrected: false,
      white: false,
      whiteName: 'White',
    },
    cutFile: { form: 'svg', view: 'ink-up' },
    station: startingStation(region === 'US' ? 'F' : 'C', unit),
    runOrder: [],
    shelfFirst: true,
    rates: startingRates[unit],
    costs: startingCosts(currency),
    pricing: startingPricing(currency, unit),
    alternatives: [],
    letterhead: { name: '', address: '' },
    mark: null,
    lastBackup: null,
    columns: {},
    tables: {},
  };
}
