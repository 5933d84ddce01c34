import type { FilmFields } from '../../src/editing';
import type { Film, Roll } from '../../src/model';
import {
  fail,
  fromMm,
  fromUnit,
  type Micrometres,
  minorDigits,
  ok,
  parseLength,
  parsePrice,
  parseShare,
  type Result,
  um,
} from '../../src/units';
import { asShown } from '../parts/as-shown';
import { wordsNow } from '../words';
import { typedLength, type Ways } from '../words/format';

/** Fields of any film, as typed. */
const common = [
  'nearShare',
  'name',
  'width',
  'left',
  'right',
  'lead',
  'tail',
  'curl',
  'gap',
  'price',
] as const;
const rollOnly = [
  'lengthLeft',
  'spanMax',
  'pricePer',
  'jobBlank',
  'cutBlank',
  'unreached',
  'noPrint',
] as const;
const sheetsOnly = ['length', 'sheetsLeft'] as const;

type FormField = (typeof common)[number] | (typeof rollOnly)[number] | (typeof sheetsOnly)[number];

/** The form as typed; fields of the other kind of film keep what was typed there. */
export type FilmForm = Pick<Film, 'kind' | 'cutting' | 'peel'> & {
  readonly together: Film['together']['kind'];
} & { readonly [Field in FormField]: string };

/** Sentences beside the fields they belong to. */
export type FilmProblems = Partial<Record<FormField, string>>;

/** The unit a roll's length is told in. */
const rollUnit = ({ unit }: Ways) => (unit === 'mm' ? 'm' : 'ft');

/** Film that copies of one order may cost for lying near each other, to begin with. */
const NEAR_SHARE = 0.02;

const decimal = (value: number, { locale }: Ways, most: number) =>
  new Intl.NumberFormat(locale, { useGrouping: false, maximumFractionDigits: most }).format(value);

export function formOf(film: FilmFields, ways: Ways): FilmForm {
  const inRollUnit = (length: Micrometres) =>
    `${decimal(length / fromUnit(1, rollUnit(ways)), ways, 3)} ${rollUnit(ways)}`;
  const bench = (length: Micrometres) => `${typedLength(length, ways)} ${ways.unit}`;
  const money = (amount: number) => decimal(amount / 10 ** minorDigits(ways.currency), ways, 4);
  const roll = film.kind === 'roll' ? film : null;
  const sheets = film.kind === 'sheets' ? film : null;
  return {
    kind: film.kind,
    cutting: film.cutting,
    together: film.together.kind,
    nearShare: decimal(100 * (film.together.kind === 'near' ? film.together.share : NEAR_SHARE), ways, 2),
    peel: film.peel,
    name: film.name,
    width: bench(film.width),
    left: bench(film.margins.left),
    right: bench(film.margins.right),
    lead: bench(film.margins.lead),
    tail: bench(film.margins.tail),
    curl: bench(film.curl),
    gap: bench(film.gap),
    price: money(film.kind === 'roll' ? film.price.amount : film.price),
    lengthLeft: inRollUnit(roll?.lengthLeft ?? fromUnit(60, 'm')),
    spanMax: roll?.spanMax ? bench(roll.spanMax) : '',
    pricePer: inRollUnit(roll?.price.per ?? fromUnit(1, rollUnit(ways))),
    jobBlank: bench(roll?.jobBlank ?? um(0)),
    cutBlank: bench(roll?.cutBlank ?? um(0)),
    unreached: bench(roll?.unreached ?? fromMm(400)),
    noPrint: roll?.noPrint.map(({ from, to }) => `${bench(from)} – ${bench(to)}`).join('; ') ?? '',
    length: bench(sheets?.length ?? fromMm(483)),
    sheetsLeft: String(sheets?.sheetsLeft ?? 100),
  };
}

/** Half a gap must be whole micrometres. */
const even = (length: Micrometres): Micrometres => um(2 * Math.ceil(length / 2));

/** Reads `120 – 180 mm; 900 to 940`: stretches from one place along the film to another. */
function readStretches(text: string, unit: Ways['unit']): Roll['noPrint'] | null {
  const stretches: Roll['noPrint'] = [];
  for (const part of text.split(';')) {
    if (part.trim() === '') continue;
    const [from, to, ...more] = part.split(/\s+(?:[–-]|to|a|hasta)\s+|–/);
    const start = parseLength(from ?? '', unit, 'zero');
    const end = parseLength(to ?? '', unit);
    if (!start.ok || !end.ok || more.length > 0 || end.value <= start.value) return null;
    stretches.push({ from: start.value, to: end.value });
  }
  return stretches;
}

/**
 * Reads the whole form; every field that cannot be used is named with its reason, and one that is as it was shown keeps its value.
 * @param known what the form was opened with; `null` for a new film
 */
export function readForm(
  form: FilmForm,
  known: FilmFields | null,
  ways: Ways,
): Result<FilmFields, FilmProblems> {
  const keep = asShown<FormField>(form, known && formOf(known, ways));
  const roll = known?.kind === 'roll' ? known : undefined;
  const sheets = known?.kind === 'sheets' ? known : undefined;
  const problems: FilmProblems = {};
  const length = (
    field: FormField,
    before: Micrometres | undefined,
    unit: 'mm' | 'in' | 'm' | 'ft',
    least: 'zero' | 'above-zero',
  ): Micrometres =>
    keep(field, before, () => {
      const read = parseLength(form[field], unit, least);
      if (read.ok) return read.value;
      problems[field] = wordsNow().lengthProblems[read.problem];
      return um(0);
    });
  const bench = (field: FormField, before: Micrometres | undefined) =>
    length(field, before, ways.unit, 'zero');
  const name = form.name.trim();
  if (name === '') problems.name = wordsNow().filmForm.nameEmpty;
  const width = length('width', known?.width, ways.unit, 'above-zero');
  const margins = {
    left: bench('left', known?.margins.left),
    right: bench('right', known?.margins.right),
    lead: bench('lead', known?.margins.lead),
    tail: bench('tail', known?.margins.tail),
  };
  const { cutting, peel } = form;
  const nearShare = () => {
    const share = parseShare(form.nearShare);
    if (!share.ok) problems.nearShare = wordsNow().filmForm.nearProblem;
    return share.ok ? share.value : 0;
  };
  const nearBefore = known?.together.kind === 'near' ? known.together.share : undefined;
  const together: Film['together'] =
    form.together === 'near'
      ? { kind: 'near', share: keep('nearShare', nearBefore, nearShare) }
      : { kind: form.together };
  const gap = even(bench('gap', known?.gap));
  const curl = bench('curl', known?.curl);
  const archived = known?.archived ?? false;
  const fields = { name, width, margins, gap, cutting, together, peel, curl, archived };
  const priceBefore = roll?.price.amount ?? sheets?.price;
  const price = keep<ReturnType<typeof parsePrice>>(
    'price',
    form.kind === known?.kind && priceBefore !== undefined ? ok(priceBefore) : undefined,
    () => parsePrice(form.price, ways.currency),
  );
  if (!price.ok) problems.price = wordsNow().moneyProblems[price.problem];
  if (!problems.width && width - margins.left - margins.right < fromMm(1)) {
    problems.width = wordsNow().filmForm.noPrintableWidth;
  }
  const blank = margins.lead + fields.curl + margins.tail;
  if (form.kind === 'sheets') {
    const sheetLength = length('length', sheets?.length, ways.unit, 'above-zero');
    const sheetsLeft = /^\s*\d{1,6}\s*$/.test(form.sheetsLeft) ? Number(form.sheetsLeft) : null;
    if (sheetsLeft === null) problems.sheetsLeft = wordsNow().filmForm.sheetCount;
    if (!problems.length && sheetLength - blank < fromMm(1))
      problems.length = wordsNow().filmForm.sheetTooShort;
    if (Object.keys(problems).length > 0 || !price.ok || sheetsLeft === null) return fail(problems);
    return ok({ kind: 'sheets', ...fields, length: sheetLength, sheetsLeft, price: price.value });
  }
  const lengthLeft = length('lengthLeft', roll?.lengthLeft, rollUnit(ways), 'above-zero');
  const spanMax =
    form.spanMax.trim() === ''
      ? null
      : length('spanMax', roll?.spanMax ?? undefined, ways.unit, 'above-zero');
  const per = length('pricePer', roll?.price.per, rollUnit(ways), 'above-zero');
  const [jobBlank, cutBlank, unreached] = [
    bench('jobBlank', roll?.jobBlank),
    bench('cutBlank', roll?.cutBlank),
    bench('unreached', roll?.unreached),
  ];
  const noPrint = keep<Roll['noPrint'] | null>('noPrint', roll?.noPrint, () =>
    readStretches(form.noPrint, ways.unit),
  );
  if (!noPrint) problems.noPrint = wordsNow().filmForm.stretches;
  if (!problems.lengthLeft && lengthLeft <= blank + jobBlank + unreached) {
    problems.lengthLeft = wordsNow().filmForm.rollTooShort;
  }
  if (spanMax !== null && !problems.spanMax && spanMax <= Math.max(blank, cutBlank) + fields.gap) {
    problems.spanMax = wordsNow().filmForm.spanTooShort;
  }
  if (Object.keys(problems).length > 0 || !price.ok || !noPrint) return fail(problems);
  return ok({
    kind: 'roll',
    ...fields,
    lengthLeft,
    spanMax,
    price: { amount: price.value, per },
    jobBlank,
    cutBlank,
    unreached,
    noPrint,
  });
}
