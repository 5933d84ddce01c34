import { describe, expect, it } from 'vitest';
import { changeCurrency, lockRun, setPlaces } from '../../src/editing';
import { embeddedIn, type Id } from '../../src/model';
import { fromMm, minorDigits, UPRIGHT } from '../../src/units';
import { context, edited, smallBook } from './book';

describe('another currency', () => {
  it.each([
    // Minor units by ISO 4217: 2 for USD and EUR, none for JPY, 3 for KWD.
    ['EUR', 840],
    ['JPY', 8],
    ['KWD', 8400],
  ])('keeps the figure of 8.40 a metre: %s', (currency, amount) => {
    const { book, front } = smallBook();
    const run = (Object.keys(book.run)[0] ?? '') as Id<'run'>;
    const copies = Object.values(book.copy).filter(({ transfer }) => transfer === front);
    const place = { x: fromMm(5), y: fromMm(10), angle: UPRIGHT, pinned: false };
    const locked = edited(book, (draft) => {
      setPlaces(
        draft,
        run,
        copies.slice(0, 1).map(({ id }) => [id, place]),
      );
      lockRun(draft, run, context());
    });
    const changed = edited(locked, (draft) => changeCurrency(draft, currency));
    expect(changed.settings.shop?.currency).toBe(currency);
    const figures = ({ settings: { shop } }: typeof changed) => {
      const unit = 10 ** minorDigits(shop?.currency ?? '');
      return [
        (shop?.costs.labour.cutting ?? 0) / 1000 / unit,
        (shop?.costs.energy ?? 0) / 1000 / unit,
        (shop?.pricing.artworkFee ?? 0) / unit,
        (shop?.pricing.length.amount ?? 0) / unit,
      ];
    };
    expect(figures(changed)).toEqual(figures(locked));
    expect(figures(changed)).toEqual([18, 0.2, 15, 30]);
    const embedded = Object.values(changed.run).flatMap(embeddedIn);
    expect(embedded).toHaveLength(1);
    for (const film of [...Object.values(changed.film), ...embedded.map((part) => part.film)]) {
      expect(film).toMatchObject({ price: { amount } });
    }
  });

  it('changes nothing where it is the one in use', () => {
    const { book } = smallBook();
    expect(edited(book, (draft) => changeCurrency(draft, 'USD'))).toBe(book);
  });
});
