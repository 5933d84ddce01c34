import type { Aim, Pricing, Settings } from '../../src/model';
import {
  asMinor,
  fail,
  fromUnit,
  type Minor,
  minorDigits,
  ok,
  parsePrice,
  parseShare,
  type Result,
} from '../../src/units';
import { asShown } from '../parts/as-shown';
import { wordsNow } from '../words';
import { bulkUnits, number, type Ways } from '../words/format';

const textFields = [
  'aimShare',
  'placement',
  'length',
  'artworkFee',
  'breaks',
  'rush',
  'minimum',
  'deposit',
  'taxName',
  'taxShare',
  'validDays',
  'name',
  'address',
] as const;

export type PriceField = (typeof textFields)[number];

/** The form as typed. */
export type PricesForm = Pick<Pricing, 'by' | 'breaksBy'> & {
  readonly aim: Aim['kind'];
  readonly tax: 'none' | NonNullable<Pricing['tax']>['kind'];
} & Readonly<Record<PriceField, string>>;

/** Sentences beside the fields they belong to. */
export type PriceProblems = Partial<Record<PriceField, string>>;

type Shop = Pick<Settings, 'pricing' | 'letterhead'>;

const plain = (value: number, { locale }: Ways, most: number): string =>
  number(value, locale, 0, most).replace(/[\s\u00a0\u202f]/g, '');

export function formOf({ pricing, letterhead }: Shop, ways: Ways): PricesForm {
  const money = (amount: number) =>
    new Intl.NumberFormat(ways.locale, { useGrouping: false, maximumFractionDigits: 4 }).format(
      amount / 10 ** minorDigits(ways.currency),
    );
  const share = (value: number) => plain(100 * value, ways, 2);
  const { length: unit } = bulkUnits(ways);
  const { amount, per } = pricing.length;
  return {
    aim: pricing.aim.kind,
    aimShare: share(pricing.aim.share),
    by: pricing.by,
    placement: money(pricing.placement),
    length: money((amount * fromUnit(1, unit)) / per),
    artworkFee: money(pricing.artworkFee),
    breaks: pricing.breaks.map(({ from, off }) => `${from}: ${share(off)}%`).join('; '),
    breaksBy: pricing.breaksBy,
    rush: share(pricing.rush),
    minimum: money(pricing.minimum),
    deposit: share(pricing.deposit),
    tax: pricing.tax?.kind ?? 'none',
    taxName: pricing.tax?.name ?? '',
    taxShare: share(pricing.tax?.share ?? 0),
    validDays: String(pricing.validDays),
    name: letterhead.name,
    address: letterhead.address,
  };
}

/** Reads `24: 5%; 48: 10%`, in the order of the counts. */
function readBreaks(text: string): Pricing['breaks'] | null {
  const breaks: Pricing['breaks'] = [];
  for (const part of text.split(/[;\n]/)) {
    if (part.trim() === '') continue;
    const match = /^\s*(\d{1,6})\s*[:=–-]\s*(.+)$/.exec(part);
    const off = parseShare(match?.[2] ?? '');
    const from = Number(match?.[1]);
    if (!off.ok || !(from >= 2)) return null;
    breaks.push({ from, off: off.value });
  }
  return breaks.sort((a, b) => a.from - b.from);
}

/**
 * Reads the whole form; every field that cannot be used is named with its reason, and one that is as it was shown keeps its value.
 * @param known what the form was opened with
 */
export function readForm(form: PricesForm, known: Shop, ways: Ways): Result<Shop, PriceProblems> {
  const keep = asShown<PriceField>(form, formOf(known, ways));
  const before = known.pricing;
  const problems: PriceProblems = {};
  const words = wordsNow();
  const money = (
    field: PriceField,
    before: Minor | undefined,
    least: 'zero' | 'above-zero' = 'zero',
  ): Minor => {
    const value = keep(field, before, () => {
      const read = parsePrice(form[field], ways.currency);
      if (!read.ok) problems[field] = words.moneyProblems[read.problem];
      return read.ok ? read.value : asMinor(0);
    });
    // What nobody is asked for may be zero; once prints are sold by it, it may not.
    if (value === 0 && least === 'above-zero') problems[field] ??= words.prices.zeroPrice;
    return value;
  };
  const share = (field: PriceField, known: number | undefined, most: number): number =>
    keep(field, known, () => {
      const read = parseShare(form[field], most);
      if (!read.ok) problems[field] = words.shareProblems[read.problem];
      return read.ok ? read.value : 0;
    });
  const isSameAim = form.aim === before.aim.kind;
  const aimShare = share(
    'aimShare',
    isSameAim ? before.aim.share : undefined,
    form.aim === 'margin' ? 0.99 : 100,
  );
  const tooHigh = parseShare(form.aimShare, 100).ok && problems.aimShare !== undefined;
  if (form.aim === 'margin' && tooHigh) problems.aimShare = words.prices.marginProblem;
  const breaks = keep('breaks', before.breaks, () => readBreaks(form.breaks) ?? []);
  if (readBreaks(form.breaks) === null) problems.breaks = words.prices.breaksProblem;
  const validDays = /^\s*\d{1,3}\s*$/.test(form.validDays) ? Number(form.validDays) : 0;
  if (validDays < 1 || validDays > 365) problems.validDays = words.prices.daysProblem;
  const pricing: Pricing = {
    aim: { kind: form.aim, share: aimShare },
    by: form.by,
    placement: money('placement', before.placement, form.by === 'placement' ? 'above-zero' : 'zero'),
    length: keep(
      'length',
      before.length.amount === 0 && form.by === 'length' ? undefined : before.length,
      () => ({
        amount: money('length', undefined, form.by === 'length' ? 'above-zero' : 'zero'),
        per: fromUnit(1, bulkUnits(ways).length),
      }),
    ),
    artworkFee: money('artworkFee', before.artworkFee),
    breaks,
    breaksBy: form.breaksBy,
    rush: share('rush', before.rush, 10),
    minimum: money('minimum', before.minimum),
    deposit: share('deposit', before.deposit, 1),
    tax:
      form.tax === 'none'
        ? null
        : {
            name: form.taxName.trim(),
            share: share('taxShare', before.tax?.share, 1),
            kind: form.tax,
          },
    validDays,
    nextQuote: before.nextQuote,
  };
  if (Object.keys(problems).length > 0) return fail(problems);
  return ok({ pricing, letterhead: { name: form.name.trim(), address: form.address.trim() } });
}
