import { describe, expect, it } from 'vitest';
import {
  addGarment,
  addNames,
  addPlacement,
  editGarment,
  editPlacement,
  lockRun,
  printedSizes,
  removeGarment,
  removePlacement,
  setPlaces,
} from '../../src/editing';
import { asId, type Book, type Garment, groupOf, type Id, type Placement, widestFor } from '../../src/model';
import { fromInches, UPRIGHT } from '../../src/units';
import { context, edited, orderStateIn, smallBook } from './book';

const { book: start, order } = smallBook();
let made = 0;
const ids = {
  ...context(),
  newId: <Kind extends string>() => {
    made += 1;
    return asId<Kind>(`grid-${made}`);
  },
};
const width = (inches: number) => ({ width: fromInches(inches), typed: `${inches} in` });
const widths = { adult: width(11), youth: width(8.5), toddler: width(6) };
const line = (size: string, count: number) => ({
  style: 'T-shirt',
  colour: 'navy',
  shade: '#1f2b46',
  size,
  count,
});

function withGrid(): { book: Book; small: Id<'garment'>; youth: Id<'garment'>; front: Id<'placement'> } {
  let small = '' as Id<'garment'>;
  let youth = '' as Id<'garment'>;
  let front = '' as Id<'placement'>;
  const book = edited(start, (draft) => {
    small = addGarment(draft, order, line('S', 4), ids);
    addGarment(draft, order, line('XL', 6), ids);
    youth = addGarment(draft, order, line('YM', 3), ids);
    front = addPlacement(draft, order, { place: 'front', design: 'crest', ratio: 0.5, widths }, ids);
  });
  return { book, small, youth, front };
}

it.each([
  ['mm', '139.7 mm'],
  ['in', '5.5 in'],
] as const)('the heights of a grid are written in the shop’s unit, %s', (unit, height) => {
  const shop = start.settings.shop ?? expect.fail();
  const book = edited({ ...start, settings: { shop: { ...shop, unit } } }, (draft) => {
    addGarment(draft, order, line('S', 4), ids);
    addPlacement(draft, order, { place: 'front', design: 'crest', ratio: 0.5, widths }, ids);
  });
  const made = Object.values(book.transfer).find(({ grid }) => grid !== null);
  expect(made?.typed).toEqual({ width: '11 in', height });
});

const listed = (book: Book) =>
  Object.values(book.transfer)
    .filter(({ grid }) => grid !== null)
    .map((transfer) => [
      transfer.name,
      transfer.width,
      Object.values(book.copy).filter((copy) => copy.transfer === transfer.id).length,
    ]);

describe('garments crossed with places', () => {
  it('make a transfer for each printed width, with as many copies as there are garments', () => {
    const { book } = withGrid();
    expect(listed(book)).toEqual([
      ['crest, front S XL', fromInches(11), 10],
      ['crest, front YM', fromInches(8.5), 3],
    ]);
    const [adult] = Object.values(book.transfer).filter(({ grid }) => grid !== null);
    expect(adult).toMatchObject({ height: fromInches(5.5), shade: '#1f2b46' });
  });

  it('let the counts follow, and take back what is no longer called for', () => {
    const { book, small, youth, front } = withGrid();
    const more = edited(book, (draft) => editGarment(draft, small, { count: 9 }, ids));
    expect(listed(more)[0]?.[2]).toBe(15);
    const adults = edited(more, (draft) => removeGarment(draft, youth, ids));
    expect(listed(adults)).toEqual([['crest, front', fromInches(11), 15]]);
    expect(listed(edited(adults, (draft) => removePlacement(draft, front, ids)))).toEqual([]);
  });

  it('share one printed size where the widths are the same, and flag one too wide for the smallest', () => {
    const { book, front } = withGrid();
    const same = edited(book, (draft) =>
      editPlacement(draft, front, { widths: { ...widths, youth: width(11) } }, ids),
    );
    expect(listed(same)).toEqual([['crest, front', fromInches(11), 13]]);
    const placement = same.placement[front] as Placement;
    const [size] = printedSizes(placement, Object.values(same.garment) as Garment[]);
    expect(size?.tooWideFor).toBe('YM');
    expect(widestFor({ style: 'tee', size: 'YM' })).toBeLessThan(fromInches(11));
  });

  it('know the group of a garment size', () => {
    expect(
      ['S', '2XL', 'YM', 'Youth L', '10-12', '4T', '18M'].map((size) => groupOf({ style: '', size })),
    ).toEqual(['adult', 'adult', 'youth', 'youth', 'youth', 'toddler', 'toddler']);
  });
});

describe('widths of single sizes', () => {
  const xl = 'adult XL';

  it('make a transfer of their own, and go back with their group’s', () => {
    const { book, front } = withGrid();
    const own = edited(book, (draft) => editPlacement(draft, front, { sizes: { [xl]: width(12.5) } }, ids));
    expect(listed(own)).toEqual([
      ['crest, front S', fromInches(11), 4],
      ['crest, front YM', fromInches(8.5), 3],
      ['crest, front XL', fromInches(12.5), 6],
    ]);
    const back = edited(own, (draft) => editPlacement(draft, front, { sizes: {} }, ids));
    expect(listed(back)).toEqual(listed(book));
  });

  it('of a child’s M are not those of an adult’s', () => {
    const { book, front } = withGrid();
    const both = edited(book, (draft) => {
      addGarment(
        draft,
        Object.values(draft.garment)[0]?.order ?? expect.fail(),
        { ...line('M', 2), style: 'Youth tee' },
        ids,
      );
      editPlacement(draft, front, { sizes: { 'youth M': width(7) } }, ids);
    });
    expect(listed(both)).toContainEqual(['crest, front Youth tee M', fromInches(7), 2]);
  });
});

describe('names', () => {
  it('make one transfer and one garment each, tied together', () => {
    const names = [
      { name: 'FINN', number: '7', size: 'L' },
      { name: 'ADA', number: '', size: 'YM' },
    ];
    const print = {
      width: fromInches(10),
      height: fromInches(12),
      typed: { width: '10 in', height: '12 in' },
      style: 'Jersey',
      fabric: 'polyester' as const,
    };
    const book = edited(start, (draft) => addNames(draft, order, names, print, ids));
    const added = Object.values(book.transfer).filter(({ garment }) => garment !== null);
    expect(added.map(({ name }) => name)).toEqual(['FINN 7 (L)', 'ADA (YM)']);
    for (const { garment } of added)
      expect(book.garment[garment ?? '']).toMatchObject({ style: 'Jersey', fabric: 'polyester', count: 1 });
  });
});

describe('the state of an order', () => {
  const stateWith = (change: (draft: Parameters<Parameters<typeof edited>[1]>[0]) => void) =>
    orderStateIn(edited(start, change), order);

  it('is told by what it waits for, where its copies are, and what was said of it', () => {
    expect(orderStateIn(start, order)).toBe('ready');
    expect(
      stateWith((draft) => {
        const own = draft.order[order];
        if (own) own.awaits.proof = true;
      }),
    ).toBe('waiting');
    const run = Object.values(start.run)[0]?.id ?? null;
    const place = { x: fromInches(1), y: fromInches(1), angle: UPRIGHT, pinned: false };
    const placeOne = (draft: Parameters<Parameters<typeof edited>[1]>[0]) => {
      const [copy] = Object.values(draft.copy);
      if (copy && run) setPlaces(draft, run, [[copy.id, place]]);
    };
    expect(stateWith(placeOne)).toBe('in-run');
    expect(
      stateWith((draft) => {
        placeOne(draft);
        lockRun(draft, run ?? '', context());
        const own = draft.run[run ?? ''];
        if (own && own.state !== 'draft') own.state = 'printed';
      }),
    ).toBe('part-done');
    expect(
      stateWith((draft) => {
        const own = draft.order[order];
        if (own) own.progress = 'packed';
      }),
    ).toBe('packed');
  });
});
