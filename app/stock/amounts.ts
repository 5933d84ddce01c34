import type { StockUnit } from '../../src/model';
import {
  fail,
  fromUnit,
  ok,
  parseLength,
  parseMass,
  parseVolume,
  type Result,
  toMass,
  toVolume,
} from '../../src/units';
import { wordsNow } from '../words';
import type { Ways } from '../words/format';

/** The unit a roll's length is told in. */
export const rollUnit = ({ unit }: Ways) => (unit === 'mm' ? 'm' : 'ft');

/** The unit that a bare figure of an amount is in, as a label names it. */
export const unitLabel = (unit: StockUnit, ways: Ways): string => {
  const labels = { length: rollUnit(ways), sheets: '', volume: 'ml', mass: 'g', pieces: '' };
  return labels[unit];
};

/** Reads an amount as typed, with or without its unit: whole, in the item's base unit, not below zero; or says why it is none. */
export function readAmount(text: string, unit: StockUnit, ways: Ways): Result<number, string> {
  const words = wordsNow();
  const told = <Problem extends string>(
    read: Result<number, Problem>,
    sentences: Readonly<Record<Problem, string>>,
  ) => (read.ok ? ok(read.value) : fail(sentences[read.problem]));
  switch (unit) {
    case 'length':
      return told(parseLength(text, rollUnit(ways), 'zero'), words.lengthProblems);
    case 'volume':
      return told(parseVolume(text, 'ml'), words.closing.amountProblems);
    case 'mass':
      return told(parseMass(text, 'g'), words.closing.amountProblems);
    default:
      return /^\s*\d{1,6}\s*$/.test(text) ? ok(Number(text)) : fail(words.stock.wholeNumber);
  }
}

/** An amount as it is typed back into a field. */
export function typedAmount(amount: number, unit: StockUnit, ways: Ways): string {
  const value = {
    length: () => amount / fromUnit(1, rollUnit(ways)),
    sheets: () => amount,
    volume: () => toVolume(amount as Parameters<typeof toVolume>[0], 'ml'),
    mass: () => toMass(amount as Parameters<typeof toMass>[0], 'g'),
    pieces: () => amount,
  }[unit]();
  return new Intl.NumberFormat(ways.locale, { useGrouping: false, maximumFractionDigits: 3 }).format(value);
}
