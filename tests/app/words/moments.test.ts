import { describe, expect, it } from 'vitest';
import { en } from '../../../app/words/en';
import { es } from '../../../app/words/es';
import { momentOf, timeAndDay, type Ways } from '../../../app/words/format';

const ways = (locale: string) => ({ locale, unit: 'mm', currency: 'USD' }) as Ways;
const at = (text: string) => new Date(text).getTime();
const now = at('2026-11-27T22:10:00');

describe('a time that is told', () => {
  it.each([
    ['of today', '2026-11-27T23:59:00', '23:59'],
    ['of the small hours of tomorrow', '2026-11-28T00:05:00', 'Sat 00:05'],
    ['more than a day away, at the same hour', '2026-11-28T22:10:00', 'Sat 22:10'],
    ['of yesterday', '2026-11-26T22:10:00', 'Thu 22:10'],
    ['a week away, whose weekday alone is today’s', '2026-12-04T09:00:00', 'Fri 4 Dec 09:00'],
  ])('%s', (_, text, told) => {
    // A comma between day and month is a habit that differs between releases of the formats.
    expect(timeAndDay(at(text), ways('en-GB'), now).replaceAll(',', '')).toBe(told);
  });

  it('has no nought before an hour of twelve, and does not part from what follows it', () => {
    expect(timeAndDay(at('2026-11-27T15:10:00'), ways('en-US'), now)).toBe('3:10\u00a0PM');
    expect(timeAndDay(at('2026-11-27T09:05:00'), ways('en-GB'), now)).toBe('09:05');
  });

  it('bears its day in a sentence of either language, and no second full stop', () => {
    const said = (words: typeof en | typeof es, end: number, locale: string) =>
      words.film
        .sentence('1 m', '9%', '$2', momentOf(end, ways(locale), now))
        .map(({ text }) => text)
        .join('')
        // Figures keep together by spaces that do not break.
        .replaceAll(/\s/g, ' ');
    const soon = at('2026-11-27T22:48:00');
    const later = at('2026-11-28T09:21:00');
    expect(said(en, soon, 'en-GB')).toMatch(/, \$2 of film, done by 22:48\.$/);
    expect(said(es, soon, 'es-ES')).toContain(', $2 de película, lista');
    expect(said(en, later, 'en-GB')).toMatch(/, done by Sat 09:21\.$/);
    expect(said(es, soon, 'es-ES')).toMatch(/, lista a las 22:48\.$/);
    expect(said(es, later, 'es-ES')).toMatch(/, lista el sáb a las 0?9:21\.$/);
    expect(said(es, soon, 'es-MX')).toMatch(/, lista a las 10:48 p\. ?m\.$/);
  });
});
