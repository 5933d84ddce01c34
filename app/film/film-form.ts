import type { FilmFields } from '../../src/editing';
import type { Film } from '../../src/model';
import {
  fail,
  fromMm,
  fromUnit,
  type Micrometres,
  minorDigits,
  ok,
  parseLength,
  parseMoney,
  type Result,
  um,
} from '../../src/units';
import { words } from '../words';
import { typedLength, type Ways } from '../words/format';

/** The form's fields as typed. */
export interface FilmForm {
  readonly name: string;
  readonly width: string;
  readonly left: string;
  readonly right: string;
  readonly lead: string;
  readonly tail: string;
  readonly lengthLeft: string;
  readonly gap: string;
  /** Empty if the roll is not cut. */
  readonly spanMax: string;
  readonly price: string;
  readonly pricePer: string;
}

/** Sentences beside the fields they belong to. */
export type FilmProblems = Partial<Record<keyof FilmForm, string>>;

/** The unit a roll's length is told in. */
const rollUnit = ({ unit }: Ways) => (unit === 'mm' ? 'm' : 'ft');

const decimal = (value: number, { locale }: Ways, most: number) =>
  new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: most }).format(value);

export function formOf(film: Film, ways: Ways): FilmForm {
  const inRollUnit = (length: Micrometres) =>
    `${decimal(length / fromUnit(1, rollUnit(ways)), ways, 3)} ${rollUnit(ways)}`;
  const bench = (length: Micrometres) => `${typedLength(length, ways)} ${ways.unit}`;
  return {
    name: film.name,
    width: bench(film.width),
    left: bench(film.margins.left),
    right: bench(film.margins.right),
    lead: bench(film.margins.lead),
    tail: bench(film.margins.tail),
    lengthLeft: inRollUnit(film.lengthLeft),
    gap: bench(film.gap),
    spanMax: film.spanMax === null ? '' : bench(film.spanMax),
    price: decimal(film.price.amount / 10 ** minorDigits(ways.currency), ways, 4),
    pricePer: inRollUnit(film.price.per),
  };
}

/** Half a gap must be whole micrometres. */
const even = (length: Micrometres): Micrometres => um(2 * Math.ceil(length / 2));

/** Reads the whole form; every field that cannot be used is named with its reason. */
export function readForm(form: FilmForm, ways: Ways): Result<FilmFields, FilmProblems> {
  const problems: FilmProblems = {};
  const length = (field: keyof FilmForm, unit: 'mm' | 'in' | 'm' | 'ft', least: 'zero' | 'above-zero') => {
    const read = parseLength(form[field], unit, least);
    if (read.ok) return read.value;
    problems[field] = words.lengthProblems[read.problem];
    return um(0);
  };
  const name = form.name.trim();
  if (name === '') problems.name = words.filmForm.nameEmpty;
  const width = length('width', ways.unit, 'above-zero');
  const margins = {
    left: length('left', ways.unit, 'zero'),
    right: length('right', ways.unit, 'zero'),
    lead: length('lead', ways.unit, 'zero'),
    tail: length('tail', ways.unit, 'zero'),
  };
  const lengthLeft = length('lengthLeft', rollUnit(ways), 'above-zero');
  const gap = even(length('gap', ways.unit, 'zero'));
  const spanMax = form.spanMax.trim() === '' ? null : length('spanMax', ways.unit, 'above-zero');
  const price = parseMoney(form.price, minorDigits(ways.currency));
  if (!price.ok) problems.price = words.moneyProblems[price.problem];
  const per = length('pricePer', rollUnit(ways), 'above-zero');
  if (!problems.width && width - margins.left - margins.right < fromMm(1)) {
    problems.width = words.filmForm.noPrintableWidth;
  }
  if (!problems.lengthLeft && lengthLeft <= margins.lead + margins.tail) {
    problems.lengthLeft = words.filmForm.rollTooShort;
  }
  if (spanMax !== null && !problems.spanMax && spanMax <= Math.max(margins.lead, margins.tail) + gap) {
    problems.spanMax = words.filmForm.spanTooShort;
  }
  if (Object.keys(problems).length > 0 || !price.ok) return fail(problems);
  return ok({ name, width, margins, lengthLeft, gap, spanMax, price: { amount: price.value, per } });
}
