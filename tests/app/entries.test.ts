import { describe, expect, it } from 'vitest';
import { formOf, readForm } from '../../app/film/film-form';
import { readCode, readCount, readName, readSize, typedWithUnit } from '../../app/orders/entries';
import { decodeTable } from '../../app/orders/open-table';
import { runOf } from '../../src/model';
import { fromMm } from '../../src/units';
import { smallBook } from '../editing/book';

const metric = { unit: 'mm', currency: 'USD', locale: 'en-GB' } as const;
const inches = { unit: 'in', currency: 'USD', locale: 'en-US' } as const;

describe('what is typed for a transfer', () => {
  it.each([
    ['0', /above zero/],
    ['abc', /not a length/],
    ['', /Type a length/],
  ])('a size of %j is answered', (typed, sentence) => {
    const read = readSize(typed, metric);
    expect(read.ok ? '' : read.problem).toMatch(sentence);
  });

  it.each(['10000000', '0', '-1', 'many', '1.5', ''])(
    'a count of %j is answered with what is allowed',
    (typed) => {
      const read = readCount(typed, metric);
      expect(read.ok ? '' : read.problem).toMatch(/whole number from 1 to 5,000/);
    },
  );

  it('a count within reason is taken', () => {
    expect(readCount(' 48 ', metric)).toEqual({ ok: true, value: 48 });
  });

  it('a bare figure keeps the unit it was typed in', () => {
    expect(typedWithUnit('3.5', 'in')).toBe('3.5 in');
    expect(typedWithUnit('89 mm', 'in')).toBe('89 mm');
  });

  it('a name is tidied and never empty', () => {
    expect(readName('  left   chest ')).toEqual({ ok: true, value: 'left chest' });
    expect(readName(' ').ok).toBe(false);
  });

  it('a code is short and no other order has it', () => {
    expect(readCode('hb', new Set(['CO']))).toEqual({ ok: true, value: 'HB' });
    expect(readCode('co', new Set(['CO'])).ok).toBe(false);
    expect(readCode('too long', new Set()).ok).toBe(false);
  });
});

describe('the film form', () => {
  const film = runOf(smallBook().book, null)?.film;
  if (film?.kind !== 'roll') throw new Error('no roll');
  const { id: _id, changed: _changed, ...fields } = film;

  it.each([
    ['millimetres', metric],
    ['inches', inches],
  ] as const)('comes back as it was, in %s', (_, ways) => {
    const read = readForm(formOf(film, ways), null, ways);
    if (!read.ok || read.value.kind !== 'roll') throw new Error(JSON.stringify(read));
    expect(Math.abs(read.value.width - fields.width)).toBeLessThan(30);
    expect(Math.abs(read.value.lengthLeft - fields.lengthLeft)).toBeLessThan(400);
    expect(read.value.name).toBe(fields.name);
    expect(read.value.price.amount).toBe(fields.price.amount);
    expect(read.value.gap % 2).toBe(0);
  });

  it('in millimetres loses nothing at all', () => {
    expect(readForm(formOf(film, metric), null, metric)).toEqual({ ok: true, value: fields });
  });

  it.each([
    ['width', { width: '9 mm' }, /leave nothing/],
    ['lengthLeft', { lengthLeft: '15 mm' }, /need more than is left/],
    ['spanMax', { spanMax: '12' }, /longer than/],
    ['price', { price: '-1' }, /below zero/],
    ['gap', { gap: 'wide' }, /not a length/],
    ['name', { name: ' ' }, /needs a name/],
    ['noPrint', { noPrint: '50 - 20' }, /from – to/],
    ['sheetsLeft', { kind: 'sheets', sheetsLeft: 'some' }, /whole number/],
    ['length', { kind: 'sheets', length: '15 mm' }, /nothing of this length/],
  ] as const)('names what is wrong with %s', (field, change, sentence) => {
    const read = readForm({ ...formOf(film, metric), ...change }, null, metric);
    expect(read.ok ? '' : read.problem[field]).toMatch(sentence);
  });

  it('reads no-print stretches and a stack of sheets', () => {
    const roll = readForm({ ...formOf(film, metric), noPrint: '1200 – 1260; 3 m to 3.05 m' }, null, metric);
    expect(roll).toMatchObject({
      ok: true,
      value: {
        noPrint: [
          { from: 1_200_000, to: 1_260_000 },
          { from: 3_000_000, to: 3_050_000 },
        ],
      },
    });
    const sheets = readForm(
      { ...formOf(film, metric), kind: 'sheets', length: '483', sheetsLeft: '25' },
      null,
      metric,
    );
    expect(sheets).toMatchObject({ ok: true, value: { kind: 'sheets', length: 483_000, sheetsLeft: 25 } });
  });

  it('takes an empty longest span for a roll that is not cut', () => {
    const read = readForm(
      { ...formOf({ ...film, spanMax: fromMm(400) }, metric), spanMax: '' },
      null,
      metric,
    );
    expect(read).toMatchObject({ ok: true, value: { spanMax: null } });
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
