export { type DateOrder, type DateProblem, type LocalDate, parseDate } from './date';
export {
  fromInches,
  fromMm,
  fromUnit,
  type LengthProblem,
  type LengthUnit,
  type Micrometres,
  nearestSixteenth,
  parseLength,
  type TapeInches,
  toInches,
  toMm,
  toUnit,
  um,
  unitNamed,
} from './length';
export {
  asMinor,
  costOf,
  type LengthRate,
  type Minor,
  type MoneyProblem,
  minorDigits,
  parseMoney,
} from './money';
export { fail, ok, type Result } from './result';
