import type { Heater, LabourRoom } from '../model';
import type { Microlitres, Micrometres, Milligrams, MilliMinor, Minor, Seconds } from '../units';

/** What a count in a formula counts. */
type Counted = 'sheets' | 'garments' | 'orders' | 'designs';

/** A quantity or a price in a formula, in the units of `src`; the screen tells it in the reader's. */
export type Factor =
  | { readonly of: 'length'; readonly value: Micrometres }
  | { readonly of: 'length-price'; readonly amount: Minor; readonly per: Micrometres }
  | { readonly of: 'count'; readonly what: Counted; readonly value: number }
  | { readonly of: 'each'; readonly price: Minor }
  /** In square millimetres. */
  | { readonly of: 'area'; readonly value: number }
  /** For a square metre. */
  | { readonly of: 'volume-rate'; readonly value: Microlitres }
  | { readonly of: 'mass-rate'; readonly value: Milligrams }
  | { readonly of: 'volume'; readonly value: number; readonly for: 'day' | 'cleanings' | 'start' }
  /** For a litre, a kilogram, a kilowatt-hour, an hour. */
  | { readonly of: 'volume-price'; readonly price: MilliMinor }
  | { readonly of: 'mass-price'; readonly price: MilliMinor }
  | { readonly of: 'energy-price'; readonly price: MilliMinor }
  | { readonly of: 'time-price'; readonly price: MilliMinor }
  /** In watts. */
  | { readonly of: 'power'; readonly value: number; readonly by: Heater }
  | { readonly of: 'time'; readonly value: Seconds; readonly at: Heater | LabourRoom | 'all' }
  | { readonly of: 'share'; readonly value: number }
  /** Minor units that are not rounded yet: the sum of other lines. */
  | { readonly of: 'money'; readonly value: number };

/** Factors that are multiplied. */
export type Term = readonly Factor[];

/** Terms that are summed. */
export type Formula = readonly Term[];

/** A factor in coherent units, so that a product of all is in minor units: m, m², l, kg, kW, h. */
function magnitude(factor: Factor): number {
  switch (factor.of) {
    case 'length':
      return factor.value / 1e6;
    case 'length-price':
      return (factor.amount / factor.per) * 1e6;
    case 'each':
      return factor.price;
    case 'area':
    case 'volume':
    case 'volume-rate':
    case 'mass-rate':
      return factor.value / 1e6;
    case 'volume-price':
    case 'mass-price':
    case 'energy-price':
    case 'time-price':
      return factor.price / 1000;
    case 'power':
      return factor.value / 1000;
    case 'time':
      return factor.value / 3600;
    case 'count':
    case 'share':
    case 'money':
      return factor.value;
  }
}

/** What a formula comes to, in minor units that are not rounded. */
export const worthOf = (formula: Formula): number =>
  formula.reduce((sum, term) => sum + term.reduce((product, factor) => product * magnitude(factor), 1), 0);
