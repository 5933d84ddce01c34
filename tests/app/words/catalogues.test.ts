import { describe, expect, it } from 'vitest';
import { counted, dueDay, money, percent, typedLength } from '../../../app/words/format';
import { fromMm, type LocalDate, type Minor, parseLength } from '../../../src/units';
import { inEn, inEs, inSpanish, isCatalogue, said } from './said';

/** Messages that are the same in both on purpose: names, signs, and words that both languages share. */
const same = new Set([
  'name',
  'common.no',
  'orders.turnings.fixed',
  'orders.newTransfer',
  'orders.transfer',
  'damaged.records.transfer',
  'table.columns.transfer',
  'orders.again',
  'strip.ends.lead',
  'strip.ends.tail',
  'film.zoom',
  'press.zoom',
  'artwork.zoom',
  'keys.mod',
  'keys.alt',
  'keys.names.ArrowRight',
  'keys.names.ArrowLeft',
  'keys.names.ArrowUp',
  'keys.names.ArrowDown',
  'keys.names.Escape',
  'cutFile.forms.svg',
  'cutMap.papers.a4',
  'quote.total',
  'printImage.forms.png',
  'printImage.forms.tiff',
  'quote.total',
]);

/** Words that no Spanish sentence has, nor a sample. */
const ENGLISH =
  /\b(the|of|and|is|are|was|were|this|that|these|not|with|from|for|to|in an?|it|its|they|be|has|have|your|copy|copies|film|sheets?|runs?|spans?|orders?|printed|print|printing|cut|cuts|press|pressed|powder|wait|waits|needed|left|more|than|after|before|again|colours?|white|black|width|height|garments?|by hand)\b/i;
const HOLES = /undefined|NaN|null|\[object|[{}]|\bInvalid\b/;

/** Every place in a catalogue where a message stands. */
function placesOf(value: unknown, place = ''): string[] {
  if (!isCatalogue(value)) return [place];
  return Object.entries(value).flatMap(([key, inner]) =>
    placesOf(inner, place === '' ? key : `${place}.${key}`),
  );
}

describe('Spanish', () => {
  it('has a message wherever English has one, and no other', () => {
    // What is looked up by the reader's own words differs, as the names of places on a garment.
    expect(placesOf(inEs)).toEqual(placesOf(inEn));
    expect(placesOf(inEn).length).toBeGreaterThan(700);
  });

  it('says something else than English, but for names and signs', () => {
    const kept = said.filter(({ english, spanish }) => english === spanish && /\p{L}{2}/u.test(english));
    const ofPlace = (place: string) => place.replace(/\(\)/g, '');
    const unexplained = kept.filter(
      ({ place, english }) =>
        !same.has(ofPlace(place)) && english.replace(/Z[qr]|Z[QR]|mm|ml|\bin\b/g, '').match(/\p{L}{2}/u),
    );
    expect(unexplained).toEqual([]);
  });

  it('needs every exception it is given', () => {
    const places = new Set(placesOf(inEs));
    expect([...same].filter((place) => !places.has(place))).toEqual([]);
  });

  it.each([
    ['English', 'english'],
    ['Spanish', 'spanish'],
  ] as const)('leaves no hole in a sentence: %s', (_, language) => {
    expect(
      said.filter((each) => HOLES.test(each[language])).map(({ place, ...each }) => [place, each[language]]),
    ).toEqual([]);
  });

  it.each([
    ['English', 'english'],
    ['Spanish', 'spanish'],
  ] as const)('ends no sentence twice, also after a time as 9:48 p. m.: %s', (_, language) => {
    expect(
      said
        .filter((each) => /\.\s?\./.test(each[language]))
        .map(({ place, ...each }) => [place, each[language]]),
    ).toEqual([]);
  });

  it('writes every count as the language does: 1,234 and never 1234', () => {
    // Numbers that name something, as a copy's or a span's, are no counts and have small samples.
    expect(
      said.filter(({ english }) => /1234(?!\d)/.test(english)).map(({ place, english }) => [place, english]),
    ).toEqual([]);
  });

  it('holds no English word', () => {
    expect(
      said.filter(({ spanish }) => ENGLISH.test(spanish)).map(({ place, spanish }) => [place, spanish]),
    ).toEqual([]);
  });
});

describe('figures', () => {
  it.each([
    ['es', 0, '0 copias'],
    ['es', 1, '1 copia'],
    ['es', 2, '2 copias'],
    ['es', 1_000_000, '1.000.000 copias'],
    ['es-MX', 12_345, '12,345 copias'],
  ])('are counted by the plurals of the language: %s, %d', (locale, count, expected) => {
    expect(counted(count, 'copia', 'copias', { locale })).toBe(expected);
  });

  it('are written as the language does (CLDR, by Intl)', () => {
    const plain = (text: string) => text.replace(/\u00a0|\u202f/g, ' ');
    expect(plain(percent(0.118, inSpanish))).toBe('11,8 %');
    expect(plain(money(840 as Minor, inSpanish))).toBe('8,40 €');
    expect(dueDay('2026-11-27' as LocalDate, inSpanish)).toBe('vie, 27 nov');
  });

  it('that are shown in a field are read back as they were, decimal comma and all', () => {
    const typed = typedLength(fromMm(203.25), inSpanish);
    expect(typed).toBe('203,25');
    expect(parseLength(typed, 'mm')).toEqual({ ok: true, value: 203_250 });
  });
});
