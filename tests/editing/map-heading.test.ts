import { describe, expect, it } from 'vitest';
import { type Edit, edits, session } from '../../src/editing';
import { type Column, headingOf, readTable } from '../../src/intake';
import { type Book, settingsOf } from '../../src/model';
import { today } from '../intake/today';
import { freshIds, smallBook } from './book';

const HEADINGS = ['Order', 'Item', 'Motif', 'Width', 'Height', 'Qty', 'Colour'];
const ROW = 'Fair,Tee,Star,10,10,4,red';

const bookAfter = (...made: readonly Edit[]): Book =>
  made.reduce((book, edit) => session(book, edit, freshIds()).book, smallBook().book);

/** What each heading of a table means in a book. */
const meant = (book: Book, headings: readonly string[] = HEADINGS) =>
  Object.fromEntries(
    readTable(`${headings.join()}\n${ROW}`, {
      unit: 'mm',
      dateOrder: null,
      today,
      mapped: settingsOf(book) ?? expect.fail(),
    }).headings.map(({ text, column }) => [text, column]),
  );

/** Says what a heading of the table means. */
const mapping = (heading: string, column: Column | 'none') =>
  edits.mapHeading(HEADINGS, heading, column, headingOf(heading).column !== undefined);

describe('a heading that is mapped', () => {
  it('is read so the next time, known or not', () => {
    const book = bookAfter(
      mapping('Item', 'notes'),
      mapping('Motif', 'transfer'),
      mapping('Qty', 'none'),
      mapping('Colour', 'customer'),
    );
    expect(meant(book)).toMatchObject({ Item: 'notes', Motif: 'transfer', Qty: null, Colour: 'customer' });
  });

  it('takes its column from the heading that was said to have it', () => {
    const book = bookAfter(mapping('Motif', 'notes'), mapping('Colour', 'notes'));
    expect(meant(book)).toMatchObject({ Motif: 'transfer', Colour: 'notes' });
    const back = session(book, mapping('Motif', 'notes'), freshIds()).book;
    expect(meant(back)).toMatchObject({ Motif: 'notes', Colour: null });
  });

  it('means the same in other tables only if it means nothing by itself', () => {
    const book = bookAfter(mapping('Item', 'notes'), mapping('Colour', 'customer'));
    expect(meant(book, ['Order', 'Item', 'Sort', 'Width', 'Height', 'Qty', 'Colour'])).toMatchObject({
      Item: 'transfer',
      Colour: 'customer',
    });
  });
});
