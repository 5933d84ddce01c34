import { describe, expect, it } from 'vitest';
import { editTransfer, type NewArtwork, setArtwork } from '../../src/editing';
import { asId } from '../../src/model';
import { fromMm, um } from '../../src/units';
import { context, edited, smallBook } from './book';

const artwork: NewArtwork = {
  id: asId<'artwork'>('art'),
  fileName: 'crest.png',
  kind: 'png',
  pixels: { width: 1000, height: 620 },
  trim: { x: 100, y: 10, width: 800, height: 600 },
  density: null,
  madeFrom: null,
};

describe('the height of a transfer', () => {
  const told = (height: string) => {
    const { book, front } = smallBook();
    const given = edited(book, (draft) => {
      editTransfer(draft, front, { width: fromMm(80), typed: { width: '80 mm', height } });
      setArtwork(draft, front, artwork, context());
    });
    return { before: book.transfer[front], after: given.transfer[front] };
  };

  it('follows its artwork where nobody typed it, and is then as typed', () => {
    expect(told('').after).toMatchObject({ height: fromMm(60), typed: { width: '80 mm', height: '60 mm' } });
  });

  it('stays what was typed, whatever the artwork is', () => {
    const { before, after } = told('50 mm');
    expect(after).toMatchObject({ height: before?.height, typed: { height: '50 mm' } });
  });

  it('is as much as the width until there is artwork, also when the width is changed', () => {
    const { book, front } = smallBook();
    const edit = (width: number) =>
      edited(book, (draft) => {
        editTransfer(draft, front, { width: fromMm(90), typed: { width: '90 mm', height: '' } });
        editTransfer(draft, front, { width: um(width) });
      }).transfer[front];
    for (const width of [50_000, 123_456]) expect(edit(width)).toMatchObject({ width, height: width });
  });
});
