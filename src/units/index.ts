export {
  type AmountProblem,
  asMicrolitres,
  asMilligrams,
  fromMass,
  fromVolume,
  type Microlitres,
  type Milligrams,
  parseMass,
  parseVolume,
  toMass,
  toVolume,
} from './amount';
export {
  type Angle,
  alsoByQuarters,
  angleOf,
  degreesOf,
  mayLieAt,
  parseAngle,
  QUARTER,
  quartersIn,
  TURNINGS,
  type Turning,
  turnedBy,
  UPRIGHT,
} from './angle';
export { countBy } from './count-by';
export { countOf } from './count-of';
export {
  type DateOrder,
  type DateProblem,
  isAmbiguous,
  isDay,
  type LocalDate,
  parseDate,
  utcDay,
} from './date';
export { asSeconds, type DurationProblem, fromMinutes, parseDuration, type Seconds } from './duration';
export { FABRICS, type Fabric } from './fabric';
export { groupBy } from './group-by';
export { type HoursProblem, parseHours } from './hours';
export { compareEach, inOrder } from './in-order';
export { keysOf } from './keys-of';
export { Latest } from './latest';
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
  withUnit,
  writtenLength,
} from './length';
export {
  asMilliMinor,
  asMinor,
  costOf,
  FINER,
  isCurrency,
  type LengthRate,
  type MilliMinor,
  type Minor,
  minorDigits,
  type PriceProblem,
  parseFinePrice,
  parseMoney,
  parsePrice,
} from './money';
export { onceFor } from './once-for';
export { onlyFields } from './only-fields';
export { seededRandom } from './random';
export { fail, ok, type Result } from './result';
export { parseShare, type ShareProblem } from './share';
export { sum } from './sum';
export {
  fromDegrees,
  parseTemperature,
  type Temperature,
  type TemperatureProblem,
  type TemperatureUnit,
  toDegrees,
} from './temperature';
export { isLocale, withoutAccents } from './text';
export { kilogramsIn, litresIn, parseMassPrice, parseVolumePrice } from './unit-price';
export { whileSame } from './while-same';
