import { type FilmFields, jobsBy } from '../../src/editing';
import {
  type Film,
  filmCost,
  type Printer,
  printerOf,
  type Roll,
  ranges,
  type Station,
} from '../../src/model';
import {
  asMinor,
  fail,
  fromInches,
  fromMm,
  inOrder,
  type Micrometres,
  type Minor,
  ok,
  parseLength,
  parseShare,
  um,
} from '../../src/units';
import { type Codec, optional, type Reader } from '../parts/fields/codec';
import { type Entry, fieldsIn, formTable } from '../parts/fields/form';
import { filmLength, shortLength } from '../parts/fields/lengths';
import { money } from '../parts/fields/money';
import { share, whole } from '../parts/fields/numbers';
import { placesIn } from '../parts/fields/place';
import { text } from '../parts/fields/text';
import { rulerLength } from '../words/format';

/** Film that copies of one order may cost for lying near each other, to begin with. */
const NEAR_SHARE = 0.02;

/** A span stays this much shorter than the tray and the platen (common practice, no source). */
export const SPARE = { mm: fromMm(20), in: fromInches(3 / 4) } as const;

const size = shortLength('above-zero');
const length = shortLength('zero');
const filmLeft = filmLength('above-zero');

/** Half a gap must be whole micrometres. */
const gap: Codec<Micrometres> = {
  ...length,
  read(typed, reader) {
    const read = length.read(typed, reader);
    return read.ok ? ok(um(2 * Math.ceil(read.value / 2))) : read;
  },
};

/** Nobody may leave it open: not every printer draws its film back. */
const cutBlank: Codec<Micrometres> = {
  ...length,
  read: (typed, reader) =>
    typed.trim() === '' ? fail(reader.words.filmForm.cutBlankNeeded) : length.read(typed, reader),
};

/** From head to knife where nobody has measured it yet: an inch or so (common practice, no source). */
const USUAL_CUT = { mm: fromMm(25), in: fromInches(1) } as const;
const CUTS = 9;

/** What nine cuts of a roll take: its blank per cut as typed, or a usual one while that is nothing; the film, and what it costs. */
export function nineCuts(
  roll: Pick<Roll, 'price'>,
  typed: string,
  reader: Reader,
): { readonly cut: Micrometres; readonly film: Micrometres; readonly cost: Minor } {
  const read = length.read(typed, reader);
  const cut = read.ok && read.value > 0 ? read.value : USUAL_CUT[reader.unit];
  const film = um(CUTS * cut);
  return { cut, film, cost: filmCost(film, roll) };
}

const nearShare: Codec<number> = {
  ...share(),
  read(typed, { words }) {
    const read = parseShare(typed);
    return read.ok ? read : fail(words.filmForm.nearProblem);
  },
};

/** Stretches from one place along the film to another: `120 – 180 mm; 900 to 940`. */
const stretches: Codec<Roll['noPrint']> = {
  show: (value, reader) =>
    value.map(({ from, to }) => `${length.show(from, reader)} – ${length.show(to, reader)}`).join('; '),
  read(typed, { unit, words }) {
    const found: Roll['noPrint'] = [];
    for (const part of typed.split(';')) {
      if (part.trim() === '') continue;
      const [from, to, ...more] = part.split(/\s+(?:[–-]|to|a|hasta)\s+|–/);
      const start = parseLength(from ?? '', unit, 'zero');
      const end = parseLength(to ?? '', unit);
      if (!start.ok || !end.ok || more.length > 0 || end.value <= start.value) {
        return fail(words.filmForm.stretches);
      }
      found.push({ from: start.value, to: end.value });
    }
    return ok(found);
  },
};

const sheetCount = whole(0, 999_999, ({ filmForm }) => filmForm.sheetCount);

const field = fieldsIn(({ filmForm }) => filmForm);
const film = placesIn<FilmFields>();
const margins = film.to('margins');
const roll = film.only((each) => each.kind === 'roll');
const sheets = film.only((each) => each.kind === 'sheets');

/** A film, of either kind. */
export const filmTable = formTable({
  name: 'film',
  fields: {
    name: field(film.to('name'), text, 'name'),
    width: field(film.to('width'), size, 'width'),
    lengthLeft: field(roll.to('lengthLeft'), filmLeft, 'lengthLeft'),
    length: field(sheets.to('length'), size, 'length'),
    sheetsLeft: field(sheets.to('sheetsLeft'), sheetCount, 'sheetsLeft'),
    left: field(margins.to('left'), length, 'left'),
    right: field(margins.to('right'), length, 'right'),
    lead: field(margins.to('lead'), length, 'lead'),
    tail: field(margins.to('tail'), length, 'tail'),
    gap: field(film.to('gap'), gap, 'gap', {
      hint: ({ gapHint }, ways) => gapHint(rulerLength(fromMm(5), ways), rulerLength(fromMm(8), ways)),
    }),
    nearShare: field(
      film
        .to('together')
        .only((together) => together.kind === 'near')
        .to('share'),
      nearShare,
      'nearShare',
    ),
    curl: field(film.to('curl'), length, 'curl', {
      hint: 'curlHint',
    }),
    spanMax: field(roll.to('spanMax'), optional(size), 'spanMax', {
      hint: ({ spanHint }, ways) => spanHint(rulerLength(SPARE[ways.unit], ways)),
    }),
    jobBlank: field(roll.to('jobBlank'), length, 'jobBlank'),
    cutBlank: field(roll.to('cutBlank'), cutBlank, 'cutBlank', {
      hint: 'cutBlankHint',
    }),
    unreached: field(roll.to('unreached'), length, 'unreached'),
    noPrint: field(roll.to('noPrint'), stretches, 'noPrint', {
      hint: 'noPrintHint',
    }),
    price: field(
      roll.to('price').to('amount'),
      money,
      (words, { currency }) => `${words.price} (${currency})`,
    ),
    pricePer: field(roll.to('price').to('per'), filmLeft, 'pricePer'),
    sheetPrice: field(
      sheets.to('price'),
      money,
      (words, { currency }) => `${words.pricePerSheet} (${currency})`,
    ),
  },
  problemsOf(each, { words: { filmForm: words } }) {
    const { name, width, margins } = each;
    const blank = margins.lead + each.curl + margins.tail;
    const printable = width - margins.left - margins.right;
    const common = {
      ...(name.trim() === '' ? { name: words.nameEmpty } : {}),
      ...(printable < fromMm(1) ? { width: words.noPrintableWidth } : {}),
      ...(width > ranges.filmWidth.most ? { width: words.tooWide } : {}),
    };
    if (each.kind === 'sheets') {
      if (each.length > ranges.sheetLength.most) return { ...common, length: words.sheetTooLong };
      return { ...common, ...(each.length - blank < fromMm(1) ? { length: words.sheetTooShort } : {}) };
    }
    const { spanMax, cutBlank } = each;
    const isTooShort = each.lengthLeft <= blank + each.jobBlank + each.unreached;
    return {
      ...common,
      ...(isTooShort ? { lengthLeft: words.rollTooShort } : {}),
      ...(spanMax !== null && spanMax <= Math.max(blank, cutBlank) + each.gap
        ? { spanMax: words.spanTooShort }
        : {}),
    };
  },
});

export type FilmField = keyof typeof filmTable.fields;

export const filmEntry = (record: FilmFields): Entry<FilmFields, FilmField> => ({ record, typed: {} });

/** What a roll loses at each job and cut of its printer. */
const blanksOf = ({ jobBlank, cutBlank }: Roll) => ({ jobBlank, cutBlank });

/**
 * A new film that is like another one, but for what is asked for anew. What a roll costs says nothing of a sheet.
 * @param printer that it goes into, and how that takes a roll, as far as the shop has said
 * @param last the roll that this printer had last: what that lost at a job and a cut, a new one does too
 */
export function newFilm(
  kind: Film['kind'],
  like: FilmFields,
  { id: printer, sends, feedsBack }: Pick<Printer, 'id' | 'sends' | 'feedsBack'>,
  last: Roll | null = null,
): Entry<FilmFields, FilmField> {
  if (kind === 'roll' && like.kind === 'roll') {
    const jobs = sends === null ? like.jobs : jobsBy(sends);
    const record = { ...like, printer, jobs, ...(last && blanksOf(last)) };
    return { record, typed: { name: '', ...(feedsBack || last ? {} : { cutBlank: '' }) } };
  }
  if (kind === like.kind) return { record: { ...like, printer }, typed: { name: '' } };
  const { width, margins, gap, cutting, together, peel, curl, archived } = like;
  const common = { name: '', printer, width, margins, gap, cutting, together, peel, curl, archived };
  return {
    record: { kind: 'sheets', ...common, length: fromMm(483), sheetsLeft: 100, price: asMinor(0) },
    typed: { name: '', sheetPrice: '' },
  };
}

/** A film that is there, in another printer: what is a job goes by how that takes a roll; what the film loses is the film's own. */
export const inPrinter = (
  record: FilmFields,
  { id: printer, sends }: Pick<Printer, 'id' | 'sends'>,
): FilmFields =>
  record.kind === 'roll'
    ? { ...record, printer, jobs: sends === null ? record.jobs : jobsBy(sends) }
    : { ...record, printer };

/** The roll that came last into a printer; ids tell when they were given. */
export const lastRollOf = (films: Iterable<Film>, station: Station, printer: string): Roll | null =>
  [...films]
    .filter((film): film is Roll => film.kind === 'roll' && printerOf(station, film).id === printer)
    .sort((a, b) => inOrder(a.id, b.id))
    .at(-1) ?? null;

/** How the copies of one order lie; what was there before comes back when it is chosen again. */
export const togetherOf = (kind: Film['together']['kind'], opened: Film['together']): Film['together'] =>
  kind === opened.kind ? opened : kind === 'near' ? { kind, share: NEAR_SHARE } : { kind };
