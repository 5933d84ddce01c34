import { describe, expect, it } from 'vitest';
import { type Artwork, type ArtworkOutline, asId, type Film, waysToCut } from '../../src/model';
import { smallBook } from '../editing/book';

const { book, front } = smallBook();
const square = [0, 0, 30, 0, 30, 30, 0, 30];
const hole = [10, 10, 10, 20, 20, 20, 20, 10];

/** The small book, one of whose transfers has artwork of an outline, and a drawing that no transfer has. */
function withOutline(outline: ArtworkOutline | null, unused: ArtworkOutline | null = null) {
  const [own, other] = [asId<'artwork'>('own'), asId<'artwork'>('other')];
  const artwork = { [own]: { outline } as Artwork, [other]: { outline: unused } as Artwork };
  const transfer = { ...book.transfer, [front]: { ...book.transfer[front], artwork: own } };
  return { artwork, transfer } as Parameters<typeof waysToCut>[0];
}
const inHoles = (outlined: ReturnType<typeof withOutline>, cutting: Film['cutting'] = 'free') =>
  waysToCut(outlined, { cutting }).includes('in-holes');

describe('ways to cut that are compared', () => {
  it.each([
    ['artwork without an outline', withOutline(null), false],
    ['an outline without a hole', withOutline([square]), false],
    ['an outline with a hole', withOutline([square, hole]), true],
    ['a hole in artwork that no transfer has', withOutline([square], [square, hole]), false],
  ])('with %s', (_, outlined, holes) => {
    expect(inHoles(outlined)).toBe(holes);
    expect(waysToCut(outlined, { cutting: 'free' })).toEqual(
      expect.arrayContaining(['free', 'outlines', 'straight', 'staged']),
    );
  });

  it('are those with copies in holes where that is set, whatever the artwork', () => {
    expect(inHoles(withOutline([square]), 'in-holes')).toBe(true);
  });
});
