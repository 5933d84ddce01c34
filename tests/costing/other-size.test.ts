import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inOtherSize } from '../../src/costing';
import { rollWidth, runCost, sheetSizes } from '../../src/model';
import { asMinor, fromMm, um } from '../../src/units';
import { smallBook } from '../editing/book';

const [film] = Object.values(smallBook().book.film);
if (film?.kind !== 'roll') throw new Error('no roll');
const roll = {
  ...film,
  width: fromMm(330),
  lengthLeft: fromMm(60_000),
  price: { amount: asMinor(840), per: fromMm(1000) },
};

describe('film in another size', () => {
  it('costs as much for its area: A3 sheets of a roll at 8.40 a metre, 330 mm wide', () => {
    const sheets = inOtherSize(roll, { kind: 'sheets', ...sheetSizes['sheet-a3'] });
    // 297 x 420 mm of 330 x 1,000 mm, by hand: 840 x 0.12474 / 0.33 = 317.52.
    expect(sheets).toMatchObject({ kind: 'sheets', price: 318, sheetsLeft: 158 });
    expect(runCost(sheets, { length: um(0), sheets: 10 })).toBe(3180);
  });

  it('keeps what a roll is set to, and its price for the length it is told for', () => {
    const width = rollWidth('roll-24in', 'mm');
    expect(inOtherSize(roll, { kind: 'roll', width })).toEqual({
      ...roll,
      width,
      lengthLeft: Math.floor((330_000 * 60_000_000) / 609_600),
      price: { amount: Math.round((840 * 609.6) / 330), per: fromMm(1000) },
    });
  });

  it('never becomes more by being cut otherwise, and there and back it costs what it did but for rounding', () => {
    const side = fc.integer({ min: 100, max: 1200 }).map(fromMm);
    fc.assert(
      fc.property(side, side, (width, length) => {
        const sheets = inOtherSize(roll, { kind: 'sheets', width, length });
        if (sheets.kind !== 'sheets') throw new Error('no sheets');
        expect(sheets.sheetsLeft * width * length).toBeLessThanOrEqual(roll.width * roll.lengthLeft);
        const back = inOtherSize(sheets, { kind: 'roll', width: roll.width });
        if (back.kind !== 'roll') throw new Error('no roll');
        // Half a minor unit of a sheet, in as many sheets as a metre holds, and half of one of the metre.
        const rounding = 0.5 + (0.5 * roll.width * 1_000_000) / (width * length);
        expect(Math.abs(back.price.amount - 840)).toBeLessThanOrEqual(rounding);
        expect(back.lengthLeft).toBeLessThanOrEqual(roll.lengthLeft);
      }),
    );
  });
});
