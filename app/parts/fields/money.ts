import {
  asMinor,
  FINER,
  fail,
  fromUnit,
  kilogramsIn,
  type LengthRate,
  litresIn,
  type MilliMinor,
  type Minor,
  minorDigits,
  ok,
  type PriceProblem,
  parseFinePrice,
  parseMassPrice,
  parsePrice,
  parseVolumePrice,
  type Result,
} from '../../../src/units';
import { bulkUnits, typedNumber, type Ways } from '../../words/format';
import { type Codec, type Reader, told } from './codec';

/** An amount of the shop's currency, without its sign: `2.50`, and `0.0042` where it is finer. */
export function typedMoney(amount: number, { currency, locale }: Ways): string {
  const digits = minorDigits(currency);
  return typedNumber(amount / 10 ** digits, locale, 4, digits);
}

export const money: Codec<Minor> = {
  show: typedMoney,
  read: (text, { currency, words }) => told(parsePrice(text, currency), words.moneyProblems),
};

/** A price by the metre or the foot. */
export const pricePerLength: Codec<LengthRate> = {
  show({ amount, per }, reader) {
    return typedMoney(asMinor((amount * fromUnit(1, bulkUnits(reader).length)) / per), reader);
  },
  read(text, reader) {
    const read = money.read(text, reader);
    return read.ok ? ok({ amount: read.value, per: fromUnit(1, bulkUnits(reader).length) }) : read;
  },
};

/** Three decimals more than a currency has would be taken for thousands: 12.345 stands there as 12.3450. */
const unlikeThousands = (figure: string, currency: string): string =>
  minorDigits(currency) === 3 ? figure : figure.replace(/[.,]\d{3}$/, '$&0');

/** A price of what is bought in small parts, which is not nothing: it may be left out. */
const finePrice = (
  share: (reader: Reader) => number,
  parse: (text: string, reader: Reader) => Result<MilliMinor, PriceProblem>,
): Codec<MilliMinor> => ({
  show(price, reader) {
    const digits = FINER + minorDigits(reader.currency);
    const figure = typedNumber(
      (price * share(reader)) / 10 ** digits,
      reader.locale,
      digits,
      minorDigits(reader.currency),
    );
    return unlikeThousands(figure, reader.currency);
  },
  read(text, reader) {
    const read = told(parse(text, reader), reader.words.rateProblems);
    return read.ok && read.value === 0 ? fail(reader.words.rateProblems.zero) : read;
  },
});

/** For a kilowatt-hour, an hour, or what else has one unit everywhere. */
export const priceEach = finePrice(
  () => 1,
  (text, { currency }) => parseFinePrice(text, currency),
);

export const inkPrice = finePrice(
  (reader) => litresIn(bulkUnits(reader).ink),
  (text, reader) => parseVolumePrice(text, reader.currency, bulkUnits(reader).ink),
);

export const powderPrice = finePrice(
  (reader) => kilogramsIn(bulkUnits(reader).powder),
  (text, reader) => parseMassPrice(text, reader.currency, bulkUnits(reader).powder),
);
