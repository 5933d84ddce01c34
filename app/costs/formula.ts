import type { CostLine, CostShare, CostSheet, Factor, Formula } from '../../src/costing';
import { asMinor } from '../../src/units';
import type { Words } from '../words';
import {
  bulkVolume,
  energyPrice,
  filmLength,
  fineMoney,
  lengthPrice,
  massPrice,
  massRate,
  money,
  percent,
  printedArea,
  tenths,
  timePrice,
  volumePrice,
  volumeRate,
  type Ways,
  whole,
} from '../words/format';

/** A factor in the reader's language and units. */
function tellFactor(factor: Factor, words: Words['costSheet'], ways: Ways): string {
  switch (factor.of) {
    case 'length':
      return filmLength(factor.value, ways);
    case 'length-price':
      return lengthPrice(factor, ways);
    case 'count':
      return words.count[factor.what](factor.value, ways);
    case 'each':
      return words.eachOne(money(factor.price, ways));
    case 'area':
      return printedArea(factor.value, ways);
    case 'volume':
      return words.volumes[factor.for](bulkVolume(factor.value, ways));
    case 'volume-rate':
      return volumeRate(factor.value, ways);
    case 'mass-rate':
      return massRate(factor.value, ways);
    case 'volume-price':
      return volumePrice(factor.price, ways);
    case 'mass-price':
      return massPrice(factor.price, ways);
    case 'energy-price':
      return energyPrice(factor.price, ways);
    case 'time-price':
      return timePrice(factor.price, ways);
    case 'power':
      return `${whole(factor.value, ways)} W`;
    case 'time':
      return tenths(factor.value, ways);
    case 'share':
      return percent(factor.value, ways);
    case 'money':
      return words.allElse(money(asMinor(factor.value), ways));
  }
}

/** Decimals beyond the currency's that a result is told with where it is not the amount it counts as. */
const FINE = 2;

/** A result; finer where rounding it does not give the amount that it counts as. */
const result = (exact: number, amount: number, ways: Ways): string =>
  asMinor(exact) === amount ? money(asMinor(exact), ways) : fineMoney(exact, ways, FINE);

const isZero = (term: Formula[number]): boolean =>
  term.some(
    (factor) =>
      (factor.of === 'count' || factor.of === 'area' || factor.of === 'volume') && factor.value === 0,
  );

/** A line of the run's sheet: its formula with the figures in it. */
export function tellLine(line: CostLine, words: Words['costSheet'], ways: Ways): readonly string[] {
  if (line.gap) return [words.gaps[line.gap]];
  const told = line.formula.filter((term) => !isZero(term));
  const terms = (told.length > 0 ? told : line.formula).map((term) =>
    term.map((factor) => tellFactor(factor, words, ways)).join(' × '),
  );
  return [
    words.formula(terms, result(line.exact, line.amount, ways)),
    ...(asMinor(line.exact) === line.amount ? [] : [words.counted(money(line.amount, ways))]),
    ...(line.fixed > 0 ? [words.fixedNote(money(asMinor(line.fixed), ways))] : []),
  ];
}

/** What of a line an order, a transfer or a copy bears. */
export function tellShare(
  sheet: CostSheet,
  share: CostShare,
  at: number,
  words: Words['costSheet'],
  ways: Ways,
): readonly string[] {
  const line = sheet.lines[at];
  if (!line) return [];
  if (line.gap) return [words.gaps[line.gap]];
  const exact = share.exact[at] ?? 0;
  const amount = share.lines[at] ?? 0;
  const part = line.exact > 0 ? exact / line.exact : 0;
  return [
    words.shared(money(line.amount, ways), percent(part, ways), line.sharedBy, result(exact, amount, ways)),
    ...(asMinor(exact) === amount ? [] : [words.counted(money(asMinor(amount), ways))]),
  ];
}
