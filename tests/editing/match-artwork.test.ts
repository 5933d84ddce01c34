import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addOrder, addTransfer, editOrder, matchArtwork, setArtwork } from '../../src/editing';
import { asId, type Book, emptyBook } from '../../src/model';
import { fromMm } from '../../src/units';
import { edited, freshIds } from './book';

/** A book of orders, each with transfers by name. */
const bookOf = (orders: Readonly<Record<string, readonly string[]>>): Book =>
  edited(emptyBook, (draft) => {
    for (const [name, transfers] of Object.entries(orders)) {
      const order = addOrder(draft, { name, due: null }, freshIds());
      const size = { width: fromMm(80), height: fromMm(60), typed: { width: '80 mm', height: '60 mm' } };
      for (const transfer of transfers)
        addTransfer(draft, order, { name: transfer, ...size, turn: 'fixed' }, 1, freshIds());
    }
  });

const orderId = (book: Book, name: string) =>
  Object.values(book.order).find((order) => order.name === name)?.id ?? expect.fail();

/** What files are matched with, as order and transfer. */
const matches = (book: Book, files: readonly string[], on: string | null = null) =>
  matchArtwork(book, files, on === null ? null : orderId(book, on)).map(({ transfer }) => {
    const own = transfer === null ? undefined : book.transfer[transfer];
    return own ? `${book.order[own.order]?.name}: ${own.name}` : null;
  });

const shop = bookOf({
  '#1041 Mill': ['Front logo', 'Back print', 'Number 7', 'Number 8'],
  '#1042 Harbour Club': ['Crest', 'Sleeve'],
  '#1043 Fair': ['Poster'],
  'Año nuevo': ['Corazón'],
});

describe('an image file', () => {
  it.each([
    ['Front logo.png', '#1041 Mill: Front logo'],
    ['front_logo-2.PNG', '#1041 Mill: Front logo'],
    ['FRONTLOGO.webp', '#1041 Mill: Front logo'],
    ['frontLogo v3.png', '#1041 Mill: Front logo'],
    ['logo front.png', '#1041 Mill: Front logo'],
    ['frnt-logo.png', '#1041 Mill: Front logo'],
    ['harbour club crest.png', '#1042 Harbour Club: Crest'],
    ['number-7.png', '#1041 Mill: Number 7'],
    ['number_08.png', '#1041 Mill: Number 8'],
    ['corazon.svg', 'Año nuevo: Corazón'],
    ['1041-front.png', '#1041 Mill: Front logo'],
    ['order 1042 sleeve final.png', '#1042 Harbour Club: Sleeve'],
    // The only transfer of the order that is named.
    ['1043.png', '#1043 Fair: Poster'],
    ['1043-art.png', '#1043 Fair: Poster'],
    ['sunflower.png', null],
    // The number of the one order, and nothing of its transfers.
    ['1042-xyz.png', null],
    ['12.png', null],
  ])('%s is of %s', (file, match) => {
    expect(matches(shop, [file])).toEqual([match]);
  });

  it('that several are equally like is of none, unless one is of the order it was given to, or lacks artwork', () => {
    const book = bookOf({ A: ['Front'], B: ['Front'], C: ['Front'] });
    expect(matches(book, ['front.png'])).toEqual([null]);
    expect(matches(book, ['front.png'], 'B')).toEqual(['B: Front']);
    expect(matchArtwork(book, ['front.png'], null)[0]?.likely).toHaveLength(3);
    const artwork = {
      id: asId<'artwork'>('a'),
      fileName: 'a.png',
      kind: 'png',
      pixels: { width: 1, height: 1 },
      density: null,
      trim: null,
      madeFrom: null,
    } as const;
    const drawn = edited(book, (draft) => {
      for (const { id, order } of Object.values(draft.transfer))
        if (draft.order[order]?.name !== 'C') setArtwork(draft, id, artwork, freshIds());
    });
    expect(matches(drawn, ['front.png'])).toEqual(['C: Front']);
  });

  it('is never of an order in the archive', () => {
    const archived = edited(shop, (draft) => {
      for (const id of Object.keys(draft.order)) editOrder(draft, id, { archived: true });
    });
    expect(matches(archived, ['Front logo.png', '1043.png'])).toEqual([null, null]);
  });

  it('is matched beside others, and no transfer twice, whatever their order', () => {
    const files = ['front logo.png', 'front logo copy.png', 'back-print.png', 'sleeve.png', 'odd.png'];
    fc.assert(
      fc.property(fc.shuffledSubarray(files, { minLength: files.length }), (shuffled) => {
        const found = Object.fromEntries(matches(shop, shuffled).map((match, at) => [shuffled[at], match]));
        expect(found).toEqual({
          'front logo.png': '#1041 Mill: Front logo',
          'front logo copy.png': null,
          'back-print.png': '#1041 Mill: Back print',
          'sleeve.png': '#1042 Harbour Club: Sleeve',
          'odd.png': null,
        });
      }),
    );
  });
});
