import { describe, expect, it } from 'vitest';
import { addDesign } from '../../src/editing';
import { type Artwork, asId, type Id } from '../../src/model';
import { fromMm } from '../../src/units';
import { context, edited, NOW, smallBook } from './book';

const artwork = {
  id: 'hash' as Id<'artwork'>,
  fileName: 'wave.png',
  kind: 'png',
  pixels: { width: 4, height: 2 },
  density: null,
  trim: { x: 0, y: 0, width: 4, height: 2 },
  changed: NOW,
} as Artwork;

const size = (name: string, mm: number, count: number) => ({
  name,
  width: fromMm(mm),
  height: fromMm(mm / 2),
  typed: { width: `${mm} mm`, height: `${mm / 2} mm` },
  count,
});

describe('a design at several sizes', () => {
  it('becomes a transfer for each size that has copies, all with its image', () => {
    const { book, order } = smallBook();
    const before = Object.keys(book.transfer).length;
    const added = edited(book, (draft) =>
      addDesign(
        draft,
        order,
        {
          artwork,
          shade: '#102030',
          sizes: [size('adult', 279.4, 3), size('youth', 200, 0), size('chest', 88.9, 5)],
          more: [],
        },
        { ...context(), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) },
      ),
    );
    const made = Object.values(added.transfer).filter(({ artwork: id }) => id === artwork.id);
    expect(made.map(({ name, shade }) => [name, shade])).toEqual([
      ['adult', '#102030'],
      ['chest', '#102030'],
    ]);
    expect(Object.keys(added.transfer)).toHaveLength(before + 2);
    const counts = made.map(
      ({ id }) => Object.values(added.copy).filter(({ transfer }) => transfer === id).length,
    );
    expect(counts).toEqual([3, 5]);
  });

  it('adds copies to transfers that have it already', () => {
    const { book, order, front } = smallBook();
    const added = edited(book, (draft) =>
      addDesign(
        draft,
        order,
        { artwork: null, shade: null, sizes: [], more: [{ transfer: front, count: 4 }] },
        { ...context(), newId: <Kind extends string>() => asId<Kind>(crypto.randomUUID()) },
      ),
    );
    expect(Object.values(added.copy).filter(({ transfer }) => transfer === front)).toHaveLength(7);
  });
});
