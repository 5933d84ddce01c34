import { describe, expect, it } from 'vitest';
import { type FilmField, filmTable, inPrinter, newFilm, nineCuts } from '../../app/film/film-form';
import { codeBeside, copiesFrom, name, sizeAsTyped } from '../../app/orders/entries';
import { decodeTable } from '../../app/orders/open-table';
import { readForm, type Typed } from '../../app/parts/fields/form';
import { en } from '../../app/words/en';
import type { Ways } from '../../app/words/format';
import type { FilmFields } from '../../src/editing';
import { asId, runOf } from '../../src/model';
import { asMinor, fromMm } from '../../src/units';
import { smallBook } from '../editing/book';

const metric: Ways = { unit: 'mm', currency: 'USD', locale: 'en-GB' };
const inches: Ways = { unit: 'in', currency: 'USD', locale: 'en-US' };
const reading = (ways: Ways) => ({ ...ways, words: en });

describe('what is typed for a transfer', () => {
  it.each([
    ['0', /above zero/],
    ['abc', /not a length/],
    ['', /Type a length/],
  ])('a size of %j is answered', (typed, sentence) => {
    const read = sizeAsTyped.read(typed, reading(metric));
    expect(read.ok ? '' : read.problem).toMatch(sentence);
  });

  it.each(['10000000', '0', '-1', 'many', '1.5', ''])(
    'a count of %j is answered with what is allowed',
    (typed) => {
      const read = copiesFrom(1).read(typed, reading(metric));
      expect(read.ok ? '' : read.problem).toMatch(/whole number from 1 to 5,000/);
    },
  );

  it.each([
    [1, 0, '2', null],
    [1, 3, '2', /^3 copies are printed or sent to print\. Write 3 or more/],
    [1, 1, '0', /whole number from 1/],
    [0, 1, '0', /^1 copy is printed or sent to print/],
    [0, 0, '-1', /whole number from 0/],
  ] as const)('a count from %d, of which %d are in print, answers %j', (least, inPrint, typed, sentence) => {
    const read = copiesFrom(least, inPrint).read(typed, reading(metric));
    if (sentence === null) expect(read.ok).toBe(true);
    else expect(read.ok ? '' : read.problem).toMatch(sentence);
  });

  it('a count within reason is taken', () => {
    expect(copiesFrom(1).read(' 48 ', reading(metric))).toEqual({ ok: true, value: 48 });
  });

  it('a bare figure keeps the unit it was typed in', () => {
    expect(sizeAsTyped.read('3.5', reading(inches))).toEqual({
      ok: true,
      value: { length: 88_900, typed: '3.5 in' },
    });
    expect(sizeAsTyped.read(' 89 mm ', reading(inches))).toEqual({
      ok: true,
      value: { length: 89_000, typed: '89 mm' },
    });
  });

  it('a name is tidied and never empty', () => {
    expect(name.read('  left   chest ', reading(metric))).toEqual({ ok: true, value: 'left chest' });
    expect(name.read(' ', reading(metric)).ok).toBe(false);
  });

  it('a code is short and no other order has it', () => {
    const beside = (taken: string[], open = taken) =>
      codeBeside(() => ({ all: new Set(taken), open: new Set(open) }));
    expect(beside(['CO']).read('hb', reading(metric))).toEqual({ ok: true, value: 'HB' });
    expect(beside(['CO']).read('co', reading(metric)).ok).toBe(false);
    expect(beside([]).read('too long', reading(metric)).ok).toBe(false);
  });

  it('a code that cannot be told from its copies’ numbers, or from another code, is refused with the reason', () => {
    const read = (code: string, open: string[]) =>
      codeBeside(() => ({ all: new Set(['CO']), open: new Set(open) })).read(code, reading(metric));
    expect(read('10', [])).toEqual({ ok: false, problem: en.orders.codeEnd });
    expect(read('c', ['CO'])).toEqual({ ok: false, problem: en.orders.codeBegins('C', 'CO') });
    expect(read('cox', ['CO'])).toEqual({ ok: false, problem: en.orders.codeBegins('COX', 'CO') });
    // An archived order's code may be the beginning of another.
    expect(read('cox', [])).toEqual({ ok: true, value: 'COX' });
  });
});

describe('the film form', () => {
  const film = runOf(smallBook().book, null)?.film;
  if (film?.kind !== 'roll') throw new Error('no roll');
  const { id: _id, changed: _changed, ...roll } = film;
  const untold = { id: roll.printer, sends: null, feedsBack: null };
  const sheets = newFilm('sheets', roll, untold).record;
  const read = (record: FilmFields, typed: Typed<FilmField>, ways: Ways = metric) =>
    readForm(filmTable, { record, typed }, reading(ways));

  it.each([
    ['name', roll, { name: ' ' }, /needs a name/],
    ['width', roll, { width: '9 mm' }, /leave nothing/],
    ['lengthLeft', roll, { lengthLeft: '15 mm' }, /need more than is left/],
    ['spanMax', roll, { spanMax: '12' }, /longer than/],
    ['price', roll, { price: '-1' }, /below zero/],
    ['gap', roll, { gap: 'wide' }, /not a length/],
    ['noPrint', roll, { noPrint: '50 - 20' }, /from – to/],
    ['sheetsLeft', sheets, { sheetsLeft: 'some' }, /whole number/],
    ['length', sheets, { length: '15 mm' }, /nothing of this length/],
  ] as const)('names what is wrong with %s', (field, record, typed, sentence) => {
    const found = read({ ...record, name: 'Film' }, typed);
    expect(found.ok ? '' : found.problem[field]).toMatch(sentence);
    expect(found.ok ? [] : Object.keys(found.problem)).toEqual([field]);
  });

  it('reads no-print stretches, an even gap, and how many sheets there are', () => {
    expect(read(roll, { noPrint: '1200 – 1260; 3 m to 3.05 m', gap: '0.197' }, inches)).toMatchObject({
      ok: true,
      value: { noPrint: [{}, { from: 3_000_000, to: 3_050_000 }], gap: 5004 },
    });
    expect(read({ ...sheets, name: 'Film' }, { length: '483', sheetsLeft: '25' })).toMatchObject({
      ok: true,
      value: { kind: 'sheets', length: 483_000, sheetsLeft: 25 },
    });
  });

  it('takes an empty longest span for a roll that is not cut', () => {
    expect(read({ ...roll, spanMax: fromMm(400) }, { spanMax: '' })).toMatchObject({
      ok: true,
      value: { spanMax: null },
    });
  });

  it('goes by another printer when it moves there, and a new roll has what the last one there lost', () => {
    const window = { id: asId<'printer'>('window'), feedsBack: null };
    expect(inPrinter(roll, { ...window, sends: 'by-span' })).toEqual({
      ...roll,
      printer: 'window',
      jobs: 'span',
    });
    expect(inPrinter(roll, { ...window, sends: null })).toEqual({ ...roll, printer: 'window' });
    expect(inPrinter(sheets, { ...window, sends: 'by-span' })).toEqual({ ...sheets, printer: 'window' });
    const last = { ...film, cutBlank: fromMm(25), jobBlank: fromMm(40) };
    const next = newFilm('roll', roll, { ...window, sends: null }, last);
    expect(next.record).toMatchObject({ printer: 'window', cutBlank: 25_000, jobBlank: 40_000 });
    expect(next.typed).toEqual({ name: '' });
  });

  it('asks for the name of new film, what a cut loses unless the printer draws film back, and the price of new sheets', () => {
    const found = (kind: 'roll' | 'sheets', printer: Parameters<typeof newFilm>[2] = untold) => {
      const { record, typed } = newFilm(kind, roll, printer);
      const answer = read(record, typed);
      return answer.ok ? [] : Object.keys(answer.problem).sort();
    };
    expect(found('roll')).toEqual(['cutBlank', 'name']);
    expect(found('roll', { ...untold, feedsBack: false })).toEqual(['cutBlank', 'name']);
    expect(found('roll', { ...untold, feedsBack: true })).toEqual(['name']);
    expect(found('sheets')).toEqual(['name', 'sheetPrice']);
  });
});

describe('what nine cuts of a roll take', () => {
  const price = { amount: asMinor(840), per: fromMm(1000) };

  it('is nine times the blank per cut, at the price of the roll', () => {
    expect(nineCuts({ price }, '20', reading(metric))).toEqual({
      cut: fromMm(20),
      film: fromMm(180),
      cost: 151,
    });
  });

  it('is told of a usual blank while none is typed', () => {
    for (const typed of ['', '0', 'wide'])
      expect(nineCuts({ price }, typed, reading(inches)).film).toBe(9 * 25_400);
  });
});

describe('a file of orders', () => {
  it.each([
    ['UTF-8', Uint8Array.of(0x63, 0x61, 0x66, 0xc3, 0xa9), 'café'],
    ['UTF-8 with a mark', Uint8Array.of(0xef, 0xbb, 0xbf, 0x63), 'c'],
    ['UTF-16, as some spreadsheets write it', Uint8Array.of(0xff, 0xfe, 0x63, 0, 0xe9, 0), 'cé'],
    ['windows-1252', Uint8Array.of(0x63, 0x61, 0x66, 0xe9), 'café'],
  ])('is read as %s', (_, bytes, text) => {
    expect(decodeTable(bytes)).toBe(text);
  });

  it('is refused where it is no text', () => {
    expect(decodeTable(Uint8Array.of(0x50, 0x4b, 3, 4, 0, 0))).toBeNull();
  });
});
