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
  toInches,
  toMm,
  toUnit,
  um,
  unitNamed,
} from './length';
export {
  asMinor,
  costOf,
  type Minor,
  type MoneyProblem,
  minorDigits,
  parseMoney,
} from './money';
export { fail, ok, type Result } from './result';
