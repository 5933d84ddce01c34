import type { Alternative } from '../../src/model';
import {
  asMinor,
  fail,
  fromMm,
  fromUnit,
  type Micrometres,
  type Minor,
  minorDigits,
  ok,
  parseLength,
  parsePrice,
  type Result,
} from '../../src/units';
import { asShown } from '../parts/as-shown';
import { wordsNow } from '../words';
import { bulkUnits, typedLength, type Ways } from '../words/format';

const fields = ['name', 'price', 'per', 'width', 'setUp', 'colours', 'shipping', 'days'] as const;

export type AlternativeField = (typeof fields)[number];

/** The form as typed. */
export type AlternativeForm = Pick<Alternative, 'kind'> & Readonly<Record<AlternativeField, string>>;

export type AlternativeProblems = Partial<Record<AlternativeField, string>>;

/** Which fields each way of buying has. */
export const fieldsOf: Readonly<Record<Alternative['kind'], readonly AlternativeField[]>> = {
  length: ['name', 'price', 'per', 'width', 'shipping', 'days'],
  piece: ['name', 'price', 'shipping', 'days'],
  decorated: ['name', 'setUp', 'colours', 'price', 'shipping', 'days'],
};

/** A way to buy that is about to be typed; the width to start with is a trade one (common practice, no source). */
export function emptyForm(ways: Ways): AlternativeForm {
  return {
    kind: 'length',
    name: '',
    price: '',
    per: `1 ${bulkUnits(ways).length}`,
    width: `${typedLength(fromMm(560), ways)} ${ways.unit}`,
    setUp: '',
    colours: '1',
    shipping: '0',
    days: '3',
  };
}

export function formOf(alternative: Alternative, ways: Ways): AlternativeForm {
  const money = (amount: number) =>
    new Intl.NumberFormat(ways.locale, { useGrouping: false, maximumFractionDigits: 4 }).format(
      amount / 10 ** minorDigits(ways.currency),
    );
  const { kind, name, shipping, days } = alternative;
  const common = { ...emptyForm(ways), kind, name, shipping: money(shipping), days: String(days) };
  switch (alternative.kind) {
    case 'length':
      return {
        ...common,
        price: money(alternative.price.amount),
        per: `${typedLength(alternative.price.per, ways)} ${ways.unit}`,
        width: `${typedLength(alternative.width, ways)} ${ways.unit}`,
      };
    case 'piece':
      return { ...common, price: money(alternative.price) };
    case 'decorated':
      return {
        ...common,
        price: money(alternative.price),
        setUp: money(alternative.setUp),
        colours: String(alternative.colours),
      };
  }
}

/**
 * Reads the form; every field of its kind that cannot be used is named with its reason, and one that is as it was shown keeps its value.
 * @param known what the form was opened with; `null` for a new way
 */
export function readForm(
  form: AlternativeForm,
  known: Alternative | null,
  id: string,
  ways: Ways,
): Result<Alternative, AlternativeProblems> {
  const keep = asShown<AlternativeField>(form, known && formOf(known, ways));
  const before = known?.kind === 'length' ? known : undefined;
  const piece = known?.kind === 'piece' ? known : undefined;
  const decorated = known?.kind === 'decorated' ? known : undefined;
  const problems: AlternativeProblems = {};
  const words = wordsNow();
  const money = (field: AlternativeField, before: Minor | undefined): Minor =>
    keep(field, before, () => {
      const read = parsePrice(form[field], ways.currency);
      if (!read.ok) problems[field] = words.moneyProblems[read.problem];
      return read.ok ? read.value : asMinor(0);
    });
  const length = (
    field: AlternativeField,
    before: Micrometres | undefined,
    unit: Parameters<typeof parseLength>[1],
  ): Micrometres =>
    keep(field, before, () => {
      const read = parseLength(form[field], unit);
      if (!read.ok) problems[field] = words.lengthProblems[read.problem];
      return read.ok ? read.value : fromUnit(1, 'm');
    });
  const whole = (field: AlternativeField, least: number, most: number, sentence: string): number => {
    const value = /^\s*\d{1,3}\s*$/.test(form[field]) ? Number(form[field]) : -1;
    if (value < least || value > most) problems[field] = sentence;
    return value;
  };
  const name = form.name.trim();
  if (name === '') problems.name = words.makeOrBuy.nameEmpty;
  const common = {
    id,
    name,
    shipping: money('shipping', known?.shipping),
    days: whole('days', 0, 999, words.makeOrBuy.daysProblem),
  };
  const alternative = ((): Alternative => {
    switch (form.kind) {
      case 'length': {
        const price = {
          amount: money('price', before?.price.amount),
          per: length('per', before?.price.per, bulkUnits(ways).length),
        };
        return { ...common, kind: 'length', price, width: length('width', before?.width, ways.unit) };
      }
      case 'piece':
        return { ...common, kind: 'piece', price: money('price', piece?.price) };
      case 'decorated':
        return {
          ...common,
          kind: 'decorated',
          price: money('price', decorated?.price),
          setUp: money('setUp', decorated?.setUp),
          colours: whole('colours', 1, 20, words.makeOrBuy.coloursProblem),
        };
    }
  })();
  return Object.keys(problems).length > 0 ? fail(problems) : ok(alternative);
}
